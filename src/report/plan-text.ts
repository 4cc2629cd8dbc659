import type {
  ActiveVerdict,
  Job,
  Load,
  Loads,
  Plan,
  Programme,
  RuleVerdict,
  Share,
} from "../agronomy/index.ts";
import { ENGLISH, fill } from "../words/index.ts";
import type { Language } from "../words/index.ts";
import { wrap } from "./card-text.ts";
import { noChoiceText, programmeName } from "./choice-words.ts";
import { ionWords } from "./ion-words.ts";
import {
  clockText,
  concentrationText,
  dryingText,
  evidenceMark,
  heldValueText,
  jarStart,
  leafEndsText,
  leastFree,
  levelText,
  onMudText,
  ownAcidText,
  programmeCostText,
  shareText,
  standing,
  waterVolumeText,
} from "./sentences.ts";
import { commonRemarks, ownRemarks } from "./said-once.ts";
import { uncertaintySentences } from "./uncertainty-words.ts";
import { wordIssue } from "./wording.ts";

/**
 * The answer to a job as plain text: numbers first, then why. At most 78 signs wide.
 *
 * @param where the aim is about, which the ways out are compared by
 */
export function planText(plan: Plan, where: Job["aim"]["where"], language: Language = ENGLISH): string {
  const chosen = plan.programmes.find((programme) => programme.id === plan.chosen) ?? null;
  const parts: string[][] = [
    waterLines(plan, language),
    activesLines(plan, language),
    programmesLines(plan, chosen, where, language),
    notComputedLines(plan, language),
    uncertaintyLines(plan, language),
    orderLines(plan, language),
    loadsLines(plan, language),
    jarLines(plan, language),
    cautionLines(plan, language),
    assumptionLines(plan, language),
    issueLines(plan, language),
    sourceLines(plan, language),
  ];
  return `${parts
    .filter((lines) => lines.length > 0)
    .map((lines) => lines.join("\n"))
    .join("\n\n")}\n`;
}

function waterLines({ water, tank }: Plan, language: Language): string[] {
  const { figure, pHText } = language.figures;
  const { plan } = language.words;
  const said = fill(plan.waterLine, {
    source: water.source,
    hardness: figure(water.hardness_mgPerL_asCaCO3),
    alkalinity: figure(water.alkalinity_mgPerL_asCaCO3),
    pH: pHText(water.pH),
  });
  const tankLine = fill(tank.extrapolated ? plan.tankLineOutside : plan.tankLine, {
    pH: pHText(tank.pH),
    strength: figure(tank.ionicStrength_molPerL),
  });
  return [...wrap(said, "  "), `${tankLine} ${evidenceMark("computed", language)}`];
}

function activesLines(plan: Plan, language: Language): string[] {
  const lines: string[] = [language.words.plan.asPlanned];
  for (const active of plan.actives) lines.push(...activeLines(active, language));
  const planned = plan.programmes.find((programme) => programme.kind === "none");
  if (planned !== undefined) lines.push(...wrap(dryingText(planned.drying, language), "  "));
  return lines;
}

function activeLines(active: ActiveVerdict, language: Language): string[] {
  const { plan } = language.words;
  const lines = [`${language.phrases.name(active.name)} (${concentrationText(active, language)})`];
  const width = Math.max(
    13,
    ...[plan.inTheTank, plan.onTheLeaf, plan.byTheClock].map((one) => one.length + 1),
  );
  const say = (label: string, text: string, evidence: string): void => {
    lines.push(...wrap(`  ${label.padEnd(width)}${text} ${evidence}`.trimEnd(), " ".repeat(width + 2)));
  };
  const markOf = (share: Share): string =>
    share.free === null ? "" : evidenceMark(share.evidence, language);
  say(plan.inTheTank, shareText(active.inTank, language), markOf(active.inTank));
  const mud = onMudText(active.onMud, language);
  if (mud !== null) say(plan.onTheMud, mud, evidenceMark(active.onMud?.evidence ?? "computed", language));
  const ends = leafEndsText(active.onLeaf, language);
  say(
    plan.onTheLeaf,
    [shareText(active.onLeaf, language), ends, ownAcidText(active.onLeaf, language)]
      .filter((text) => text !== null)
      .join(". "),
    markOf(active.onLeaf),
  );
  say(plan.byTheClock, clockText(active.byClock, language), evidenceMark(active.byClock.evidence, language));
  for (const rule of active.rules) lines.push(...ruleLines(rule, language));
  return lines;
}

