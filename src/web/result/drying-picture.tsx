import type { ReactElement } from "react";
import type { DryingStep } from "../../agronomy/index.ts";
import type { Language } from "../../words/index.ts";
import { sayIn, useLanguage } from "../language/language-context.ts";
import { fillOf } from "./patterns.tsx";
import { figure, heldParts, inHundred } from "./words.ts";

/** Heights of the picture [px]. */
const PLOT = 150;
const TOP = 10;
const HEIGHT = TOP + PLOT + 44;
/** Room at the left for the marks of the scale, and at the right for half a column [% of the width]. */
const LEFT = 9;
const RIGHT = 4;
const SCALE_TOPS = [0.05, 0.1, 0.2, 0.5, 1] as const;

interface DryingPictureProps {
  readonly id: string;
  readonly active: string;
  readonly name: string;
  readonly path: readonly DryingStep[];
}

interface Column {
  readonly factor: number;
  readonly held: number;
  readonly parts: readonly (readonly [string, number])[];
}

/**
 * Held share of one active against how far the drop has dried, one column for each state solved. The scale of the
 * concentration is logarithmic. The same numbers stand in the table behind it.
 */
export function DryingPicture({ id, active, name, path }: DryingPictureProps): ReactElement | null {
  const language = useLanguage();
  const say = sayIn(language);
  const columns = columnsOf(active, path);
  const last = columns.at(-1);
  if (last === undefined || columns.length < 2) return null;
  const most = Math.max(...columns.map((column) => column.held));
  const top = SCALE_TOPS.find((mark) => mark >= most) ?? 1;
  const x = (factor: number): number =>
    LEFT + ((100 - LEFT - RIGHT) * Math.log(factor)) / Math.log(last.factor);
  const gaps = columns.slice(1).map((column, i) => x(column.factor) - x(columns[i]?.factor ?? 1));
  const width = Math.min(4.5, Math.max(1.2, 0.9 * Math.min(...gaps)));
  const marks = [1, 10, 100, 1000].filter((mark) => mark <= last.factor);
  return (
    <figure className="plot">
      <svg width="100%" height={HEIGHT} role="img" aria-labelledby={`${id}-title ${id}-text`}>
        <title id={`${id}-title`}>{say("Held share of {active} as the drop dries", { active: name })}</title>
        <desc id={`${id}-text`}>{dryingWords(columns, language)}</desc>
        <g className="axis">
          {[0, 0.5, 1].map((part) => (
            <g key={part}>
              <line
                x1={`${String(LEFT)}%`}
                x2="100%"
                y1={TOP + PLOT * (1 - part)}
                y2={TOP + PLOT * (1 - part)}
                className="grid"
              />
              <text x={`${String(LEFT - 1.5)}%`} y={TOP + PLOT * (1 - part) + 5} textAnchor="end">
                {100 * part * top}
              </text>
            </g>
          ))}
          {marks.map((mark) => (
            <text key={mark} x={`${String(x(mark))}%`} y={TOP + PLOT + 18} textAnchor="middle">
              {mark}
            </text>
          ))}
          <text x="100%" y={TOP + PLOT + 38} textAnchor="end">
            {say("times stronger")}
          </text>
        </g>
        {columns.map((column) => (
          <ColumnBars key={column.factor} column={column} at={x(column.factor)} width={width} top={top} />
        ))}
      </svg>
      <figcaption className="about">
        {say("Held in 100, against how many times stronger the drop has become.")}{" "}
        {dryingWords(columns, language)}
      </figcaption>
    </figure>
  );
}

interface ColumnBarsProps {
  readonly column: Column;
  readonly at: number;
  readonly width: number;
  readonly top: number;
}

function ColumnBars({ column, at, width, top }: ColumnBarsProps): ReactElement {
  let from = 0;
  const bars = column.parts.map(([holder, share]) => {
    const bar = { holder, from, share };
    from += share;
    return bar;
  });
  return (
    <g>
      {bars.map((bar) => (
        <rect
          key={bar.holder}
          className={`bar bar-${fillOf(bar.holder)}`}
          x={`${String(at - width / 2)}%`}
          width={`${String(width)}%`}
          y={TOP + PLOT * (1 - (bar.from + bar.share) / top)}
          height={(PLOT * bar.share) / top}
        />
      ))}
    </g>
  );
}

function columnsOf(active: string, path: readonly DryingStep[]): readonly Column[] {
  return path.flatMap((step) => {
    const free = step.free[active];
    if (free === null || free === undefined) return [];
    return [{ factor: step.factor, held: 1 - free, parts: heldParts(step.heldBy[active] ?? {}) }];
  });
}

/** The path in one sentence: held at first, at the middle, at the end. */
function dryingWords(columns: readonly Column[], language: Language): string {
  const say = sayIn(language);
  const first = columns[0];
  const last = columns.at(-1);
  if (first === undefined || last === undefined) return "";
  const tenfold = columns.find((column) => column.factor >= 10 && column !== last);
  const ends = {
    tank: inHundred(first.held, language),
    last: inHundred(last.held, language),
    times: figure(last.factor, 2, language),
  };
  return tenfold === undefined
    ? say("Held: {tank} in 100 in the tank, {last} at {times} times, where it dries no further.", ends)
    : say(
        "Held: {tank} in 100 in the tank, {middle} at {between} times, {last} at {times} times, where it dries no further.",
        {
          ...ends,
          middle: inHundred(tenfold.held, language),
          between: figure(tenfold.factor, 2, language),
        },
      );
}
