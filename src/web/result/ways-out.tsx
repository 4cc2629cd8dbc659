import { useState } from "react";
import type { ReactElement } from "react";
import type { Job, LeafShare, Programme } from "../../agronomy/index.ts";
import { Evidence, Rule, SourceLink } from "./evidence.tsx";
import { costWords, doseWords, inHundred, leastFreeOf, rangeWords } from "./words.ts";

interface WaysOutProps {
  readonly programmes: readonly Programme[];
  readonly aim: Job["aim"];
  readonly picked: string;
  readonly onPick: (id: string) => void;
}

/** Rows shown before "show all". */
const FIRST_ROWS = 6;
const ROW_HEIGHT = 44;

/** Every way out on one axis, best first; blocked ones after them with the reason. */
export function WaysOut({ programmes, aim, picked, onPick }: WaysOutProps): ReactElement {
  const [all, setAll] = useState(false);
  const open = programmes.filter((programme) => !programme.blocked);
  const blocked = programmes.filter((programme) => programme.blocked);
  const shown = open.filter(
    (programme, i) => all || i < FIRST_ROWS || programme.id === picked || programme.kind === "none",
  );
  const where = aim.where === "on the leaf" ? "on the leaf" : "in the tank";
  return (
    <>
      <p>
        Dot: free share {where}, least-free active. Bar beside it: its two ends. Upright line: your aim,{" "}
        {inHundred(aim.freeShare)} in 100. <Evidence of="computed" />
      </p>
      <fieldset className="ways">
        <legend className="visually-hidden">Pick a way out; order, amounts and card follow it</legend>
        {shown.map((programme) => (
          <Row
            key={programme.id}
            programme={programme}
            aim={aim}
            picked={picked === programme.id}
            onPick={onPick}
          />
        ))}
      </fieldset>
      {shown.length < open.length && (
        <button
          type="button"
          className="quiet"
          onClick={() => {
            setAll(true);
          }}
        >
          Show all {open.length}
        </button>
      )}
      {blocked.length > 0 && (
        <div className="blocked">
          <h4>Blocked</h4>
          <ul className="rules">
            {blocked.map((programme) => (
              <li key={programme.id} className="blocked-way">
                <strong>{programmeWords(programme)}</strong>
                <ul className="rules">
                  {programme.reasons.map((rule) => (
                    <Rule key={rule.id} rule={rule} />
                  ))}
                </ul>
              </li>
            ))}
          </ul>
        </div>
      )}
    </>
  );
}

function Row(props: {
  programme: Programme;
  aim: Job["aim"];
  picked: boolean;
  onPick: (id: string) => void;
}): ReactElement {
  const { programme, aim, picked, onPick } = props;
  const least = leastFreeOf(programme.actives, aim.where);
  const id = `way-${programme.id}`;
  const aimWords =
    programme.meetsAim === null ? "aim: not known" : programme.meetsAim ? "meets the aim" : "misses the aim";
  const several = programme.actives.length > 1 && least !== null ? ` (${least.verdict.name})` : "";
  const range = least === null ? null : rangeWords(least.share);
  return (
    <div className={`way ${picked ? "way-picked" : ""}`}>
      <label htmlFor={id} className="way-name">
        <input
          id={id}
          type="radio"
          name="way-out"
          value={programme.id}
          checked={picked}
          onChange={() => {
            onPick(programme.id);
          }}
        />
        <span>
          <strong>{programmeWords(programme)}</strong>
          <span className="way-words">
            {least === null ? "free share not known" : `${inHundred(least.free)} in 100 free${several}`}
            {range !== null && `, ${range}`}; {aimWords}
          </span>
        </span>
      </label>
      <RowPicture programme={programme} aim={aim} />
      <span className="way-cost">{costWords(programme.cost.perHa)}</span>
      <RowMore programme={programme} />
    </div>
  );
}

function RowPicture({ programme, aim }: { programme: Programme; aim: Job["aim"] }): ReactElement {
  const least = leastFreeOf(programme.actives, aim.where);
  const mid = ROW_HEIGHT / 2;
  const ends = least === null ? [] : endsOf(least.share);
  const low = Math.min(...ends);
  const high = Math.max(...ends);
  return (
    <svg className="way-picture" width="100%" height={ROW_HEIGHT} aria-hidden="true" focusable="false">
      <line x1="0" x2="100%" y1={mid} y2={mid} className="grid" />
      <line x1={percent(aim.freeShare)} x2={percent(aim.freeShare)} y1="0" y2={ROW_HEIGHT} className="aim" />
      {ends.length > 1 && (
        <rect
          x={percent(low)}
          y={mid - 6}
          width={percent(high - low)}
          height="12"
          className="bar bar-unsure"
        />
      )}
      {least !== null && <circle cx={percent(least.free)} cy={mid} r="7" className="dot" />}
    </svg>
  );
}

/** What is worth saying about a programme, behind one tap. */
function RowMore({ programme }: { programme: Programme }): ReactElement | null {
  const { reasons, remarks, publishedRuleDose } = programme;
  if (reasons.length === 0 && remarks.length === 0 && publishedRuleDose === null) return null;
  return (
    <details className="way-more">
      <summary>
        More<span className="visually-hidden"> about {programmeWords(programme)}</span>
      </summary>
      <ul className="rules">
        {reasons.map((rule) => (
          <Rule key={rule.id} rule={rule} />
        ))}
        {remarks.map((remark) => (
          <li key={remark.code} className="rule">
            <p>
              {remark.text} <Evidence of={remark.evidence} />{" "}
              {remark.source !== null && <SourceLink source={remark.source} />}
            </p>
          </li>
        ))}
        {publishedRuleDose !== null && (
          <li className="rule">
            <p>
              {publishedRuleDose.text} <Evidence of="published rule" />{" "}
              <SourceLink source={publishedRuleDose.source} />
            </p>
          </li>
        )}
      </ul>
    </details>
  );
}

/** A programme in words: what is added and how much, or how much less water. */
export function programmeWords(programme: Programme): string {
  const dose = doseWords(programme);
  return dose === null ? programme.name : `${programme.name}, ${dose}`;
}

function endsOf(share: LeafShare | Programme["actives"][number]["inTank"]): readonly number[] {
  if (share.free === null) return [];
  const ends =
    "withSolid" in share ? [share.withSolid, share.withoutSolid].filter((end) => end !== null) : [];
  return [share.free, ...ends.map((end) => end.free)];
}

function percent(share: number): string {
  return `${(100 * share).toFixed(2)}%`;
}
