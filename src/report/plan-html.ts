import type { ActiveVerdict, LeafShare, Plan, Programme, Share } from "../agronomy/index.ts";
import { figure, inHundred, pHText, perHundred } from "./figures.ts";
import { html, nothing, trusted } from "./html.ts";
import type { SafeHtml } from "./html.ts";
import { mark } from "./html-mark.ts";
import {
  clockText,
  concentrationText,
  doseText,
  dryingText,
  heldList,
  heldValueText,
  leafEndsText,
  ownAcidText,
  leastFree,
  programmeCostText,
  rangeText,
  standing,
} from "./sentences.ts";
import { uncertaintySentences } from "./uncertainty-words.ts";
import { shareBars } from "./share-bars.ts";
import { wordIssue } from "./wording.ts";

/** The water as completed. */
export function waterSection(plan: Plan): SafeHtml {
  const { water, tank } = plan;
  const ions = Object.entries(water.ions_molPerL).sort(([, a], [, b]) => b - a);
  const balance =
    water.chargeBalance_percent === null
      ? "too little measured"
      : `${figure(water.chargeBalance_percent, 2)} %`;
  return html`<section>
    <h2>Water</h2>
    <p>
      <strong>Hardness ${figure(water.hardness_mgPerL_asCaCO3)} mg/L as CaCO3</strong>, alkalinity
      ${figure(water.alkalinity_mgPerL_asCaCO3)} mg/L as CaCO3, pH ${pHText(water.pH)}. Charge balance of the
      readings: ${balance}. Tank as planned: pH ${pHText(tank.pH)}. ${mark("computed")}
    </p>
    <table class="narrow">
      <caption>
        Composition used, after completion
      </caption>
      <thead>
        <tr>
          <th scope="col">Component</th>
          <th scope="col">Total, mmol/L</th>
        </tr>
      </thead>
      <tbody>
        ${ions.map(
          ([name, total]) =>
            html`<tr>
              <th scope="row">${name}</th>
              <td class="n">${figure(total * 1000)}</td>
            </tr>`,
        )}
      </tbody>
    </table>
  </section>`;
}

/** The three answers for each active of a tank, with bars and in words. */
export function activesSection(
  heading: string,
  { actives, drying }: Pick<Programme, "actives" | "drying">,
): SafeHtml {
  return html`<section>
    <h2>${heading}</h2>
    ${actives.map((active) => activeTable(active))}
    <p>${dryingText(drying)} ${mark("computed")}</p>
  </section>`;
}

function activeTable(active: ActiveVerdict): SafeHtml {
  const ends = leafEndsText(active.onLeaf);
  const rules = active.rules.map(
    (rule) =>
      html`<li>${LEVEL[rule.level]}: ${rule.text} ${against(rule.contradictedBy)}${mark(rule.evidence)}</li>`,
  );
  return html`<div class="block">
      <h3>${active.name}, ${concentrationText(active)}</h3>
      ${shareBars(active)}
      <table>
        <caption>
          Three answers for ${active.name}
        </caption>
        <thead>
          <tr>
            <th scope="col">Where</th>
            <th scope="col">Free or intact</th>
            <th scope="col">Range</th>
            <th scope="col">What holds it, and why</th>
          </tr>
        </thead>
        <tbody>
          ${shareRow("In the tank", active.inTank, [])}
          ${shareRow("On the leaf", active.onLeaf, [ends === null ? null : `${ends}.`, ownAcidText(active.onLeaf)])}
          <tr>
            <th scope="row">By the clock</th>
            <td>${active.byClock.intact === null ? "not known" : inHundred(active.byClock.intact)}</td>
            <td>${rangeText(active.byClock.low, active.byClock.high)}</td>
            <td>${clockText(active.byClock)} ${mark(active.byClock.evidence)}</td>
          </tr>
        </tbody>
      </table>
    </div>
    ${
      rules.length === 0
        ? nothing
        : html`<ul>
            ${rules}
          </ul>`
    }`;
}

function shareRow(where: string, share: Share | LeafShare, more: readonly (string | null)[]): SafeHtml {
  const held = heldList(share.heldBy);
  const why = [held === "" ? "" : `Held in 100: ${held}.`, ...more, share.why];
  const free = share.free === null ? "not known" : inHundred(share.free);
  return html`<tr>
    <th scope="row">${where}</th>
    <td>${free}</td>
    <td>${rangeText(share.low, share.high)}</td>
    <td>${why.filter((text) => text !== null && text !== "").join(" ")} ${mark(share.evidence)}</td>
  </tr>`;
}

const LEVEL = { block: "Blocked", warn: "Warning", note: "Note" } as const;

