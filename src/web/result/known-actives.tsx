import type { ReactElement } from "react";
import type { KnownOfActive, Provenance, Sorption, SourceUsed } from "../../agronomy/index.ts";
import type { Language } from "../../words/index.ts";
import { Section } from "../form/section.tsx";
import { sayIn, useLanguage } from "../language/language-context.ts";
import { Text } from "../language/text.tsx";
import { Evidence, SourceLink } from "./evidence.tsx";
import { Sources } from "./water-facts.tsx";
import { figure } from "./words.ts";

const BINDING = {
  constants: "Binding constants were measured on it.",
  analogy: "Binding constants are borrowed from a like substance.",
  none: "No binding by metals is known: what holds it is not computed.",
  "nothing to bind": "Metals have nothing to bind here: all of it stays free of them.",
} as const;

interface KnownProps {
  readonly known: readonly KnownOfActive[];
  /** Sources of these facts that the answer itself does not rest on. */
  readonly sources: readonly SourceUsed[];
}

/** What the data hold of each active: sensitivities, mud, restrictions, and how strong the evidence is. */
export function KnownActives({ known, sources }: KnownProps): ReactElement {
  const language = useLanguage();
  const say = sayIn(language);
  return (
    <Section
      id="section-known"
      title="What is known of the actives"
      lead="Published or in use; beside the answers above, not part of them."
    >
      {known.map((one) => (
        <details key={one.active} className="known">
          <summary>{language.phrases.name(one.name)}</summary>
          <KnownActive known={one} />
        </details>
      ))}
      <p className="about">{say("The label and the law come first.")}</p>
      {sources.length > 0 && (
        <details>
          <summary>
            {say("{count} further sources, beside those of the answer", { count: sources.length })}
          </summary>
          <Sources sources={sources} />
        </details>
      )}
    </Section>
  );
}

function KnownActive({ known }: { known: KnownOfActive }): ReactElement {
  const { name, binding, bindingNote, sensitivities, sorption, cautions } = known;
  const language = useLanguage();
  const say = sayIn(language);
  return (
    <>
      <p>
        {say(BINDING[binding])}{" "}
        {bindingNote !== null && (
          <span className="about">
            <Text of={bindingNote} />
          </span>
        )}
      </p>
      <h4>{say("Waters that {active} suffers in", { active: language.phrases.name(name) })}</h4>
      {sensitivities.length === 0 ? (
        <p>{say("No published sensitivity to a water was found. That is not “none”.")}</p>
      ) : (
        <Sensitivities known={known} />
      )}
      <h4>{say("Held by mud")}</h4>
      {sorption.length === 0 && <p>{say("No figure for soil or mud was found.")}</p>}
      {sorption.map((one) => (
        <p key={`${one.measure} ${one.source} ${String(one.low_LPerKg)}`}>
          {one.measure}: {sorptionWords(one, language)} <Known by={one} />
        </p>
      ))}
      {sorption.length > 0 && (
        <p className="about">
          {say(
            "Give the suspended solids or turbidity of the water: what its mud takes then stands with the three answers.",
          )}
        </p>
      )}
      <h4>{say("Restrictions and cautions in the data")}</h4>
      {cautions.length === 0 && <p>{say("None in the data. The label may hold more.")}</p>}
      <ul className="rules">
        {cautions.map((caution) => (
          <li key={caution.text} className="rule">
            <p>
              <Text of={caution.text} /> <Known by={caution} />
            </p>
          </li>
        ))}
      </ul>
    </>
  );
}

function Sensitivities({ known }: { known: KnownOfActive }): ReactElement {
  const language = useLanguage();
  const say = sayIn(language);
  const label = say("Waters that {active} suffers in", { active: language.phrases.name(known.name) });
  const heads = [say("What"), say("How much"), say("From where on"), say("How it is known")];
  return (
    <div className="table" role="region" aria-label={label} tabIndex={0}>
      <table className="words-table">
        <thead>
          <tr>
            {heads.map((head) => (
              <th key={head} scope="col">
                {head}
              </th>
            ))}
          </tr>
        </thead>
        <tbody>
          {known.sensitivities.map((one) => (
            <tr key={one.factor}>
              <th scope="row">{language.phrases.name(one.factor)}</th>
              <td>{language.phrases.name(one.level)}</td>
              <td>{one.threshold === null ? say("not said") : <Text of={one.threshold} />}</td>
              <td>
                <Evidence of={one.evidence} /> <Known by={one} />
              </td>
            </tr>
          ))}
        </tbody>
      </table>
    </div>
  );
}

/** The source of a fact, and whether it was seen. */
function Known({ by }: { by: Provenance }): ReactElement {
  const say = sayIn(useLanguage());
  return (
    <>
      <SourceLink source={by.source} />
      {by.fromMemory && <span className="about"> ({say("from memory")})</span>}
    </>
  );
}

function sorptionWords({ measure, low_LPerKg, high_LPerKg, matrix }: Sorption, language: Language): string {
  const say = sayIn(language);
  const low = figure(low_LPerKg, 3, language);
  const range =
    low_LPerKg === high_LPerKg
      ? low
      : say("{low} to {high}", { low, high: figure(high_LPerKg, 3, language) });
  return measure === "Kd"
    ? say("{range} L per kg ({matrix}).", { range, matrix: language.phrases.name(matrix) })
    : say("{range} L per kg of organic carbon in the soil.", { range });
}
