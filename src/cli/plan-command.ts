import { planJob } from "../agronomy/index.ts";
import type { Job, Plan } from "../agronomy/index.ts";
import { cardText, fillCard, planHtml, planText } from "../report/index.ts";
import { loadLanguage } from "../words/index.ts";
import type { Language, LanguageTag } from "../words/index.ts";
import type { PlanForm } from "./arguments.ts";
import { EXIT, sayIssues } from "./exit.ts";
import type { CliIo } from "./io.ts";
import { loadData, openJob } from "./open-job.ts";
import { writeReport } from "./write-report.ts";

/** How a plan is asked for. */
export interface PlanAsked {
  readonly form: PlanForm;
  readonly strict: boolean;
  readonly language: LanguageTag;
}

/** Plans a job and gives it in the form asked for. @returns the exit code */
export async function planCommand(
  name: string,
  { form, strict, language }: PlanAsked,
  io: CliIo,
): Promise<number> {
  const data = loadData();
  const job = await openJob(name, data.trade, io);
  if (job === null) return EXIT.badInput;
  const read = planJob(job.value, data);
  if (!read.ok) {
    sayIssues(read.issues, name, io);
    return EXIT.badInput;
  }
  const plan = read.value;
  const given = await give(plan, job.value, form, await loadLanguage(language), io);
  if (given !== EXIT.done) return given;
  return leave(plan, job.value, strict, io);
}

async function give(
  plan: Plan,
  job: Job & { readonly title: string | null },
  form: PlanForm,
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
      io.stdout(planText(plan));
      return EXIT.done;
    case "html":
      return writeReport(form.file, planHtml(plan, facts), io);
  }
}

/** Exit code of a plan that was given, with a word on why it is not zero. */
function leave(plan: Plan, job: Job, strict: boolean, io: CliIo): number {
  if (strict && isOutsideRange(plan, job)) {
    io.stderr("Strict: figures of this plan lie outside the range the activity model was fitted to.\n");
    return EXIT.outsideRange;
  }
  if (plan.chosen === null) {
    io.stderr("No programme meets the aim. The result shows how near each one comes.\n");
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
