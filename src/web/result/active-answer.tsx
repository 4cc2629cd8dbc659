import type { ReactElement } from "react";
import type { ActiveVerdict, DryingStep, Share, TankState } from "../../agronomy/index.ts";
import { sayIn, useLanguage } from "../language/language-context.ts";
import { Text } from "../language/text.tsx";
import { Numbers } from "./active-numbers.tsx";
import { clockSums } from "./chemistry-sums.ts";
import { Evidence, Rule, SourceLink } from "./evidence.tsx";
import { fillOf, Swatch } from "./patterns.tsx";
import type { Fill } from "./patterns.tsx";
import { SumList } from "./sum-list.tsx";
import { SharePicture } from "./share-picture.tsx";
import {
  clockWords,
  endsWords,
  figure,
  heldParts,
  heldWords,
  holderWords,
  inHundred,
  onMudWords,
  ownAcidWords,
  rangeWords,
} from "./words.ts";

interface ActiveAnswerProps {
  readonly verdict: ActiveVerdict;
  readonly path: readonly DryingStep[];
  readonly tank: TankState;
  readonly holdingTime_h: number | null;
  /** Keeps ids apart when the same active is shown for two programmes. */
  readonly idPrefix: string;
}

/** The three answers for one active, side by side and never blended. */
export function ActiveAnswer(props: ActiveAnswerProps): ReactElement {
  const { verdict, path, tank, holdingTime_h, idPrefix } = props;
  const language = useLanguage();
  const say = sayIn(language);
  const name = language.phrases.name(verdict.name);
  const clock = clockSums(verdict.byClock, holdingTime_h, language);
  const ends = endsWords(verdict.onLeaf, verdict.name, language);
  const mud = onMudWords(verdict.onMud, language);
  const acid = ownAcidWords(verdict.onLeaf, language);
  const strongest = path.at(-1)?.factor;
  const id = `${idPrefix}-${verdict.active}`;
  return (
    <article className="active" aria-labelledby={id}>
      <h4 id={id}>{name}</h4>
      <Answer where={say("In the tank")} share={verdict.inTank} />
      {mud !== null && (
        <p>
          {mud} <Evidence of="computed" />{" "}
          {verdict.onMud?.sources.map((source) => (
            <span key={source}>
              <SourceLink source={source} />{" "}
            </span>
          ))}
        </p>
      )}
      <SharePicture id={`${id}-picture`} verdict={verdict} path={path} />
      <Answer where={say("On the leaf")} share={verdict.onLeaf} />
      {ends !== null && <p>{ends}</p>}
      {acid !== null && <p>{acid}</p>}
      <Legend verdict={verdict} unsure={ends !== null} />
      {strongest !== undefined && verdict.onLeaf.free !== null && (
        <p className="about">
          {say(
            "Thin line: the free share while the drop dries to 1/{factor} of its water, in balance with the air. Upright line: where it lands.",
            { factor: figure(strongest, 2, language) },
          )}
          {verdict.onLeaf.tenfold !== null &&
            ` ${say("Dried tenfold: {share} in 100 free.", { share: inHundred(verdict.onLeaf.tenfold, language) })}`}
        </p>
      )}
      <div className="answer">
        <h5>{say("By the clock")}</h5>
        <p>
          {clockWords(verdict.byClock, language)} <Evidence of={verdict.byClock.evidence} />{" "}
          {verdict.byClock.sources.map((source) => (
            <span key={source}>
              <SourceLink source={source} />{" "}
            </span>
          ))}
        </p>
        {verdict.byClock.intact !== null && verdict.byClock.why !== null && (
          <p className="about">
            <Text of={verdict.byClock.why} />
          </p>
        )}
        <SumList summary="How it was worked out" sums={clock} />
      </div>
      {verdict.rules.length > 0 && (
        <ul className="rules">
          {verdict.rules.map((rule) => (
            <Rule key={rule.id} rule={rule} />
          ))}
        </ul>
      )}
      <Numbers id={id} verdict={verdict} path={path} tank={tank} />
    </article>
  );
}

function Answer({ where, share }: { where: string; share: Share }): ReactElement {
  const language = useLanguage();
  const say = sayIn(language);
  const range = rangeWords(share, language);
  const held = heldWords(share.heldBy, language);
  return (
    <div className="answer">
      <h5>{where}</h5>
      {share.free === null ? (
        <p className="figure-line">
          <span className="figure">{say("Not known.")}</span> <Text of={share.why ?? ""} />{" "}
          <Evidence of={share.evidence} />
        </p>
      ) : (
        <>
          <p className="figure-line">
            <span className="figure">{inHundred(share.free, language)}</span>{" "}
            <span className="unit">{say("in 100 free")}</span>
            {range !== null && <span className="unit"> ({range})</span>}
            {held !== "" && <span>. {say("Held: {held}", { held })}</span>}. <Evidence of={share.evidence} />
          </p>
          {share.why !== null && (
            <p className="about">
              <Text of={share.why} />
            </p>
          )}
        </>
      )}
    </div>
  );
}

/** What the fills mean, in words. */
function Legend({ verdict, unsure }: { verdict: ActiveVerdict; unsure: boolean }): ReactElement {
  const language = useLanguage();
  const say = sayIn(language);
  const holders = new Map<string, Fill>();
  for (const share of [
    verdict.inTank,
    verdict.onLeaf,
    verdict.onLeaf.withoutSolid,
    verdict.onLeaf.withSolid,
  ]) {
    for (const [holder, part] of heldParts(share?.heldBy ?? {})) {
      if (part >= 0.005) holders.set(holder, fillOf(holder));
    }
  }
  return (
    <ul className="legend">
      <li>
        <Swatch fill="free" /> {say("free")}
      </li>
      {[...holders].map(([holder, fill]) => (
        <li key={holder}>
          <Swatch fill={fill} />{" "}
          {holder.startsWith("undissolved")
            ? language.phrases.name(holder)
            : say("held {by}", { by: holderWords(holder, language) })}
        </li>
      ))}
      {unsure && (
        <li>
          <Swatch fill="unsure" /> {say("not known: held if the calcium salt forms")}
        </li>
      )}
    </ul>
  );
}
