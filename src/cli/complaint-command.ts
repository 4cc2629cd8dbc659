import { checkComplaint, readComplaint } from "../agronomy/index.ts";
import { complaintHtml, complaintText } from "../report/index.ts";
import { loadLanguage } from "../words/index.ts";
import type { LanguageTag } from "../words/index.ts";
import type { ComplaintForm } from "./arguments.ts";
import { readDocument } from "./document.ts";
import { EXIT, sayIssues } from "./exit.ts";
import type { CliIo } from "./io.ts";
import { loadData } from "./open-job.ts";
import { writeReport } from "./write-report.ts";

/** How the answer to a complaint is asked for. */
export interface ComplaintAsked {
  readonly form: ComplaintForm;
  readonly language: LanguageTag;
}

/** Says how much of a failed dose the water could have taken, in the form asked for. @returns the exit code */
export async function complaintCommand(
  name: string,
  { form, language: tag }: ComplaintAsked,
  io: CliIo,
): Promise<number> {
  const data = loadData();
  const document = await readDocument(name, io);
  const record = document.ok ? readComplaint(document.value, { trade: data.trade }) : document;
  sayIssues(record.issues, name, io);
  if (!record.ok) return EXIT.badInput;
  const answer = checkComplaint(record.value, data);
  if (!answer.ok) {
    sayIssues(answer.issues, name, io);
    return EXIT.badInput;
  }
  const language = await loadLanguage(tag);
  switch (form.as) {
    case "json":
      io.stdout(`${JSON.stringify(answer.value, null, 2)}\n`);
      return EXIT.done;
    case "text":
      io.stdout(complaintText(answer.value, language));
      return EXIT.done;
    case "html":
      return writeReport(form.file, complaintHtml(answer.value, { date: io.today() }, language), io);
  }
}
