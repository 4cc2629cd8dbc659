import { parseArgs } from "node:util";
import type { Paper, PlanPart } from "../report/index.ts";
import { nearestName } from "../units/index.ts";
import { LANGUAGE_TAGS, isLanguageTag } from "../words/index.ts";
import type { LanguageTag } from "../words/index.ts";

/** What the command line was asked to do. */
export type Request =
  | { readonly kind: "help" }
  | { readonly kind: "version" }
  | {
      readonly kind: "plan";
      readonly job: string;
      readonly form: PlanForm;
      readonly strict: boolean;
      readonly language: LanguageTag;
    }
  | { readonly kind: "water"; readonly job: string; readonly json: boolean; readonly strict: boolean }
  | {
      readonly kind: "complaint";
      readonly record: string;
      readonly form: ComplaintForm;
      readonly language: LanguageTag;
    }
  | { readonly kind: "sheet"; readonly file: string; readonly json: boolean }
  | {
      readonly kind: "flasks";
      readonly demo: string;
      readonly form: FlasksForm;
      readonly strict: boolean;
      readonly language: LanguageTag;
    }
  | { readonly kind: "speciate"; readonly case: string; readonly strict: boolean }
  | { readonly kind: "serve"; readonly port: number | null }
  | { readonly kind: "wrong"; readonly message: string };

/** How a plan is given. */
export type PlanForm =
  | { readonly as: "text" }
  | { readonly as: "json" }
  | { readonly as: "card" }
  | { readonly as: "html"; readonly file: string; readonly part: PlanPart }
  | { readonly as: "pdf"; readonly file: string; readonly part: PlanPart; readonly paper: PdfPaper };

/** Paper a PDF is made for. */
export type PdfPaper = Exclude<Paper, "auto">;

/** How a demonstration is given. */
export type FlasksForm =
  { readonly as: "text" } | { readonly as: "json" } | { readonly as: "html" | "svg"; readonly file: string };

/** How the answer to a complaint is given. */
export type ComplaintForm =
  { readonly as: "text" } | { readonly as: "json" } | { readonly as: "html"; readonly file: string };

const COMMANDS = ["plan", "water", "complaint", "sheet", "speciate", "flasks", "serve"];
const OPTIONS = {
  json: { type: "boolean" },
  card: { type: "boolean" },
  report: { type: "boolean" },
  html: { type: "string" },
  svg: { type: "string" },
  pdf: { type: "string" },
  paper: { type: "string" },
  port: { type: "string" },
  language: { type: "string" },
  strict: { type: "boolean" },
  version: { type: "boolean" },
} as const;
/** Options each command takes. */
const TAKES: Readonly<Record<string, readonly string[]>> = {
  plan: ["json", "card", "report", "html", "pdf", "paper", "language", "strict"],
  water: ["json", "strict"],
  complaint: ["json", "html", "language"],
  sheet: ["json"],
  speciate: ["json", "strict"],
  flasks: ["json", "html", "svg", "language", "strict"],
  serve: ["port"],
};

const PAPERS: readonly PdfPaper[] = ["A4", "Letter"];

/** Name of a file shown in the example of a command; a job where it is not here. */
const EXAMPLE_FILES: Readonly<Record<string, string>> = {
  speciate: "case.json --json",
  sheet: "report.csv",
  complaint: "record.yaml",
  flasks: "demo.yaml",
};

const wrong = (message: string): Request => ({ kind: "wrong", message });

/** Understands the arguments after the name of the program. Nothing is guessed: a slip gets a suggestion. */
export function readArguments(argv: readonly string[]): Request {
  const end = argv.indexOf("--");
  const before = end === -1 ? argv : argv.slice(0, end);
  if (
    argv.length === 0 ||
    before.some((word) => word === "-h" || word === "--help") ||
    before[0] === "help"
  ) {
    return { kind: "help" };
  }
  let parsed;
  try {
    parsed = parseArgs({ args: [...argv], options: OPTIONS, allowPositionals: true, strict: true });
  } catch (error) {
    return wrong(optionMessage(error, before));
  }
  const { values, positionals } = parsed;
  if (values.version === true) return { kind: "version" };
  const [command, document, ...more] = positionals;
  if (command === undefined) return wrong(`No command given. Known commands: ${COMMANDS.join(", ")}.`);
  const takes = TAKES[command];
  if (takes === undefined) return wrong(commandMessage(command));
  const strange = Object.keys(values).find((name) => !takes.includes(name));
  if (strange !== undefined) {
    return wrong(
      `“${command}” takes no --${strange}. It takes: ${takes.map((one) => `--${one}`).join(", ")}.`,
    );
  }
  if (command === "serve")
    return document === undefined ? serveRequest(values.port) : wrong("“serve” takes no file.");
  if (document === undefined) {
    return wrong(
      `“${command}” needs a file, or - for standard input: hardstand ${command} ${EXAMPLE_FILES[command] ?? "job.yaml"}`,
    );
  }
  if (more.length > 0) return wrong(`One file at a time: received ${[document, ...more].join(" and ")}.`);
  const strict = values.strict === true;
  if (command === "water") return { kind: "water", job: document, json: values.json === true, strict };
  if (command === "sheet") return { kind: "sheet", file: document, json: values.json === true };
  // An equilibrium is given as data, with or without --json.
  if (command === "speciate") return { kind: "speciate", case: document, strict };
  const language = values.language ?? "en-GB";
  if (!isLanguageTag(language)) return wrong(languageMessage(language));
  if (values.json !== undefined && values.language !== undefined)
    return wrong("“--json” is the same in every language: leave --language out.");
  if (command === "flasks") return flasksRequest(document, values, strict, language);
  if (command === "complaint") return complaintRequest(document, values, language);
  return planRequest(document, values, strict, language);
}

