import type { ReactElement } from "react";
import type { DoseCurve, DosePoint } from "../../agronomy/index.ts";
import { ENGLISH } from "../../words/index.ts";
import type { Language } from "../../words/index.ts";
import { sayIn, useLanguage } from "../language/language-context.ts";
import { figure, inHundred, placeWords } from "./words.ts";

/** Heights of the picture [px]. */
const PLOT = 190;
const TOP = 22;
const HEIGHT = TOP + PLOT + 44;
const LEFT = 9;
const RIGHT = 4;
const STARTS = [0.9, 0.8, 0.6, 0.5, 0.2, 0] as const;

/** Free share against dose, with the aim, the label's range and the published rule; its numbers in a table behind. */
export function DosePicture({ curve, id }: { curve: DoseCurve; id: string }): ReactElement {
  const language = useLanguage();
  const say = sayIn(language);
  const { points, aim, label, publishedRule_gPerL, dose_gPerL } = curve;
  // The name of each line stands on its outer side, so that two near lines keep theirs apart.
  const doseLeft = publishedRule_gPerL !== null && publishedRule_gPerL > dose_gPerL;
  const end = points.at(-1)?.dose_gPerL ?? 1;
  const shares = points.flatMap(({ inTank, onLeaf }) => [inTank ?? 1, onLeaf ?? 1]);
  const least = Math.min(aim.freeShare, ...shares);
  const from = STARTS.find((start) => start + (1 - start) * 0.05 <= least) ?? 0;
  const x = (dose: number): string => `${String(LEFT + ((100 - LEFT - RIGHT) * dose) / end)}%`;
  const y = (free: number): number => TOP + PLOT * (1 - (free - from) / (1 - from));
  return (
    <figure className="plot">
      <svg width="100%" height={HEIGHT} role="img" aria-labelledby={`${id}-title ${id}-text`}>
        <title id={`${id}-title`}>{say("Dose against free share")}</title>
        <desc id={`${id}-text`}>{curveWords(curve, language)}</desc>
        <LabelRange label={label} end={end} />
        <g className="axis">
          {[from, (from + 1) / 2, 1].map((mark) => (
            <g key={mark}>
              <line x1={`${String(LEFT)}%`} x2="100%" y1={y(mark)} y2={y(mark)} className="grid" />
              <text x={`${String(LEFT - 1.5)}%`} y={y(mark) + 5} textAnchor="end">
                {Math.round(100 * mark)}
              </text>
            </g>
          ))}
          {[0, 0.5, 1].map((part) => (
            <text key={part} x={x(part * end)} y={TOP + PLOT + 18} textAnchor="middle">
              {figure(part * end, 2, language)}
            </text>
          ))}
          <text x="100%" y={TOP + PLOT + 38} textAnchor="end">
            {say("g per L of spray")}
          </text>
        </g>
        <line x1={`${String(LEFT)}%`} x2="100%" y1={y(aim.freeShare)} y2={y(aim.freeShare)} className="aim" />
        <Curve points={points} of={(point) => point.inTank} className="curve curve-tank" x={x} y={y} />
        <Curve points={points} of={(point) => point.onLeaf} className="curve" x={x} y={y} />
        <Upright
          at={x(dose_gPerL)}
          name={say("dose")}
          className="interval"
          anchor={doseLeft ? "end" : "start"}
        />
        {publishedRule_gPerL !== null && (
          <Upright
            at={x(publishedRule_gPerL)}
            name={say("rule")}
            className="rule-line"
            anchor={doseLeft ? "start" : "end"}
          />
        )}
      </svg>
      <figcaption className="about">
        {say(
          "Free in 100, least-free active, against the dose. Whole line: on the leaf. Dotted line: in the tank. Dashed: your aim.",
        )}{" "}
        {say(
          "Upright lines: this dose, and the published rule where there is one. Shaded: beyond the label.",
        )}{" "}
        {say("Central answers, without ranges.")} {curveWords(curve, language)}
      </figcaption>
    </figure>
  );
}