/** How the ranges were found, and what would narrow them. */
export function uncertaintySection({ uncertainty, programmes }: Plan): SafeHtml {
  if (uncertainty === null) return html``;
  const name = programmes.find(({ id }) => id === uncertainty.about.programme)?.name ?? "";
  return html`<section>
    <h2>How sure</h2>
    ${uncertaintySentences(uncertainty, name).map((sentence) => html`<p>${sentence}</p>`)}
  </section>`;
}

/** Every way out compared, best first. */
export function programmesSection(plan: Plan): SafeHtml {
  const chosen = plan.programmes.find((one) => one.id === plan.chosen);
  const said =
    chosen === undefined
      ? html`<p>
          <strong>No programme meets the aim.</strong>
        </p>`
      : html`<p>
          Chosen: <strong>${chosen.name}, ${doseText(chosen)}</strong>, ${figure(chosen.waterVolume_LPerHa)}
          L/ha.
        </p>`;
  return html`<section>
    <h2>Ways out</h2>
    ${said} ${worthLine(plan)}
    <table>
      <caption>
        Programmes, best first; free is the least over the actives, in 100
      </caption>
      <thead>
        <tr>
          <th scope="col">Programme</th>
          <th scope="col">Dose</th>
          <th scope="col">Water, L/ha</th>
          <th scope="col">Free in the tank</th>
          <th scope="col">Free on the leaf</th>
          <th scope="col">Aim</th>
          <th scope="col">Tank pH</th>
          <th scope="col">Cost</th>
        </tr>
      </thead>
      <tbody>
        ${plan.programmes.map((one) => programmeRow(one, one.id === plan.chosen))}
      </tbody>
    </table>
  </section>`;
}

/** What the active held as planned is worth, to set the costs against. */
function worthLine(plan: Plan): SafeHtml {
  const planned = plan.programmes.find((one) => one.kind === "none");
  const worth = planned === undefined ? null : heldValueText(planned);
  return worth === null ? nothing : html`<p>${worth} ${mark("computed")}</p>`;
}

function programmeRow(programme: Programme, isChosen: boolean): SafeHtml {
  const free = (where: "in the tank" | "on the leaf"): string => {
    const share = leastFree(programme.actives, where);
    return share === null ? "not known" : perHundred(share);
  };
  return html`<tr${isChosen ? trusted(' class="chosen"') : nothing}><th scope="row">${programme.name}${isChosen ? " (chosen)" : ""}</th><td>${doseText(programme)}</td><td class="n">${figure(programme.waterVolume_LPerHa)}</td><td class="n">${free("in the tank")}</td><td class="n">${free("on the leaf")}</td><td>${standing(programme)}</td><td class="n">${pHText(programme.tank.pH)}</td><td>${programmeCostText(programme)}</td></tr>
`;
}

/** What is known of each way out, what was assumed, what to look at. */
export function reasoningSection(plan: Plan): SafeHtml {
  const remarks = plan.programmes.flatMap((programme) => [
    ...programme.reasons.map(
      (one) =>
        html`<li>
          ${programme.name}: ${LEVEL[one.level].toLowerCase()}: ${one.text}
          ${against(one.contradictedBy)}${mark(one.evidence)}
        </li>`,
    ),
    ...programme.remarks.map((one) => html`<li>${programme.name}: ${one.text} ${mark(one.evidence)}</li>`),
  ]);
  const said = [...new Set([...plan.water.issues, ...plan.issues].map((issue) => wordIssue(issue)))];
  return html`<section>
    <h2>Why, and what was taken for granted</h2>
    ${
      remarks.length === 0
        ? nothing
        : html`<ul>
            ${remarks}
          </ul>`
    }
    ${
      plan.water.assumptions.length === 0
        ? nothing
        : html`<h3>Not measured, so assumed</h3>
            <ul>
              ${plan.water.assumptions.map((one) => html`<li>${one.about}: ${one.why} ${mark(one.evidence)}</li>`)}
            </ul>`
    }
    ${
      said.length === 0
        ? nothing
        : html`<h3>To look at</h3>
            <ul>
              ${said.map((text) => html`<li>${text}</li>`)}
            </ul>`
    }
  </section>`;
}

/** Exactly the sources this plan rests on. */
export function sourcesSection(plan: Plan): SafeHtml {
  return html`<section>
    <h2>Sources used</h2>
    <ul>
      ${plan.sources.map((one) => html`<li id="source-${one.key}">${one.citation}${one.fromMemory ? " (from memory)" : ""}</li>`)}
    </ul>
    <p>
      Hardstand ${plan.versions.hardstand}, data ${plan.versions.data}. The label and local law come before
      anything said here.
    </p>
  </section>`;
}

function against(contradictedBy: string | null): string {
  return contradictedBy === null ? "" : `Contradicted: ${contradictedBy} `;
}
