import { planJob } from "../agronomy/index.ts";
import type { Job, Plan } from "../agronomy/index.ts";
import { cardText, fillCard, planHtml, planText } from "../report/index.ts";
import { loadLanguage } from "../words/index.ts";
import type { Language, LanguageTag } from "../words/index.ts";
import type { PlanForm } from "./arguments.ts";
import { EXIT, sayIssues } from "./exit.ts";
import type { CliIo, PdfPrinter } from "./io.ts";
import { loadData, openJob } from "./open-job.ts";
import { writeReport } from "./write-report.ts";

/** How a plan is asked for. */
export interface PlanAsked {
  readonly form: PlanForm;
  readonly strict: boolean;
  readonly language: LanguageTag;
}

const words = {
  noBrowser:
    "A PDF is printed by a browser, and none was found. Nothing was written.\n" +
    "- Install Chromium, Chrome or Edge, or name one: HARDSTAND_BROWSER=/path/to/chromium\n" +
    "- Or use --html FILE, open that file in any browser and print it.\n",
  notPrinted: (browser: string, why: string): string =>
    `The browser ${browser} made no PDF (${why}). Nothing was written.\n` +
    "- Or use --html FILE, open that file in any browser and print it.\n",
};

/** How a plan is given, with what prints it where that is needed. */
type GivenForm =
  | Exclude<PlanForm, { readonly as: "pdf" }>
  | (Extract<PlanForm, { readonly as: "pdf" }> & { readonly printer: PdfPrinter });

/** Plans a job and gives it in the form asked for. @returns the exit code */
export async function planCommand(
  name: string,
  { form, strict, language }: PlanAsked,
  io: CliIo,
): Promise<number> {
  const ready = withPrinter(form, io);
  if (ready === null) return EXIT.badInput;
  const data = loadData();
  const job = await openJob(name, data.trade, io);
  if (job === null) return EXIT.badInput;
  const read = planJob(job.value, data);
  if (!read.ok) {
    sayIssues(read.issues, name, io);
    return EXIT.badInput;
  }
  const plan = read.value;
  const given = await give(plan, job.value, ready, await loadLanguage(language), io);
  if (given !== EXIT.done) return given;
  return leave(plan, job.value, strict, io);
}

/** Looks for a browser before anything is computed; null when one is needed and there is none, which is said. */
function withPrinter(form: PlanForm, io: CliIo): GivenForm | null {
  if (form.as !== "pdf") return form;
  const printer = io.findPrinter();
  if (printer === null) io.stderr(words.noBrowser);
  return printer === null ? null : { ...form, printer };
}

async function give(
  plan: Plan,
  job: Job & { readonly title: string | null },
  form: GivenForm,
  language: Language,
  io: CliIo,
): Promise<number> {
  const facts = { date: io.today(), title: job.title, sampled: job.water.sampled };
  switch (form.as) {
    case "json":
      io.stdout(`${JSON.stringify(plan, null, 2)}\n`);
      return EXIT.done;
    case "card":
      io.stdout(cardText(fillCard(plan, facts, language), language));
      return EXIT.done;
    case "text":
      io.stdout(planText(plan, job.aim.where, language));
      return EXIT.done;
    case "html":
      return writeReport(form.file, planHtml(plan, job, facts, { part: form.part, language }), io);
    case "pdf":
      return givePdf(
        form.printer,
        form.file,
        planHtml(plan, job, facts, { part: form.part, paper: form.paper, language }),
        io,
      );
  }
}

async function givePdf(printer: PdfPrinter, file: string, page: string, io: CliIo): Promise<number> {
  let pdf: Uint8Array;
  try {
    pdf = await printer.print(page);
  } catch (error) {
    io.stderr(words.notPrinted(printer.name, error instanceof Error ? error.message : String(error)));
    return EXIT.badInput;
  }
  return writeReport(file, pdf, io);
}

/** Exit code of a plan that was given, with a word on why it is not zero. */
function leave(plan: Plan, job: Job, strict: boolean, io: CliIo): number {
  if (strict && isOutsideRange(plan, job)) {
    io.stderr("Strict: figures of this plan lie outside the range the activity model was fitted to.\n");
    return EXIT.outsideRange;
  }
  if (plan.chosen === null) {
    const judged = plan.programmes.some(({ meetsAim }) => meetsAim !== null);
    io.stderr(
      judged
        ? "No programme meets the aim. The result shows how near each one comes.\n"
        : "What metals hold of these actives is not known: no programme could be held against the aim.\n",
    );
    return EXIT.noneFound;
  }
  return EXIT.done;
}

/** Whether the figures the aim rests on, as planned or for the chosen programme, were computed beyond the fitted range. */
export function isOutsideRange(plan: Plan, job: Job): boolean {
  const chosen = plan.programmes.find((programme) => programme.id === plan.chosen);
  const planned = plan.programmes.find((programme) => programme.kind === "none");
  const used = [planned, chosen].filter((programme) => programme !== undefined);
  if (plan.tank.extrapolated || used.some((programme) => programme.tank.extrapolated)) return true;
  return job.aim.where === "on the leaf" && used.some((one) => one.path.some((step) => step.extrapolated));
}