/** What lies beyond the label's least and most dose. */
function LabelRange({ label, end }: { label: DoseCurve["label"]; end: number }): ReactElement {
  const at = (dose: number): number => ((100 - LEFT - RIGHT) * dose) / end;
  const { least_gPerL: least, most_gPerL: most } = label;
  return (
    <>
      {least !== null && least > 0 && (
        <rect
          className="bar bar-unsure"
          x={`${String(LEFT)}%`}
          width={`${String(at(least))}%`}
          y={TOP}
          height={PLOT}
        />
      )}
      {most !== null && most < end && (
        <rect
          className="bar bar-unsure"
          x={`${String(LEFT + at(most))}%`}
          width={`${String(at(end) - at(most))}%`}
          y={TOP}
          height={PLOT}
        />
      )}
    </>
  );
}

function Curve(props: {
  points: readonly DosePoint[];
  of: (point: DosePoint) => number | null;
  className: string;
  x: (dose: number) => string;
  y: (free: number) => number;
}): ReactElement {
  const { points, of, className, x, y } = props;
  return (
    <g className={className}>
      {points.slice(1).map((point, i) => {
        const before = points[i];
        const a = before === undefined ? null : of(before);
        const b = of(point);
        if (before === undefined || a === null || b === null) return null;
        return (
          <line
            key={point.dose_gPerL}
            x1={x(before.dose_gPerL)}
            x2={x(point.dose_gPerL)}
            y1={y(a)}
            y2={y(b)}
          />
        );
      })}
    </g>
  );
}

function Upright(props: {
  at: string;
  name: string;
  className: string;
  anchor: "start" | "end";
}): ReactElement {
  return (
    <g className="axis">
      <line x1={props.at} x2={props.at} y1={TOP} y2={TOP + PLOT} className={props.className} />
      <text x={props.at} dx={props.anchor === "end" ? -4 : 4} y={TOP - 8} textAnchor={props.anchor}>
        {props.name}
      </text>
    </g>
  );
}

/** The numbers of the curve. */
export function DoseTable({ curve }: { curve: DoseCurve }): ReactElement {
  const language = useLanguage();
  const say = sayIn(language);
  const title = say("The points of the curve");
  const shown = (free: number | null): string =>
    free === null ? say("not known") : figure(100 * free, 3, language);
  return (
    <div className="table" role="region" aria-label={title} tabIndex={0}>
      <table>
        <caption>{title}</caption>
        <thead>
          <tr>
            <th scope="col">{say("Dose, g/L")}</th>
            <th scope="col">{say("In the tank, in 100")}</th>
            <th scope="col">{say("On the leaf, in 100")}</th>
          </tr>
        </thead>
        <tbody>
          {curve.points.map((point) => (
            <tr key={point.dose_gPerL}>
              <th scope="row">
                {figure(point.dose_gPerL, 3, language)}
                {point.dose_gPerL === curve.dose_gPerL && ` (${say("this dose")})`}
              </th>
              <td>{shown(point.inTank)}</td>
              <td>{shown(point.onLeaf)}</td>
            </tr>
          ))}
        </tbody>
      </table>
    </div>
  );
}

/** The picture in sentences. */
export function curveWords(curve: DoseCurve, language: Language = ENGLISH): string {
  const say = sayIn(language);
  const put = (dose: number): string => figure(dose, 3, language);
  const where = placeWords(curve.aim.where, language);
  const { points, aim, label, publishedRule_gPerL, dose_gPerL } = curve;
  const of = (point: DosePoint): number | null => (aim.where === "in the tank" ? point.inTank : point.onLeaf);
  const first = points.find((point) => (of(point) ?? 0) >= aim.freeShare);
  const none = points[0]?.onLeaf ?? null;
  const leaf = points.find((point) => point.dose_gPerL === dose_gPerL)?.onLeaf ?? null;
  return [
    none === null || leaf === null
      ? ""
      : say("On the leaf {none} in 100 free with nothing added, {leaf} at this dose.", {
          none: inHundred(none, language),
          leaf: inHundred(leaf, language),
        }),
    first === undefined
      ? say("No dose shown meets the aim {where}.", { where })
      : say("The aim is first met {where} at {dose} g/L or less.", { where, dose: put(first.dose_gPerL) }),
    label.least_gPerL === null || label.most_gPerL === null
      ? ""
      : say("The label allows {least} to {most} g/L.", {
          least: put(label.least_gPerL),
          most: put(label.most_gPerL),
        }),
    publishedRule_gPerL === null
      ? ""
      : say("The published rule gives {rule} g/L.", { rule: put(publishedRule_gPerL) }),
  ]
    .filter((sentence) => sentence !== "")
    .join(" ");
}
