import type { Job, Money, Programme } from "../../agronomy/index.ts";
import { ENGLISH, sayIn } from "../../words/index.ts";
import type { Language } from "../../words/index.ts";
import { put } from "./sums.ts";
import type { Sum } from "./sums.ts";

/** Names of the amounts that a load and a season are worked out for. */
const EXTENTS = {
  planned: ["Active held as planned, per load", "Active held as planned, per season"],
  picked: ["Active held with the row picked, per load", "Active held with the row picked, per season"],
  cost: ["Cost, per load", "Cost, per season"],
} as const;

/** The active held as planned and with the row picked, and what that row costs, each opened to how it was worked out. */
export function moneySums(
  job: Job,
  planned: Programme | undefined,
  picked: Programme,
  language: Language = ENGLISH,
): readonly Sum[] {
  const held = (programme: Programme, how: "planned" | "picked"): readonly Sum[] => [
    ...heldSums(job, programme, how, language),
    ...extentSums(job, programme, programme.heldValue, EXTENTS[how], language),
  ];
  return [
    ...(planned === undefined ? [] : held(planned, "planned")),
    ...(picked.kind === "none" ? [] : held(picked, "picked")),
    ...(picked.kind === "none" ? [] : extentSums(job, picked, picked.cost, EXTENTS.cost, language)),
  ];
}

/** What is held of each product whose price and free share are known, per hectare. */
function heldSums(
  { mix, aim }: Job,
  { actives }: Programme,
  how: "planned" | "picked",
  language: Language,
): readonly Sum[] {
  const say = sayIn(language);
  const told = (value: number): string => put(value, language);
  return mix.flatMap(({ price, rate }, i): Sum[] => {
    const verdict = actives[i];
    const free = (aim.where === "in the tank" ? verdict?.inTank.free : verdict?.onLeaf.free) ?? null;
    if (price === null || free === null) return [];
    const active = language.phrases.name(verdict?.name ?? "");
    return [
      {
        what:
          how === "planned"
            ? say("{active} held as planned, per hectare", { active })
            : say("{active} held with the row picked, per hectare", { active }),
        formula: say("rate × price × share held"),
        numbers: `${told(rate.value)} ${rate.per}/ha × ${told(price)} /${rate.per} × ${told(1 - free)}`,
        result: say("{cost} per ha", { cost: language.figures.fixed(rate.value * price * (1 - free), 2) }),
        source: null,
      },
    ];
  });
}

/** From an amount per hectare to those per load and per season. */
function extentSums(
  { spray }: Job,
  programme: Programme,
  money: Money,
  [perLoadOf, perSeasonOf]: (typeof EXTENTS)[keyof typeof EXTENTS],
  language: Language,
): readonly Sum[] {
  const say = sayIn(language);
  const told = (value: number): string => put(value, language);
  const { perHa, perLoad, perSeason } = money;
  const { full } = programme.filling.loads;
  const volume = programme.waterVolume_LPerHa;
  const sums: Sum[] = [];
  if (perHa === null) return sums;
  if (perLoad !== null)
    sums.push({
      what: say(perLoadOf),
      formula: say("amount per hectare × volume of a full load ÷ water volume"),
      numbers: `${told(perHa)} /ha × ${told(full.volume_L)} L ÷ ${told(volume)} L/ha`,
      result: say("{cost} per load", { cost: language.figures.fixed(perLoad, 2) }),
      source: null,
    });
  if (perSeason !== null && spray.seasonArea_ha !== null)
    sums.push({
      what: say(perSeasonOf),
      formula: say("amount per hectare × area of a season"),
      numbers: `${told(perHa)} /ha × ${told(spray.seasonArea_ha)} ha`,
      result: say("{cost} per season", { cost: language.figures.fixed(perSeason, 2) }),
      source: null,
    });
  return sums;
}
