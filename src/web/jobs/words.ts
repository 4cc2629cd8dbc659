import type { BookStep } from "../../records/index.ts";
import type { Say } from "../language/language-context.ts";
import { jobName } from "./job-content.ts";

const MS_PER_DAY = 86_400_000;

/** A day and a time as the language of the page writes them. */
export function instantWords(instant: string, locale: string): string {
  return new Date(instant).toLocaleString(locale, { dateStyle: "medium", timeStyle: "short" });
}

/** How long ago something was, in days. */
export function agoWords(instant: string, now: Date, say: Say): string {
  const midnight = (date: Date): number => Date.UTC(date.getFullYear(), date.getMonth(), date.getDate());
  const days = Math.round((midnight(now) - midnight(new Date(instant))) / MS_PER_DAY);
  if (days <= 0) return say("today");
  return days === 1 ? say("yesterday") : say("{count} days ago", { count: days });
}

/** A count with its noun. */
export function jobsWords(count: number, say: Say): string {
  return count === 1 ? say("1 job") : say("{count} jobs", { count });
}

/** What was done to the book, in words. */
export function stepWords(step: BookStep, say: Say): string {
  if (step.kind === "imported")
    return say("{jobs} taken in from a file", { jobs: jobsWords(step.jobs.length, say) });
  const [first] = step.jobs;
  return first !== undefined && step.jobs.length === 1
    ? say("“{name}” deleted", { name: jobName(first, say) })
    : say("{jobs} deleted", { jobs: jobsWords(step.jobs.length, say) });
}
