import type { ActiveRecord } from "./data-types.ts";
import type { Tank, TankActive } from "./tank.ts";

/** What can be said of how metals bind an active. */
export interface BindingKnown {
  /** "nothing to bind": no metal ion can take it, so all of it is free of them. */
  readonly kind: "computed" | "nothing to bind" | "not known";
  /** Why it is not computed, or what it rests on; null when measured constants exist. */
  readonly why: string | null;
}

/** What is known of the binding of an active in the form that is in the tank. */
export function bindingOf({ product, component }: TankActive): BindingKnown {
  const { active: record, form } = product;
  if (form?.dissociates === false && form.acidEquivalent < 1) {
    const why = `The ${form.name} does not ionise in the tank: nothing for metals to bind.`;
    return { kind: "nothing to bind", why };
  }
  if (record.binding === "nothing to bind") return { kind: "nothing to bind", why: record.bindingNote };
  if (component === null || record.binding === "none") {
    return { kind: "not known", why: record.bindingNote ?? "No published binding constants: not known." };
  }
  return { kind: "computed", why: record.binding === "analogy" ? record.bindingNote : null };
}

/** True when no metal ion can take any active of a tank. */
export function bindsNothing({ actives }: Pick<Tank, "actives">): boolean {
  return actives.every((active) => bindingOf(active).kind === "nothing to bind");
}

/** Components of the actives whose binding can be computed, with the active; of two products with one, the first. */
export function computedComponents(
  tank: Tank,
): readonly { readonly active: ActiveRecord; readonly component: string }[] {
  const found = new Map<string, ActiveRecord>();
  for (const active of tank.actives) {
    const { component, product } = active;
    if (component !== null && bindingOf(active).kind === "computed" && !found.has(component))
      found.set(component, product.active);
  }
  return [...found].map(([component, active]) => ({ active, component }));
}
