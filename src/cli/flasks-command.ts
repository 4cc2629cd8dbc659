import { builtInFlasks, flaskScript, readDemo, runDemo } from "../agronomy/index.ts";
import type { Demo, FlaskContext, FlaskShow } from "../agronomy/index.ts";
import { flasksHtml, flasksSvg, flasksText } from "../report/index.ts";
import type { FlasksForm } from "./arguments.ts";
import { readDocument } from "./document.ts";
import { EXIT, sayIssues } from "./exit.ts";
import type { CliIo } from "./io.ts";
import { loadData } from "./open-job.ts";

/** Computes a demonstration and gives it in the form asked for. @returns the exit code */
export async function flasksCommand(
  name: string,
  form: FlasksForm,
  strict: boolean,
  io: CliIo,
): Promise<number> {
  const context = { ...loadData(), flasks: builtInFlasks() };
  const document = await readDocument(name, io);
  const demo = document.ok ? readDemo(document.value, context) : document;
  sayIssues(demo.issues, name, io);
  if (!demo.ok) return EXIT.badInput;
  const run = runDemo(demo.value, context);
  sayIssues(run.issues, name, io);
  if (!run.ok) return EXIT.badInput;
  const show = run.value;
  const given = await give(demo.value, show, context, form, io);
  if (given !== EXIT.done) return given;
  if (!strict || !isOutsideRange(show)) return EXIT.done;
  io.stderr("Strict: a flask holds more salt than the activity model was fitted to.\n");
  return EXIT.outsideRange;
}

async function give(
  demo: Demo,
  show: FlaskShow,
  context: FlaskContext,
  form: FlasksForm,
  io: CliIo,
): Promise<number> {
  switch (form.as) {
    case "json":
      io.stdout(`${JSON.stringify(show, null, 2)}\n`);
      return EXIT.done;
    case "text":
      io.stdout(flasksText(show));
      return EXIT.done;
    case "svg":
      return save(form.file, flasksSvg(show), "Drawing", io);
    case "html": {
      const script = flaskScript(demo, show, context);
      sayIssues(script.issues, "farm", io);
      return script.ok ? save(form.file, flasksHtml(script.value), "Script", io) : EXIT.badInput;
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

function isOutsideRange(show: FlaskShow): boolean {
  return show.flasks.some(({ steps }) => steps.some(({ extrapolated }) => extrapolated));
}
