import type { Draft } from "./programmes.ts";
import { sharesOf } from "./shares.ts";
import type { ActiveVerdict, DryingStep, Remark } from "./types.ts";
import { NUCLEATING_SOLIDS } from "./chemistry.ts";

/** A free share on the leaf this much above the one by complexes alone is worth a word. */
const WORTH_SAYING = 0.02;

/**
 * Says where a conditioner frees an active on the leaf by activity coefficients that nobody measured, more than by what
 * it binds: the same drop is solved with Davies' coefficients held, and the two free shares are compared.
 *
 * @param actives as judged for the draft, @param path its central drying path
 */
export function borrowedActivity(
  { tank, conditioners, setting: { chemistry } }: Draft,
  actives: readonly ActiveVerdict[],
  path: readonly DryingStep[],
  estimated: readonly string[],
): readonly Remark[] {
  const end = path.at(-1);
  if (conditioners.length === 0 || estimated.length === 0 || end === undefined) return [];
  const withSalt = end.solids.some(({ name }) => NUCLEATING_SOLIDS.includes(name));
  const alone = chemistry.byComplexesAlone(tank, end.factor, withSalt);
  if (!alone.ok) return [];
  return actives.flatMap(({ name, onLeaf }, i): Remark[] => {
    const component = tank.actives[i]?.component ?? null;
    if (onLeaf.free === null || component === null) return [];
    const { free } = sharesOf(alone.value, component);
    if (onLeaf.free - free < WORTH_SAYING) return [];
    const [ours, theirs] = [onLeaf.free, free].map((share) => String(Math.round(100 * share)));
    return [
      {
        code: "borrowed-activity",
        text: `${name}: ${ours ?? ""} in 100 free on the leaf rest on borrowed activity; by complexes alone ${theirs ?? ""}. Try it first.`,
        evidence: "computed",
        source: null,
      },
    ];
  });
}
