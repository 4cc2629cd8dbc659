import type { SystemDefinition } from "./system.ts";

/** One fault of a system definition: where it is, what it is, and what was found there. */
export interface DefinitionProblem {
  readonly code:
    | "name-duplicate"
    | "name-empty"
    | "component-unknown"
    | "number-not-finite"
    | "formation-empty"
    | "water-artefact"
    | "system-empty";
  /** Path inside the definition, e.g. "species[3].formation.Ca+2". */
  readonly path: string;
  readonly received: string;
}

/** Components whose own multiples, as a species, would let water ionise without limit. */
const PROTON = "H+";

/** All faults of a system definition that make it unusable, in the order of the definition. */
export function definitionProblems(definition: SystemDefinition): DefinitionProblem[] {
  const problems: DefinitionProblem[] = [];
  const components = new Set<string>();
  const add = (code: DefinitionProblem["code"], path: string, received: string): void => {
    problems.push({ code, path, received });
  };
  const number = (value: number, path: string): void => {
    if (!Number.isFinite(value)) add("number-not-finite", path, String(value));
  };
  const name = (value: string, path: string, seen: Set<string>): void => {
    if (value === "") add("name-empty", path, value);
    if (seen.has(value)) add("name-duplicate", path, value);
    seen.add(value);
  };
  const formation = (value: Readonly<Record<string, number>>, path: string): void => {
    for (const [component, coefficient] of Object.entries(value)) {
      if (!components.has(component)) add("component-unknown", `${path}.${component}`, component);
      number(coefficient, `${path}.${component}`);
    }
    if (Object.values(value).every((coefficient) => coefficient === 0)) add("formation-empty", path, "{}");
  };
  definition.components.forEach((component, k) => {
    name(component.name, `components[${k}].name`, components);
    number(component.charge, `components[${k}].charge`);
  });
  if (definition.components.length === 0) add("system-empty", "components", "[]");
  if (definition.species.length === 0) add("system-empty", "species", "[]");
  const species = new Set<string>();
  definition.species.forEach((entry, k) => {
    name(entry.name, `species[${k}].name`, species);
    number(entry.charge, `species[${k}].charge`);
    number(entry.logK, `species[${k}].logK`);
    formation(entry.formation, `species[${k}].formation`);
    const used = Object.entries(entry.formation).filter(([, coefficient]) => coefficient !== 0);
    const [only] = used;
    if (used.length === 1 && only !== undefined && only[0] === PROTON && Math.abs(only[1]) !== 1) {
      add("water-artefact", `species[${k}].formation`, `${only[1]} ${PROTON}`);
    }
  });
  const solids = new Set<string>();
  definition.solids.forEach((entry, k) => {
    name(entry.name, `solids[${k}].name`, solids);
    number(entry.logKsp, `solids[${k}].logKsp`);
    formation(entry.formation, `solids[${k}].formation`);
  });
  return problems;
}
