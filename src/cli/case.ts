import { builtInPitzer, builtInSit, davies, idealActivity, pitzer, sit } from "../chem/index.ts";
import type { ActivityModel, InteractionModel, SystemDefinition } from "../chem/index.ts";
import { nearestName } from "../units/index.ts";
import type { Issue, Read } from "../units/index.ts";

/** One bare equilibrium as asked for by a case document. */
export interface Case {
  readonly system: SystemDefinition;
  readonly totals_molPerL: Readonly<Record<string, number>>;
  readonly fixedLog10Activities: Readonly<Record<string, number>>;
  readonly activity: ActivityModel | InteractionModel;
}

/** Codes of the issues a case can give. */
export const ISSUE_CODES_CASE = {
  "case-key-missing": "a key that is needed was left out",
  "case-key-unknown": "a key that a case does not have",
  "case-list-expected": "something other than a list",
  "case-object-expected": "something other than an object",
  "case-number-expected": "something other than a finite number",
  "case-name-expected": "something other than a name",
  "case-activity-unknown": "no such activity model",
  "case-name-duplicate": "the same name twice",
  "case-name-empty": "a name without a sign in it",
  "case-component-unknown": "a component that is not in the list of components",
  "case-formation-empty": "a species or solid made of nothing",
  "case-water-artefact": "a species of hydrogen ions alone that would let water ionise without limit",
  "case-system-empty": "no component or no species",
  "case-number-not-finite": "a number without an end",
} as const;
type CaseIssueCode = keyof typeof ISSUE_CODES_CASE;

const MODELS: Readonly<Record<string, () => ActivityModel | InteractionModel>> = {
  ideal: () => idealActivity,
  davies: () => davies(),
  sit: () => sit(builtInSit()),
  interaction: () => pitzer(builtInPitzer()),
};

/** Keys that are solved. */
const SOLVED_KEYS = ["components", "species", "solids", "totals", "fixedLog10Activities", "activity"];
/** Keys that may stand beside them and are not looked into: what the case is, and a known solution. */
const OTHER_KEYS = [
  "id",
  "title",
  "description",
  "note",
  "origin",
  "solution",
  "verification",
  "conditioning",
  "sensitivities",
  "exactBinary",
  "absentComponents",
];

/** Walks a case document and gathers what is wrong with it. */
class CaseReader {
  readonly issues: Issue[] = [];

  add(code: CaseIssueCode, path: string, received: unknown, expected: string): void {
    this.issues.push({ code, path, severity: "error", received: shown(received), expected });
  }

  object(value: unknown, path: string, expected: string): Readonly<Record<string, unknown>> {
    if (value !== null && typeof value === "object" && !Array.isArray(value)) {
      return value as Readonly<Record<string, unknown>>;
    }
    if (value === undefined) this.add("case-key-missing", path, value, expected);
    else this.add("case-object-expected", path, value, expected);
    return {};
  }

  /** A key near a known one is a slip of the pen and an error; any other is said and left alone. */
  knownKeys(block: Readonly<Record<string, unknown>>, path: string, known: readonly string[]): void {
    for (const key of Object.keys(block).filter((one) => !known.includes(one) && !OTHER_KEYS.includes(one))) {
      const near = nearestName(key, known);
      this.issues.push({
        code: "case-key-unknown" satisfies CaseIssueCode,
        path: path === "" ? key : `${path}.${key}`,
        severity: near === null ? "warning" : "error",
        received: key,
        expected: known.join(", "),
        ...(near === null ? {} : { hint: `Did you mean ${near}?` }),
      });
    }
  }

  list(value: unknown, path: string, expected: string): readonly unknown[] {
    if (Array.isArray(value)) return value as readonly unknown[];
    if (value === undefined) this.add("case-key-missing", path, value, expected);
    else this.add("case-list-expected", path, value, expected);
    return [];
  }

