import type { ReactElement } from "react";
import type { Job, Programme } from "../../agronomy/index.ts";
import type { Language } from "../../words/index.ts";
import { sayIn, useLanguage } from "../language/language-context.ts";
import { costWords, inHundred, leastFreeOf, placeWords, sureWords } from "./words.ts";
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
  const say = sayIn(useLanguage());
  const drawn = points.filter((point) => point.free !== null && point.programme.cost.perHa !== null);
  return (
    <details>
      <summary>{say("Cost against free share")}</summary>
      {drawn.length > 0 && <Plot points={drawn} aim={aim} picked={picked} />}
      <CostTable points={points} aim={aim} picked={picked} />
    </details>
  );
}

function Plot({ points, aim, picked }: { points: readonly Point[] } & Omit<CostPictureProps, "programmes">) {
  const language = useLanguage();
  const say = sayIn(language);
  const where = placeWords(aim.where, language);
  const costs = points.map(({ programme }) => programme.cost.perHa ?? 0);
  const most = roundUp(Math.max(...costs));
  const least = Math.min(aim.freeShare, ...points.map(({ free }) => free ?? 1));
  const from = STARTS.find((start) => start + (1 - start) * 0.05 <= least) ?? 0;
  const x = (cost: number): string => `${String(LEFT + ((100 - LEFT - RIGHT) * cost) / most)}%`;
  const y = (free: number): number => TOP + PLOT * (1 - (free - from) / (1 - from));
  return (
    <figure className="plot">
      <svg width="100%" height={HEIGHT} role="img" aria-labelledby="cost-title cost-text">
        <title id="cost-title">{say("Cost per hectare against free share")}</title>
        <desc id="cost-text">{costSentence(points, language)}</desc>
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
              {language.figures.figure(part * most)}
            </text>
          ))}
          <text x="100%" y={TOP + PLOT + 38} textAnchor="end">
            {say("cost per ha")}
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
        {say(
          "Free in 100 {where}, against cost per hectare. Dashed line: your aim. Filled: the row picked.",
          { where },
        )}{" "}
        {costSentence(points, language)}
      </figcaption>
    </figure>
  );
}

function CostTable({
  points,
  aim,
  picked,
}: { points: readonly Point[] } & Omit<CostPictureProps, "programmes">) {
  const language = useLanguage();
  const say = sayIn(language);
  return (
    <div className="table" role="region" aria-label={say("Cost against free share")} tabIndex={0}>
      <table className="words-table">
        <caption>{say("Every way out that is not blocked")}</caption>
        <thead>
          <tr>
            <th scope="col">{say("No.")}</th>
            <th scope="col">{say("Way out")}</th>
            <th scope="col">{say("Cost")}</th>
            <th scope="col">{say("Free in 100 {where}", { where: placeWords(aim.where, language) })}</th>
            <th scope="col">{say("Aim met")}</th>
          </tr>
        </thead>
        <tbody>
          {points.map(({ programme, number, free }) => (
            <tr key={programme.id}>
              <td>{number}</td>
              <th scope="row">
                {programmeWords(programme, language)}
                {programme.id === picked && ` (${say("picked")})`}
              </th>
              <td>{costWords(programme.cost.perHa, language)}</td>
              <td>{free === null ? say("not known") : inHundred(free, language)}</td>
              <td>{sureWords(programme.confidence, language) ?? say("not known")}</td>
            </tr>
          ))}
        </tbody>
      </table>
    </div>
  );
}

/** The picture in one sentence. */
function costSentence(points: readonly Point[], language: Language): string {
  const say = sayIn(language);
  const meets = points
    .filter(({ programme }) => programme.meetsAim === true)
    .sort((a, b) => (a.programme.cost.perHa ?? 0) - (b.programme.cost.perHa ?? 0));
  const cheapest = meets[0];
  if (cheapest === undefined) return say("None of them meets the aim.");
  const { programme, number } = cheapest;
  return say("Cheapest that meets the aim: number {number}, {way}, {cost}.", {
    number,
    way: programmeWords(programme, language),
    cost: costWords(programme.cost.perHa, language),
  });
}

/** The end of the cost scale: a round figure at or above the dearest. */
function roundUp(most: number): number {
  if (most <= 0) return 1;
  const power = 10 ** Math.floor(Math.log10(most));
  return power * ([1, 2, 4, 6, 8].find((step) => step * power >= most) ?? 10);
}
