import type { ActiveVerdict, Plan, Programme, RuleVerdict } from "../agronomy/index.ts";
import { wrap } from "./card-text.ts";
import { amountText, figure, pHText } from "./figures.ts";
import {
  clockText,
  concentrationText,
  doseText,
  dryingText,
  evidenceMark,
  heldValueText,
  leafEndsText,
  ownAcidText,
  leastFree,
  programmeCostText,
  jarStart,
  shareText,
  standing,
} from "./sentences.ts";
import { uncertaintySentences } from "./uncertainty-words.ts";
import { wordIssue } from "./wording.ts";

/** The answer to a job as plain text: numbers first, then why. At most 78 signs wide. */
export function planText(plan: Plan): string {
  const chosen = plan.programmes.find((programme) => programme.id === plan.chosen) ?? null;
  const parts: string[][] = [
    waterLines(plan),
    activesLines(plan),
    programmesLines(plan, chosen),
    uncertaintyLines(plan),
    orderLines(plan),
    loadsLines(plan),
    jarLines(plan),
    cautionLines(plan),
    assumptionLines(plan),
    issueLines(plan),
    sourceLines(plan),
  ];
  return `${parts
    .filter((lines) => lines.length > 0)
    .map((lines) => lines.join("\n"))
    .join("\n\n")}\n`;
}

function waterLines(plan: Plan): string[] {
  const { water, tank } = plan;
  return [
    ...wrap(
      `${water.source}: hardness ${figure(water.hardness_mgPerL_asCaCO3)} mg/L as CaCO3, alkalinity ` +
        `${figure(water.alkalinity_mgPerL_asCaCO3)} mg/L as CaCO3, pH ${pHText(water.pH)}.`,
      "  ",
    ),
    `Tank as planned: pH ${pHText(tank.pH)}, ionic strength ${figure(tank.ionicStrength_molPerL)} mol/L${
      tank.extrapolated ? " (outside the fitted range)" : ""
    }. ${evidenceMark("computed")}`,
  ];
}

function activesLines(plan: Plan): string[] {
  const lines = ["AS PLANNED, nothing added"];
  for (const active of plan.actives) lines.push(...activeLines(active));
  const planned = plan.programmes.find((programme) => programme.kind === "none");
  if (planned !== undefined) lines.push(...wrap(dryingText(planned.drying), "  "));
  return lines;
}

function activeLines(active: ActiveVerdict): string[] {
  const lines = [`${active.name} (${concentrationText(active)})`];
  const say = (label: string, text: string, evidence: string): void => {
    lines.push(...wrap(`  ${label.padEnd(13)}${text} ${evidence}`, "               "));
  };
  say("in the tank", shareText(active.inTank), evidenceMark(active.inTank.evidence));
  const ends = leafEndsText(active.onLeaf);
  say(
    "on the leaf",
    [shareText(active.onLeaf), ends, ownAcidText(active.onLeaf)].filter((text) => text !== null).join(". "),
    evidenceMark(active.onLeaf.evidence),
  );
  say("by the clock", clockText(active.byClock), evidenceMark(active.byClock.evidence));
  for (const rule of active.rules) lines.push(...ruleLines(rule));
  return lines;
}

const LEVEL_WORD = { block: "blocked", warn: "warning", note: "note" } as const;

function ruleLines(rule: RuleVerdict): string[] {
  const against = rule.contradictedBy === null ? "" : ` Contradicted: ${rule.contradictedBy}`;
  return wrap(`  ${LEVEL_WORD[rule.level]}: ${rule.text}${against} ${evidenceMark(rule.evidence)}`, "    ");
}

function programmesLines(plan: Plan, chosen: Programme | null): string[] {
  const lines = ["WAYS OUT, best first (free on the leaf; the figure is the least over the actives)"];
  const planned = plan.programmes.find((programme) => programme.kind === "none");
  const worth = planned === undefined ? null : heldValueText(planned);
  if (worth !== null) lines.push(...wrap(`${worth} ${evidenceMark("computed")}`, "  "));
  plan.programmes.forEach((programme, index) => {
    const mark = programme.id === plan.chosen ? "*" : " ";
    const leaf = leastFree(programme.actives, "on the leaf");
    const free = leaf === null ? "not known" : `${figure(100 * leaf, 2)} in 100 free`;
    const confidence =
      programme.confidence === null ? "" : `, met in ${figure(100 * programme.confidence, 2)} of 100 draws`;
    lines.push(
      ...wrap(
        `${mark}${String(index + 1).padStart(2)}. ${programme.name}: ${doseText(programme)}; ${free}, ` +
          `${standing(programme)}${confidence}; ${programmeCostText(programme)}; tank pH ${pHText(programme.tank.pH)}`,
        "     ",
      ),
    );
    for (const reason of programme.reasons.filter((one) => one.level !== "note")) {
      lines.push(
        ...wrap(
          `     ${LEVEL_WORD[reason.level]}: ${reason.text} ${evidenceMark(reason.evidence)}`,
          "       ",
        ),
      );
    }
    for (const remark of programme.remarks) {
      lines.push(...wrap(`     ${remark.text} ${evidenceMark(remark.evidence)}`, "       "));
    }
  });
  lines.push(
    ...(chosen === null
      ? wrap("No programme meets the aim. What follows fills the tank as planned.")
      : wrap(`Chosen (*): ${chosen.name}, ${doseText(chosen)}, ${figure(chosen.waterVolume_LPerHa)} L/ha.`)),
  );
  return lines;
}