function ruleLines(rule: RuleVerdict, language: Language): string[] {
  const said = [
    `  ${levelText(rule.level, language)}: ${language.phrases.say(rule.text).text}`,
    ...contradiction(rule, language),
    evidenceMark(rule.evidence, language),
  ];
  return wrap(said.join(" "), "    ");
}

function contradiction({ contradictedBy }: RuleVerdict, { words, phrases }: Language): string[] {
  return contradictedBy === null
    ? []
    : [fill(words.plan.contradicted, { by: phrases.say(contradictedBy).text })];
}

function notComputedLines({ programmes }: Plan, language: Language): string[] {
  const said = commonRemarks(programmes).map(({ text }) => language.phrases.say(text).text);
  return said.length === 0
    ? []
    : [language.words.plan.notComputed, ...said.flatMap((text) => wrap(`  ${text}`, "    "))];
}

function programmesLines(
  plan: Plan,
  chosen: Programme | null,
  where: Job["aim"]["where"],
  language: Language,
): string[] {
  const words = language.words.plan;
  const lines: string[] = [where === "on the leaf" ? words.waysOut : words.waysOutInTank];
  const planned = plan.programmes.find((programme) => programme.kind === "none");
  const worth = planned === undefined ? null : heldValueText(planned, language);
  if (worth !== null) lines.push(...wrap(`${worth} ${evidenceMark("computed", language)}`, "  "));
  plan.programmes.forEach((programme, index) => {
    const mark = programme.id === plan.chosen ? "*" : " ";
    const number = String(index + 1).padStart(2);
    lines.push(...wrap(`${mark}${number}. ${programmeText(programme, where, language)}`, "     "));
    for (const { level, text, evidence } of programme.reasons.filter((one) => one.level !== "note")) {
      const said = `${levelText(level, language)}: ${language.phrases.say(text).text}`;
      lines.push(...wrap(`     ${said} ${evidenceMark(evidence, language)}`, "       "));
    }
    for (const { text, evidence } of ownRemarks(programme)) {
      const said = language.phrases.say(text).text;
      lines.push(...wrap(`     ${said} ${evidenceMark(evidence, language)}`, "       "));
    }
  });
  const last =
    chosen === null
      ? noChoiceText(plan, language)
      : fill(words.chosen, {
          name: programmeName(chosen, language),
          volume: waterVolumeText(chosen, language),
        });
  lines.push(...wrap(last));
  return lines;
}

function programmeText(programme: Programme, where: Job["aim"]["where"], language: Language): string {
  const { plan, answers } = language.words;
  const { figure, pHText } = language.figures;
  const leaf = leastFree(programme.actives, where);
  const free = leaf === null ? answers.notKnown : fill(plan.freeInHundred, { count: figure(100 * leaf, 2) });
  const met =
    programme.confidence === null
      ? []
      : [fill(plan.metInDraws, { count: figure(100 * programme.confidence, 2) })];
  const parts = [
    programmeName(programme, language),
    [free, standing(programme, language), ...met].join(", "),
    programmeCostText(programme, language),
    fill(plan.tankPH, { pH: pHText(programme.tank.pH) }),
  ];
  return parts.join("; ");
}

function uncertaintyLines({ uncertainty, programmes }: Plan, language: Language): string[] {
  if (uncertainty === null) return [];
  const about = programmes.find(({ id }) => id === uncertainty.about.programme);
  return [
    language.words.plan.howSure,
    ...uncertaintySentences(uncertainty, about ?? null, language).flatMap((said) =>
      wrap(`  ${said}`, "    "),
    ),
  ];
}

