import type { ReactElement } from "react";
import type { DoseCurve, DosePoint } from "../../agronomy/index.ts";
import { figure, inHundred } from "./words.ts";

/** Heights of the picture [px]. */
const PLOT = 190;
const TOP = 22;
const HEIGHT = TOP + PLOT + 44;
const LEFT = 9;
const RIGHT = 4;
const STARTS = [0.9, 0.8, 0.6, 0.5, 0.2, 0] as const;

const words = {
  title: "Dose against free share",
  axis: "g per L of spray",
  dose: "dose",
  rule: "rule",
  caption:
    "Free in 100, least-free active, against the dose. Whole line: on the leaf. Dotted line: in the tank. Dashed: your aim.",
  lines: "Upright lines: this dose, and the published rule where there is one. Shaded: beyond the label.",
  central: "Central answers, without ranges.",
  table: "The points of the curve",
  tableDose: "Dose, g/L",
  tank: "In the tank, in 100",
  leaf: "On the leaf, in 100",
  unknown: "not known",
  thisDose: "this dose",
  met: (dose: string, where: string) => `The aim is first met ${where} at ${dose} g/L or less.`,
  notMet: (where: string) => `No dose shown meets the aim ${where}.`,
  from: (none: string, leaf: string) =>
    `On the leaf ${none} in 100 free with nothing added, ${leaf} at this dose.`,
  labelled: (least: string, most: string) => `The label allows ${least} to ${most} g/L.`,
  ruled: (rule: string) => `The published rule gives ${rule} g/L.`,
} as const;

/** Free share against dose, with the aim, the label's range and the published rule; its numbers in a table behind. */
export function DosePicture({ curve, id }: { curve: DoseCurve; id: string }): ReactElement {
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
        <title id={`${id}-title`}>{words.title}</title>
        <desc id={`${id}-text`}>{curveWords(curve)}</desc>
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
              {figure(part * end, 2)}
            </text>
          ))}
          <text x="100%" y={TOP + PLOT + 38} textAnchor="end">
            {words.axis}
          </text>
        </g>
        <line x1={`${String(LEFT)}%`} x2="100%" y1={y(aim.freeShare)} y2={y(aim.freeShare)} className="aim" />
        <Curve points={points} of={(point) => point.inTank} className="curve curve-tank" x={x} y={y} />
        <Curve points={points} of={(point) => point.onLeaf} className="curve" x={x} y={y} />
        <Upright
          at={x(dose_gPerL)}
          name={words.dose}
          className="interval"
          anchor={doseLeft ? "end" : "start"}
        />
        {publishedRule_gPerL !== null && (
          <Upright
            at={x(publishedRule_gPerL)}
            name={words.rule}
            className="rule-line"
            anchor={doseLeft ? "start" : "end"}
          />
        )}
      </svg>
      <figcaption className="about">
        {words.caption} {words.lines} {words.central} {curveWords(curve)}
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
  const shown = (free: number | null): string => (free === null ? words.unknown : figure(100 * free));
  return (
    <div className="table" role="region" aria-label={words.table} tabIndex={0}>
      <table>
        <caption>{words.table}</caption>
        <thead>
          <tr>
            <th scope="col">{words.tableDose}</th>
            <th scope="col">{words.tank}</th>
            <th scope="col">{words.leaf}</th>
          </tr>
        </thead>
        <tbody>
          {curve.points.map((point) => (
            <tr key={point.dose_gPerL}>
              <th scope="row">
                {figure(point.dose_gPerL)}
                {point.dose_gPerL === curve.dose_gPerL && ` (${words.thisDose})`}
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
export function curveWords(curve: DoseCurve): string {
  const { points, aim, label, publishedRule_gPerL, dose_gPerL } = curve;
  const of = (point: DosePoint): number | null => (aim.where === "in the tank" ? point.inTank : point.onLeaf);
  const first = points.find((point) => (of(point) ?? 0) >= aim.freeShare);
  const none = points[0]?.onLeaf ?? null;
  const leaf = points.find((point) => point.dose_gPerL === dose_gPerL)?.onLeaf ?? null;
  return [
    none === null || leaf === null ? "" : words.from(inHundred(none), inHundred(leaf)),
    first === undefined ? words.notMet(aim.where) : words.met(figure(first.dose_gPerL), aim.where),
    label.least_gPerL === null || label.most_gPerL === null
      ? ""
      : words.labelled(figure(label.least_gPerL), figure(label.most_gPerL)),
    publishedRule_gPerL === null ? "" : words.ruled(figure(publishedRule_gPerL)),
  ]
    .filter((sentence) => sentence !== "")
    .join(" ");
}
