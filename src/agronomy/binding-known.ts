import type { ActiveRecord } from "./data-types.ts";
import type { Tank, TankActive } from "./tank.ts";

/** Why a share cannot be computed, or what it rests on; null when measured constants exist. */
export function bindingWhy(active: TankActive): { readonly known: boolean; readonly why: string | null } {
  const { active: record, form } = active.product;
  if (form?.dissociates === false && form.acidEquivalent < 1)
    return { known: false, why: `The ${form.name} does not ionise in the tank: nothing for metals to bind.` };
  if (active.component === null || record.binding === "none") {
    return { known: false, why: record.bindingNote ?? "No published binding constants: not known." };
  }
  return { known: true, why: record.binding === "analogy" ? record.bindingNote : null };
}

/** Components of the actives whose binding can be computed, with the active; of two products with one, the first. */
export function computedComponents(
  tank: Tank,
): readonly { readonly active: ActiveRecord; readonly component: string }[] {
  const found = new Map<string, ActiveRecord>();
  for (const active of tank.actives) {
    const { component, product } = active;
    if (component !== null && bindingWhy(active).known && !found.has(component))
      found.set(component, product.active);
  }
  return [...found].map(([component, active]) => ({ active, component }));
}