function orderLines(plan: Plan, language: Language): string[] {
  if (plan.order.length === 0) return [];
  const { words, phrases } = language;
  const lines: string[] = [words.plan.order];
  for (const step of plan.order) {
    const pause = step.pause ? `${words.plan.pause} ` : "";
    const said = `${pause}${phrases.say(step.what).text} ${evidenceMark(step.evidence, language)}`;
    lines.push(...wrap(`${String(step.step).padStart(3)}. ${said}`, "     "));
  }
  for (const { text } of plan.differences)
    lines.push(...wrap(`  ${phrases.say(text).text} ${evidenceMark("published rule", language)}`, "    "));
  return lines;
}

function loadsLines(plan: Plan, language: Language): string[] {
  const { count, full, last, measures } = plan.loads;
  const words = language.words.plan;
  const lines = [
    fill(words.loads, { count }),
    ...loadLines(words.fullLoad, full, measures, language),
    ...(last === null ? [] : loadLines(words.lastLoad, last, measures, language)),
  ];
  for (const { text, evidence } of plan.sprayer) {
    const said = language.phrases.say(text).text;
    lines.push(...wrap(`  ${said} ${evidenceMark(evidence, language)}`, "    "));
  }
  return lines;
}

function loadLines(
  name: string,
  load: Load,
  measures: Loads["measures"],
  { words, figures, phrases }: Language,
): string[] {
  const volume = figures.measured(load.volume_L, "L", measures);
  const area = figures.measured(load.area_ha, "ha", measures);
  return [
    fill(words.plan.loadHead, { name, volume, area }),
    ...load.amounts.map(
      ({ label, amount, unit }) => `  ${phrases.name(label)}: ${figures.measured(amount, unit, measures)}`,
    ),
  ];
}

function jarLines(plan: Plan, language: Language): string[] {
  const { words, figures, phrases } = language;
  if (plan.jar.length === 0) return [];
  const lines = wrap(`${words.plan.jarTest}: ${jarStart(plan.jarVolume_L, language)}`, "  ");
  for (const { label, amount, unit, how, spoons } of plan.jar) {
    const ways = [how, spoons].flatMap((way) => (way === null ? [] : [phrases.say(way).text])).join(" ");
    const said = `  ${phrases.name(label)}: ${figures.amountText(amount, unit)}`;
    lines.push(...wrap(ways === "" ? said : `${said} (${ways})`, "    "));
  }
  return lines;
}

function cautionLines(plan: Plan, { words, phrases }: Language): string[] {
  if (plan.cautions.length === 0) return [];
  const said = plan.cautions.flatMap(({ text }) => wrap(`  ! ${phrases.say(text).text}`, "    "));
  return [words.plan.cautions, ...said];
}

function assumptionLines(plan: Plan, language: Language): string[] {
  if (plan.water.assumptions.length === 0) return [];
  const { phrases } = language;
  const said = plan.water.assumptions.flatMap(({ about, why, evidence }) =>
    wrap(
      `  ${phrases.name(ionWords(about))}: ${phrases.say(why).text} ${evidenceMark(evidence, language)}`,
      "    ",
    ),
  );
  return [language.words.plan.takenForGranted, ...said];
}

function issueLines(plan: Plan, language: Language): string[] {
  const issues = [...plan.water.issues, ...plan.issues];
  const said = [...new Set(issues.map((issue) => wordIssue(issue, language)))];
  if (said.length === 0) return [];
  return [language.words.plan.toLookAt, ...said.flatMap((text) => wrap(`  ${text}`, "    "))];
}

function sourceLines({ sources, versions }: Plan, { words }: Language): string[] {
  const memory = sources.filter((source) => source.fromMemory).length;
  const facts = { count: sources.length, version: versions.hardstand, data: versions.data };
  return [
    memory === 0
      ? fill(words.plan.sourcesUsed, facts)
      : fill(words.plan.sourcesFromMemory, { ...facts, memory }),
    words.plan.lawFirst,
  ];
}