  number(value: unknown, path: string, expected = "a finite number"): number {
    if (typeof value === "number" && Number.isFinite(value)) return value;
    this.add(value === undefined ? "case-key-missing" : "case-number-expected", path, value, expected);
    return 0;
  }

  name(value: unknown, path: string): string {
    if (typeof value === "string" && value !== "") return value;
    this.add(value === undefined ? "case-key-missing" : "case-name-expected", path, value, "a name");
    return "";
  }

  numbers(value: unknown, path: string, expected: string): Record<string, number> {
    const entries = Object.entries(this.object(value, path, expected));
    return Object.fromEntries(entries.map(([key, one]) => [key, this.number(one, `${path}.${key}`)]));
  }
}

function shown(value: unknown): string {
  if (value === undefined) return "nothing";
  // eslint-disable-next-line @typescript-eslint/no-base-to-string -- the value is what a person wrote, shown as it is
  const text = JSON.stringify(value) ?? String(value);
  return text.length > 60 ? `${text.slice(0, 59)}…` : text;
}

/** Reads a case document; a key it does not know is said, and is an error where another was probably meant. */
export function readCase(document: unknown): Read<Case> {
  const reader = new CaseReader();
  const top = reader.object(document, "case", "an object with components, totals, species and activity");
  if (reader.issues.length > 0) return { ok: false, issues: reader.issues };
  reader.knownKeys(top, "", SOLVED_KEYS);
  const system: SystemDefinition = {
    components: reader.list(top["components"], "components", "a list of components").map((item, i) => {
      const path = `components[${i}]`;
      const one = reader.object(item, path, "an object with name and charge");
      reader.knownKeys(one, path, ["name", "charge"]);
      return {
        name: reader.name(one["name"], `${path}.name`),
        charge: reader.number(one["charge"], `${path}.charge`),
      };
    }),
    species: reader.list(top["species"], "species", "a list of species").map((item, i) => {
      const path = `species[${i}]`;
      const one = reader.object(item, path, "an object with name, charge, formation and logK");
      reader.knownKeys(one, path, ["name", "charge", "formation", "logK"]);
      return {
        name: reader.name(one["name"], `${path}.name`),
        charge: reader.number(one["charge"], `${path}.charge`),
        formation: reader.numbers(one["formation"], `${path}.formation`, "coefficients by component"),
        logK: reader.number(one["logK"], `${path}.logK`),
      };
    }),
    solids: reader.list(top["solids"] ?? [], "solids", "a list of solids").map((item, i) => {
      const path = `solids[${i}]`;
      const one = reader.object(item, path, "an object with name, formation and logKsp");
      reader.knownKeys(one, path, ["name", "formation", "logKsp"]);
      return {
        name: reader.name(one["name"], `${path}.name`),
        formation: reader.numbers(one["formation"], `${path}.formation`, "coefficients by component"),
        logKsp: reader.number(one["logKsp"], `${path}.logKsp`),
      };
    }),
  };
  const totals_molPerL = reader.numbers(top["totals"] ?? {}, "totals", "totals by component");
  const fixedLog10Activities = reader.numbers(
    top["fixedLog10Activities"] ?? {},
    "fixedLog10Activities",
    "log10 by component",
  );
  const activity = readActivity(top["activity"], reader);
  const { issues } = reader;
  if (activity === null || issues.some((issue) => issue.severity === "error")) return { ok: false, issues };
  return { ok: true, value: { system, totals_molPerL, fixedLog10Activities, activity }, issues };
}

function readActivity(value: unknown, reader: CaseReader): Case["activity"] | null {
  const expected = Object.keys(MODELS).join(" or ");
  const model = typeof value === "string" && Object.hasOwn(MODELS, value) ? MODELS[value] : undefined;
  if (model !== undefined) return model();
  if (value === undefined) reader.add("case-key-missing", "activity", value, expected);
  else reader.add("case-activity-unknown", "activity", value, expected);
  return null;
}
