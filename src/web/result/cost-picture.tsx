import type { ReactElement } from "react";
import type { Job, Programme } from "../../agronomy/index.ts";
import { costWords, inHundred, leastFreeOf, sureWords } from "./words.ts";
import { programmeWords } from "./programme-words.ts";

/** Heights of the picture [px]. */
const PLOT = 190;
const TOP = 14;
const HEIGHT = TOP + PLOT + 44;
const LEFT = 9;
const RIGHT = 5;
const STARTS = [0.9, 0.8, 0.6, 0.5, 0.2, 0] as const;

interface Point {
  readonly programme: Programme;
  readonly number: number;
  readonly free: number | null;
}

interface CostPictureProps {
  readonly programmes: readonly Programme[];
  readonly aim: Job["aim"];
  readonly picked: string;
}

/** Cost against free share of every way out that is not blocked, numbered as in the table behind it. */
export function CostPicture({ programmes, aim, picked }: CostPictureProps): ReactElement {
  const points = programmes
    .filter((programme) => !programme.blocked)
    .map((programme, index): Point => ({
      programme,
      number: index + 1,
      free: leastFreeOf(programme.actives, aim.where)?.free ?? null,
    }));
  const drawn = points.filter((point) => point.free !== null && point.programme.cost.perHa !== null);
  return (
    <details>
      <summary>Cost against free share</summary>
      {drawn.length > 0 && <Plot points={drawn} aim={aim} picked={picked} />}
      <CostTable points={points} aim={aim} picked={picked} />
    </details>
  );
}

function Plot({ points, aim, picked }: { points: readonly Point[] } & Omit<CostPictureProps, "programmes">) {
  const costs = points.map(({ programme }) => programme.cost.perHa ?? 0);
  const most = roundUp(Math.max(...costs));
  const least = Math.min(aim.freeShare, ...points.map(({ free }) => free ?? 1));
  const from = STARTS.find((start) => start + (1 - start) * 0.05 <= least) ?? 0;
  const x = (cost: number): string => `${String(LEFT + ((100 - LEFT - RIGHT) * cost) / most)}%`;
  const y = (free: number): number => TOP + PLOT * (1 - (free - from) / (1 - from));
  return (
    <figure className="plot">
      <svg width="100%" height={HEIGHT} role="img" aria-labelledby="cost-title cost-text">
        <title id="cost-title">Cost per hectare against free share</title>
        <desc id="cost-text">{costSentence(points)}</desc>
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
            <text key={part} x={x(part * most)} y={TOP + PLOT + 18} textAnchor="middle">
              {part * most}
            </text>
          ))}
          <text x="100%" y={TOP + PLOT + 38} textAnchor="end">
            cost per ha
          </text>
        </g>
        <line x1={`${String(LEFT)}%`} x2="100%" y1={y(aim.freeShare)} y2={y(aim.freeShare)} className="aim" />
        {points.map(({ programme, number, free }) => (
          <g key={programme.id} className={programme.id === picked ? "point-picked" : "point"}>
            <circle cx={x(programme.cost.perHa ?? 0)} cy={y(free ?? from)} r="11" />
            <text x={x(programme.cost.perHa ?? 0)} y={y(free ?? from) + 4.5} textAnchor="middle">
              {number}
            </text>
          </g>
        ))}
      </svg>
      <figcaption className="about">
        Free in 100 {aim.where}, against cost per hectare. Dashed line: your aim. Filled: the row picked.{" "}
        {costSentence(points)}
      </figcaption>
    </figure>
  );
}

function CostTable({
  points,
  aim,
  picked,
}: { points: readonly Point[] } & Omit<CostPictureProps, "programmes">) {
  return (
    <div className="table" role="region" aria-label="Cost against free share" tabIndex={0}>
      <table className="words-table">
        <caption>Every way out that is not blocked</caption>
        <thead>
          <tr>
            <th scope="col">No.</th>
            <th scope="col">Way out</th>
            <th scope="col">Cost</th>
            <th scope="col">Free in 100 {aim.where}</th>
            <th scope="col">Aim met</th>
          </tr>
        </thead>
        <tbody>
          {points.map(({ programme, number, free }) => (
            <tr key={programme.id}>
              <td>{number}</td>
              <th scope="row">
                {programmeWords(programme)}
                {programme.id === picked && " (picked)"}
              </th>
              <td>{costWords(programme.cost.perHa)}</td>
              <td>{free === null ? "not known" : inHundred(free)}</td>
              <td>{sureWords(programme.confidence) ?? "not known"}</td>
            </tr>
          ))}
        </tbody>
      </table>
    </div>
  );
}

/** The picture in one sentence. */
function costSentence(points: readonly Point[]): string {
  const meets = points
    .filter(({ programme }) => programme.meetsAim === true)
    .sort((a, b) => (a.programme.cost.perHa ?? 0) - (b.programme.cost.perHa ?? 0));
  const cheapest = meets[0];
  if (cheapest === undefined) return "None of them meets the aim.";
  const { programme, number } = cheapest;
  return `Cheapest that meets the aim: number ${String(number)}, ${programmeWords(programme)}, ${costWords(programme.cost.perHa)}.`;
}

/** The end of the cost scale: a round figure at or above the dearest. */
function roundUp(most: number): number {
  if (most <= 0) return 1;
  const power = 10 ** Math.floor(Math.log10(most));
  return power * ([1, 2, 4, 6, 8].find((step) => step * power >= most) ?? 10);
}
