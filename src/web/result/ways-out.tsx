import { useState } from "react";
import type { ReactElement } from "react";
import type { Job, LeafShare, Programme } from "../../agronomy/index.ts";
import { sayIn, useLanguage } from "../language/language-context.ts";
import { Text } from "../language/text.tsx";
import { ruleSum } from "./chemistry-sums.ts";
import { Evidence, Rule, SourceLink } from "./evidence.tsx";
import { commonRemarks, ownRemarks } from "../../report/index.ts";
import { programmeWords } from "./programme-words.ts";
import { SumList } from "./sum-list.tsx";
import { costWords, inHundred, leastFreeOf, placeWords, rangeWords, sureWords } from "./words.ts";

interface WaysOutProps {
  readonly programmes: readonly Programme[];
  readonly aim: Job["aim"];
  readonly picked: string;
  readonly onPick: (id: string) => void;
}

/** Rows shown before "show all". */
const FIRST_ROWS = 6;
const ROW_HEIGHT = 44;
/** Parts the axis may be cut into, so that its marks fall on round figures. */
const AXIS_STARTS = [0.9, 0.8, 0.6, 0.5, 0.2, 0] as const;

/** Every way out on one axis, best first; blocked ones after them with the reason. */
export function WaysOut({ programmes, aim, picked, onPick }: WaysOutProps): ReactElement {
  const [all, setAll] = useState(false);
  const language = useLanguage();
  const say = sayIn(language);
  const open = programmes.filter((programme) => !programme.blocked);
  const blocked = programmes.filter((programme) => programme.blocked);
  const shown = open.filter(
    (programme, i) => all || i < FIRST_ROWS || programme.id === picked || programme.kind === "none",
  );
  const from = axisStart(shown, aim);
  return (
    <>
      <p>
        {say(
          "Dot: free share {where}, least-free active. Line through it: 9 cases in 10 that fit what you know. Hatched: its two ends. Dashed line: your aim, {share} in 100.",
          { where: placeWords(aim.where, language), share: inHundred(aim.freeShare, language) },
        )}{" "}
        <Evidence of="computed" />
      </p>
      {commonRemarks(programmes).map((remark) => (
        <p key={remark.text}>
          <Text of={remark.text} /> <Evidence of={remark.evidence} />
        </p>
      ))}
      <fieldset className="ways">
        <legend className="visually-hidden">
          {say("Pick a way out; order, amounts and card follow it")}
        </legend>
        <WaysAxis from={from} />
        {shown.map((programme) => (
          <Row
            key={programme.id}
            programme={programme}
            aim={aim}
            from={from}
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
          {say("Show all {count}", { count: open.length })}
        </button>
      )}
      {blocked.length > 0 && (
        <div className="blocked">
          <h4>{say("Blocked")}</h4>
          <ul className="rules">
            {blocked.map((programme) => (
              <li key={programme.id} className="blocked-way">
                <strong>{programmeWords(programme, language)}</strong>
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

/** The mark at which the axis begins: the highest that leaves every end and the aim on it. */
function axisStart(programmes: readonly Programme[], aim: Job["aim"]): number {
  const shares = programmes.flatMap((programme) => {
    const least = leastFreeOf(programme.actives, aim.where);
    return least === null ? [] : [...endsOf(least.share), least.share.low ?? 1];
  });
  const least = Math.min(aim.freeShare, ...shares);
  return AXIS_STARTS.find((start) => start + (1 - start) * 0.05 <= least) ?? 0;
}

/** The scale above the rows. */
function WaysAxis({ from }: { from: number }): ReactElement {
  const language = useLanguage();
  const say = sayIn(language);
  return (
    <div className="way ways-axis" aria-hidden="true">
      <span className="way-picture">
        {[0, 0.5, 1].map((part) => (
          <span key={part}>
            {inHundred(from + part * (1 - from), language)}
            {part === 1 && ` ${say("in 100 free")}`}
          </span>
        ))}
      </span>
    </div>
  );
}

function Row(props: {
  programme: Programme;
  aim: Job["aim"];
  from: number;
  picked: boolean;
  onPick: (id: string) => void;
}): ReactElement {
  const { programme, aim, from, picked, onPick } = props;
  const language = useLanguage();
  const say = sayIn(language);
  const least = leastFreeOf(programme.actives, aim.where);
  const id = `way-${programme.id}`;
  const aimWords =
    programme.meetsAim === null
      ? say("aim: not known")
      : say(programme.meetsAim ? "meets the aim" : "misses the aim");
  const several =
    programme.actives.length > 1 && least !== null ? ` (${language.phrases.name(least.verdict.name)})` : "";
  const range = least === null ? null : rangeWords(least.share, language);
  const sure = sureWords(programme.confidence, language);
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
          <strong>{programmeWords(programme, language)}</strong>
          <span className="way-words">
            {least === null
              ? say("free share not known")
              : `${say("{share} in 100 free", { share: inHundred(least.free, language) })}${several}`}
            {range !== null && `, ${range}`}; {aimWords}
            {sure !== null && `, ${say("sure in {sure}", { sure })}`}
          </span>
        </span>
      </label>
      <RowPicture programme={programme} aim={aim} from={from} />
      <span className="way-cost">{costWords(programme.cost.perHa, language)}</span>
      <RowMore programme={programme} />
    </div>
  );
}

function RowPicture(props: { programme: Programme; aim: Job["aim"]; from: number }): ReactElement {
  const { programme, aim, from } = props;
  const at = (share: number): string => percent((share - from) / (1 - from));
  const least = leastFreeOf(programme.actives, aim.where);
  const mid = ROW_HEIGHT / 2;
  const ends = least === null ? [] : endsOf(least.share);
  const low = Math.min(...ends);
  const high = Math.max(...ends);
  return (
    <svg className="way-picture" width="100%" height={ROW_HEIGHT} aria-hidden="true" focusable="false">
      <line x1="0" x2="100%" y1={mid} y2={mid} className="grid" />
      <line x1={at(aim.freeShare)} x2={at(aim.freeShare)} y1="0" y2={ROW_HEIGHT} className="aim" />
      {ends.length > 1 && (
        <rect
          x={at(low)}
          y={mid - 6}
          width={percent((high - low) / (1 - from))}
          height="12"
          className="bar bar-unsure"
        />
      )}
      {least !== null && least.share.low !== null && least.share.high !== null && (
        <line x1={at(least.share.low)} x2={at(least.share.high)} y1={mid} y2={mid} className="interval" />
      )}
      {least !== null && <circle cx={at(least.free)} cy={mid} r="7" className="dot" />}
    </svg>
  );
}

/** What is worth saying about a programme, behind one tap. */
function RowMore({ programme }: { programme: Programme }): ReactElement | null {
  const { reasons, publishedRuleDose } = programme;
  const remarks = ownRemarks(programme);
  const language = useLanguage();
  const say = sayIn(language);
  const rule = ruleSum(programme, language);
  if (reasons.length === 0 && remarks.length === 0 && publishedRuleDose === null) return null;
  return (
    <details className="way-more">
      <summary>
        {say("More")}
        <span className="visually-hidden">
          {" "}
          {say("about {way}", { way: programmeWords(programme, language) })}
        </span>
      </summary>
      <ul className="rules">
        {reasons.map((rule) => (
          <Rule key={rule.id} rule={rule} />
        ))}
        {remarks.map((remark) => (
          <li key={remark.code} className="rule">
            <p>
              <Text of={remark.text} /> <Evidence of={remark.evidence} />{" "}
              {remark.source !== null && <SourceLink source={remark.source} />}
            </p>
          </li>
        ))}
        {publishedRuleDose !== null && (
          <li className="rule">
            <p>
              <Text of={publishedRuleDose.text} /> <Evidence of="published rule" />{" "}
              <SourceLink source={publishedRuleDose.source} />
            </p>
            {rule !== null && <SumList summary="How the rule was worked out" sums={[rule]} />}
          </li>
        )}
      </ul>
    </details>
  );
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