function uncertaintyLines({ uncertainty, programmes }: Plan): string[] {
  if (uncertainty === null) return [];
  const name = programmes.find(({ id }) => id === uncertainty.about.programme)?.name ?? "";
  return [
    "HOW SURE",
    ...uncertaintySentences(uncertainty, name).flatMap((sentence) => wrap(`  ${sentence}`, "    ")),
  ];
}

function orderLines(plan: Plan): string[] {
  if (plan.order.length === 0) return [];
  const lines = ["ORDER OF MIXING"];
  for (const step of plan.order) {
    const pause = step.pause ? "PAUSE. " : "";
    lines.push(
      ...wrap(
        `${String(step.step).padStart(3)}. ${pause}${step.what} ${evidenceMark(step.evidence)}`,
        "     ",
      ),
    );
  }
  for (const difference of plan.differences)
    lines.push(...wrap(`  ${difference.text} ${evidenceMark("published rule")}`, "    "));
  return lines;
}

function loadsLines(plan: Plan): string[] {
  const { count, full, last } = plan.loads;
  const head = (name: string, load: typeof full): string =>
    `${name}: ${figure(load.volume_L)} L for ${figure(load.area_ha)} ha`;
  const lines = [`LOADS: ${count}`, head("Full load", full)];
  for (const amount of full.amounts)
    lines.push(`  ${amount.label}: ${amountText(amount.amount, amount.unit)}`);
  if (last !== null) {
    lines.push(head("Last load", last));
    for (const amount of last.amounts)
      lines.push(`  ${amount.label}: ${amountText(amount.amount, amount.unit)}`);
  }
  for (const fact of plan.sprayer)
    lines.push(...wrap(`  ${fact.text} ${evidenceMark(fact.evidence)}`, "    "));
  return lines;
}

function jarLines(plan: Plan): string[] {
  if (plan.jar.length === 0) return [];
  const lines = wrap(`JAR TEST: ${jarStart(plan.jarVolume_L)}`, "  ");
  for (const amount of plan.jar) {
    const ways = [amount.how, amount.spoons].filter((way) => way !== null).join(" ");
    const how = ways === "" ? "" : ` (${ways})`;
    lines.push(...wrap(`  ${amount.label}: ${amountText(amount.amount, amount.unit)}${how}`, "    "));
  }
  return lines;
}

function cautionLines(plan: Plan): string[] {
  if (plan.cautions.length === 0) return [];
  return ["CAUTIONS", ...plan.cautions.flatMap((caution) => wrap(`  ! ${caution.text}`, "    "))];
}

function assumptionLines(plan: Plan): string[] {
  if (plan.water.assumptions.length === 0) return [];
  return [
    "TAKEN FOR GRANTED, not measured",
    ...plan.water.assumptions.flatMap((one) =>
      wrap(`  ${one.about}: ${one.why} ${evidenceMark(one.evidence)}`, "    "),
    ),
  ];
}

function issueLines(plan: Plan): string[] {
  const issues = [...plan.water.issues, ...plan.issues];
  const said = [...new Set(issues.map((issue) => wordIssue(issue)))];
  if (said.length === 0) return [];
  return ["TO LOOK AT", ...said.flatMap((text) => wrap(`  ${text}`, "    "))];
}

function sourceLines(plan: Plan): string[] {
  const fromMemory = plan.sources.filter((source) => source.fromMemory).length;
  const memory = fromMemory === 0 ? "" : `, ${fromMemory} of them from memory`;
  return [
    `${plan.sources.length} sources used${memory}; --json lists them. Hardstand ${plan.versions.hardstand}, data ${plan.versions.data}.`,
    "The label and local law come before anything said here.",
  ];
}
