import type { Job, Money, Programme } from "../../agronomy/index.ts";
import { put } from "./sums.ts";
import type { Sum } from "./sums.ts";

/** The active held as planned and with the row picked, and what that row costs, each opened to how it was worked out. */
export function moneySums(job: Job, planned: Programme | undefined, picked: Programme): readonly Sum[] {
  const held = (programme: Programme, how: string): readonly Sum[] => [
    ...heldSums(job, programme, how),
    ...extentSums(job, programme, programme.heldValue, `Active held ${how}`),
  ];
  return [
    ...(planned === undefined ? [] : held(planned, "as planned")),
    ...(picked.kind === "none" ? [] : held(picked, "with the row picked")),
    ...(picked.kind === "none" ? [] : extentSums(job, picked, picked.cost, "Cost")),
  ];
}

/** What is held of each product whose price and free share are known, per hectare. */
function heldSums({ mix, aim }: Job, { actives }: Programme, how: string): readonly Sum[] {
  return mix.flatMap(({ price, rate }, i): Sum[] => {
    const verdict = actives[i];
    const free = (aim.where === "in the tank" ? verdict?.inTank.free : verdict?.onLeaf.free) ?? null;
    if (price === null || free === null) return [];
    return [
      {
        what: `${verdict?.name ?? ""} held ${how}, per hectare`,
        formula: "rate × price × share held",
        numbers: `${put(rate.value)} ${rate.per}/ha × ${put(price)} per ${rate.per} × ${put(1 - free)}`,
        result: `${(rate.value * price * (1 - free)).toFixed(2)} per ha`,
        source: null,
      },
    ];
  });
}

/** From an amount per hectare to those per load and per season. */
function extentSums({ spray }: Job, programme: Programme, money: Money, what: string): readonly Sum[] {
  const { perHa, perLoad, perSeason } = money;
  const { full } = programme.filling.loads;
  const volume = programme.waterVolume_LPerHa;
  const sums: Sum[] = [];
  if (perHa === null) return sums;
  if (perLoad !== null)
    sums.push({
      what: `${what}, per load`,
      formula: "amount per hectare × volume of a full load ÷ water volume",
      numbers: `${put(perHa)} per ha × ${put(full.volume_L)} L ÷ ${put(volume)} L/ha`,
      result: `${perLoad.toFixed(2)} per load`,
      source: null,
    });
  if (perSeason !== null && spray.seasonArea_ha !== null)
    sums.push({
      what: `${what}, per season`,
      formula: "amount per hectare × area of a season",
      numbers: `${put(perHa)} per ha × ${put(spray.seasonArea_ha)} ha`,
      result: `${perSeason.toFixed(2)} per season`,
      source: null,
    });
  return sums;
}
