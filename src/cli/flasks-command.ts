import {
  builtInFlasks,
  checkShow,
  designDemo,
  flaskScript,
  isDesign,
  readDemo,
  runDemo,
} from "../agronomy/index.ts";
import type { Demo, FlaskContext, FlaskShow, ShowCheck } from "../agronomy/index.ts";
import type { Issue } from "../units/index.ts";
import { checkText, designText, flasksHtml, flasksJson, flasksSvg, flasksText } from "../report/index.ts";
import type { DesignOutcome } from "../report/index.ts";
import { loadLanguage } from "../words/index.ts";
import type { Language, LanguageTag } from "../words/index.ts";
import type { FlasksForm } from "./arguments.ts";
import { readDocument } from "./document.ts";
import { EXIT, sayIssues } from "./exit.ts";
import type { CliIo } from "./io.ts";
import { loadData } from "./open-job.ts";

/** How a demonstration is asked for. */
export interface FlasksAsked {
  readonly form: FlasksForm;
  readonly strict: boolean;
  readonly language: LanguageTag;
}

/** A demonstration with all that was asked of it. */
interface Answer {
  readonly demo: Demo;
  readonly show: FlaskShow;
  /** null unless colours seen were given. */
  readonly check: ShowCheck | null;
  /** null unless amounts were to be found. */
  readonly design: DesignOutcome | null;
}

/** Computes a demonstration and gives it in the form asked for. @returns the exit code */
export async function flasksCommand(
  name: string,
  { form, strict, language }: FlasksAsked,
  io: CliIo,
): Promise<number> {
  const context: FlaskContext = { ...loadData(), flasks: builtInFlasks() };
  const document = await readDocument(name, io);
  const answered = document.ok ? answer(document.value, context) : document;
  sayIssues(answered.issues, name, io);
  if (!answered.ok) return EXIT.badInput;
  const given = await give(answered.value, context, form, await loadLanguage(language), io);
  if (given !== EXIT.done) return given;
  const { show, design } = answered.value;
  if (strict && show.flasks.some(({ steps }) => steps.some(({ extrapolated }) => extrapolated))) {
    io.stderr("Strict: a flask holds more salt than the activity model was fitted to.\n");
    return EXIT.outsideRange;
  }
  if (design !== null && !design.reached) {
    io.stderr("No amounts of these bottles keep the difference asked for. The best ones are given.\n");
    return EXIT.noneFound;
  }
  return EXIT.done;
}

type Answered =
  | { readonly ok: true; readonly value: Answer; readonly issues: readonly Issue[] }
  | { readonly ok: false; readonly issues: readonly Issue[] };

function answer(document: unknown, context: FlaskContext): Answered {
  const issues: Issue[] = [];
  let design: DesignOutcome | null = null;
  let demo: Demo;
  if (isDesign(document)) {
    const found = designDemo(document, context);
    issues.push(...found.issues);
    if (!found.ok) return { ok: false, issues };
    ({ demo } = found.value);
    const { deltaE00Low, reached, tried } = found.value;
    design = { deltaE00Low, reached, tried };
  } else {
    const read = readDemo(document, context);
    issues.push(...read.issues);
    if (!read.ok) return { ok: false, issues };
    demo = read.value;
  }
  const run = runDemo(demo, context);
  issues.push(...run.issues);
  if (!run.ok) return { ok: false, issues };
  const check = demo.seen === null ? null : checkShow(demo, run.value, demo.seen, context);
  return { ok: true, value: { demo, show: run.value, check, design }, issues };
}

async function give(
  { demo, show, check, design }: Answer,
  context: FlaskContext,
  form: FlasksForm,
  language: Language,
  io: CliIo,
): Promise<number> {
  switch (form.as) {
    case "json":
      io.stdout(`${JSON.stringify(flasksJson(show, check, design), null, 2)}\n`);
      return EXIT.done;
    case "text":
      io.stdout(
        [
          flasksText(show, language),
          ...(design === null ? [] : [designText(design, language)]),
          ...(check === null ? [] : [checkText(check, language)]),
        ].join("\n"),
      );
      return EXIT.done;
    case "svg":
      return save(form.file, flasksSvg(show, { language }), "Drawing", io);
    case "html": {
      const script = flaskScript(demo, show, context);
      sayIssues(script.issues, "farm", io);
      return script.ok ? save(form.file, flasksHtml(script.value, language), "Script", io) : EXIT.badInput;
    }
  }
}

async function save(file: string, text: string, what: string, io: CliIo): Promise<number> {
  try {
    await io.writeFile(file, text);
  } catch (error) {
    const code = error instanceof Error && "code" in error ? String(error.code) : String(error);
    io.stderr(`${file}: could not be written (${code}). Check the folder and the right to write there.\n`);
    return EXIT.badInput;
  }
  io.stderr(`${what} written to ${file}.\n`);
  return EXIT.done;
}