function complaintRequest(
  record: string,
  values: { readonly json?: boolean; readonly html?: string },
  language: LanguageTag,
): Request {
  if (values.html === undefined)
    return { kind: "complaint", record, form: { as: values.json === true ? "json" : "text" }, language };
  if (values.json === true) return wrong("One form at a time: received --json and --html.");
  if (values.html === "") return wrong("“--html” needs the name of a file to write.");
  return { kind: "complaint", record, form: { as: "html", file: values.html }, language };
}

function flasksRequest(
  demo: string,
  values: { readonly json?: boolean; readonly html?: string; readonly svg?: string },
  strict: boolean,
  language: LanguageTag,
): Request {
  const forms = (["json", "html", "svg"] as const).filter((name) => values[name] !== undefined);
  if (forms.length > 1) return oneForm(forms);
  for (const as of ["html", "svg"] as const) {
    const file = values[as];
    if (file === "") return wrong(`“--${as}” needs the name of a file to write.`);
    if (file !== undefined) return { kind: "flasks", demo, form: { as, file }, strict, language };
  }
  return { kind: "flasks", demo, form: { as: values.json === true ? "json" : "text" }, strict, language };
}

function oneForm(forms: readonly string[]): Request {
  return wrong(oneFormText(forms));
}

function oneFormText(forms: readonly string[]): string {
  return `One form at a time: received ${forms.map((one) => `--${one}`).join(" and ")}.`;
}

interface PlanValues {
  readonly json?: boolean;
  readonly card?: boolean;
  readonly report?: boolean;
  readonly html?: string;
  readonly pdf?: string;
  readonly paper?: string;
}

function planRequest(job: string, values: PlanValues, strict: boolean, language: LanguageTag): Request {
  const form = planForm(values);
  return typeof form === "string" ? wrong(form) : { kind: "plan", job, form, strict, language };
}

/** The form of a plan, or what is wrong with what was asked for. */
function planForm(values: PlanValues): PlanForm | string {
  const forms = (["json", "html", "pdf"] as const).filter((name) => values[name] !== undefined);
  if (forms.length > 1) return oneFormText(forms);
  const parts = (["card", "report"] as const).filter((name) => values[name] === true);
  if (parts.length > 1) return "“--card” and “--report” together are what you get without either.";
  const [part] = parts;
  const [as] = forms;
  if (values.paper !== undefined && as !== "pdf") return "“--paper” goes with --pdf FILE.";
  if (as === undefined && part === "report") return "“--report” goes with --html FILE or --pdf FILE.";
  if (as === undefined) return { as: part === "card" ? "card" : "text" };
  if (as === "json") return part === undefined ? { as } : oneFormText([as, part]);
  const file = values[as];
  if (file === undefined || file === "") return `“--${as}” needs the name of a file to write.`;
  const chosen = { file, part: part ?? "all" } as const;
  if (as === "html") return { as, ...chosen };
  const paper = PAPERS.find((one) => one.toLowerCase() === (values.paper ?? "A4").toLowerCase());
  if (paper === undefined) return `“--paper” received ${values.paper ?? ""}; expected A4 or Letter.`;
  return { as, ...chosen, paper };
}

function serveRequest(port: string | undefined): Request {
  if (port === undefined) return { kind: "serve", port: null };
  if (!/^\d{1,5}$/.test(port) || Number(port) > 65_535) {
    return wrong(`“--port” received ${port}; expected a whole number from 0 to 65535.`);
  }
  return { kind: "serve", port: Number(port) };
}

function languageMessage(language: string): string {
  return `“--language” received ${language}; expected one of ${LANGUAGE_TAGS.join(", ")}.`;
}

function commandMessage(command: string): string {
  const near = nearestName(command, COMMANDS);
  const hint = near === null ? "" : ` Did you mean “${near}”?`;
  return `No command “${command}”.${hint} Known commands: ${COMMANDS.join(", ")}.`;
}

function optionMessage(error: unknown, argv: readonly string[]): string {
  const known = Object.keys(OPTIONS);
  const code = error instanceof Error && "code" in error ? error.code : "";
  if (code === "ERR_PARSE_ARGS_UNKNOWN_OPTION") {
    const typed = argv.find((word) => word.startsWith("-") && word !== "-" && !isKnownOption(word)) ?? "";
    const near = nearestName(typed.replace(/^-+/, "").split("=")[0] ?? "", known);
    const hint = near === null ? "" : ` Did you mean “--${near}”?`;
    return `No option “${typed}”.${hint} Known options: ${known.map((name) => `--${name}`).join(", ")}.`;
  }
  const said = error instanceof Error ? (error.message.split("\n")[0] ?? "") : String(error);
  const option = /'(?:-\w, )?--(\w+)/.exec(said)?.[1];
  if (option === "html" || option === "svg" || option === "pdf")
    return `“--${option}” needs the name of a file to write.`;
  if (option === "language") return `“--language” needs one of ${LANGUAGE_TAGS.join(", ")}.`;
  if (option === "paper") return "“--paper” needs A4 or Letter.";
  if (option === "port") return "“--port” needs a whole number from 0 to 65535.";
  return option === undefined ? said : `“--${option}” takes no value.`;
}

function isKnownOption(word: string): boolean {
  return word.startsWith("--") && Object.hasOwn(OPTIONS, word.slice(2).split("=")[0] ?? "");
}
