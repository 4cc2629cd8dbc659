import type { ReactElement } from "react";
import type { KnownOfActive, Provenance, Sorption, SourceUsed } from "../../agronomy/index.ts";
import { Section } from "../form/section.tsx";
import { Evidence, SourceLink } from "./evidence.tsx";
import { Sources } from "./water-facts.tsx";
import { figure } from "./words.ts";

const words = {
  title: "What is known of the actives",
  lead: "Published or in use; beside the answers above, not part of them.",
  binding: {
    constants: "Binding constants were measured on it.",
    analogy: "Binding constants are borrowed from a like substance.",
    none: "No binding by metals is known: what holds it is not computed.",
    "nothing to bind": "Metals have nothing to bind here: all of it stays free of them.",
  },
  sensitivities: (name: string): string => `Waters that ${name} suffers in`,
  sensitivityHeads: ["What", "How much", "From where on", "How it is known"],
  noSensitivities: "No published sensitivity to a water was found. That is not “none”.",
  noThreshold: "not said",
  sorption: "Held by mud",
  noSorption: "No figure for soil or mud was found.",
  perKg: {
    Kd: (range: string, matrix: string): string => `${range} L per kg (${matrix}).`,
    Koc: (range: string): string => `${range} L per kg of organic carbon in the soil.`,
  },
  mudOfThisWater:
    "Give the suspended solids or turbidity of the water: what its mud takes then stands with the three answers.",
  restrictions: "Restrictions and cautions in the data",
  noRestrictions: "None in the data. The label may hold more.",
  label: "The label and the law come first.",
  fromMemory: "from memory",
  beside: (count: number): string => `${String(count)} further sources, beside those of the answer`,
};

interface KnownProps {
  readonly known: readonly KnownOfActive[];
  /** Sources of these facts that the answer itself does not rest on. */
  readonly sources: readonly SourceUsed[];
}

/** What the data hold of each active: sensitivities, mud, restrictions, and how strong the evidence is. */
export function KnownActives({ known, sources }: KnownProps): ReactElement {
  return (
    <Section id="section-known" title={words.title} lead={words.lead}>
      {known.map((one) => (
        <details key={one.active} className="known">
          <summary>{one.name}</summary>
          <KnownActive known={one} />
        </details>
      ))}
      <p className="about">{words.label}</p>
      {sources.length > 0 && (
        <details>
          <summary>{words.beside(sources.length)}</summary>
          <Sources sources={sources} />
        </details>
      )}
    </Section>
  );
}

function KnownActive({ known }: { known: KnownOfActive }): ReactElement {
  const { name, binding, bindingNote, sensitivities, sorption, cautions } = known;
  return (
    <>
      <p>
        {words.binding[binding]} {bindingNote !== null && <span className="about">{bindingNote}</span>}
      </p>
      <h4>{words.sensitivities(name)}</h4>
      {sensitivities.length === 0 ? <p>{words.noSensitivities}</p> : <Sensitivities known={known} />}
      <h4>{words.sorption}</h4>
      {sorption.length === 0 && <p>{words.noSorption}</p>}
      {sorption.map((one) => (
        <p key={`${one.measure} ${one.source} ${String(one.low_LPerKg)}`}>
          {one.measure}: {sorptionWords(one)} <Known by={one} />
        </p>
      ))}
      {sorption.length > 0 && <p className="about">{words.mudOfThisWater}</p>}
      <h4>{words.restrictions}</h4>
      {cautions.length === 0 && <p>{words.noRestrictions}</p>}
      <ul className="rules">
        {cautions.map((caution) => (
          <li key={caution.text} className="rule">
            <p>
              {caution.text} <Known by={caution} />
            </p>
          </li>
        ))}
      </ul>
    </>
  );
}

function Sensitivities({ known }: { known: KnownOfActive }): ReactElement {
  const label = words.sensitivities(known.name);
  return (
    <div className="table" role="region" aria-label={label} tabIndex={0}>
      <table className="words-table">
        <thead>
          <tr>
            {words.sensitivityHeads.map((head) => (
              <th key={head} scope="col">
                {head}
              </th>
            ))}
          </tr>
        </thead>
        <tbody>
          {known.sensitivities.map((one) => (
            <tr key={one.factor}>
              <th scope="row">{one.factor}</th>
              <td>{one.level}</td>
              <td>{one.threshold ?? words.noThreshold}</td>
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
  return (
    <>
      <SourceLink source={by.source} />
      {by.fromMemory && <span className="about"> ({words.fromMemory})</span>}
    </>
  );
}

function sorptionWords({ measure, low_LPerKg, high_LPerKg, matrix }: Sorption): string {
  const range =
    low_LPerKg === high_LPerKg ? figure(low_LPerKg) : `${figure(low_LPerKg)} to ${figure(high_LPerKg)}`;
  return measure === "Kd" ? words.perKg.Kd(range, matrix) : words.perKg.Koc(range);
}
