import type { BookStep } from "../../records/index.ts";
import { jobName } from "./job-content.ts";

const MS_PER_DAY = 86_400_000;

/** A day and a time as the person's own browser writes them. */
export function instantWords(instant: string): string {
  return new Date(instant).toLocaleString(undefined, { dateStyle: "medium", timeStyle: "short" });
}

/** How long ago something was, in days. */
export function agoWords(instant: string, now: Date): string {
  const midnight = (date: Date): number => Date.UTC(date.getFullYear(), date.getMonth(), date.getDate());
  const days = Math.round((midnight(now) - midnight(new Date(instant))) / MS_PER_DAY);
  if (days <= 0) return "today";
  return days === 1 ? "yesterday" : `${String(days)} days ago`;
}

/** A count with its noun. */
export function jobsWords(count: number): string {
  return count === 1 ? "1 job" : `${String(count)} jobs`;
}

/** What was done to the book, in words. */
export function stepWords(step: BookStep): string {
  if (step.kind === "imported") return `${jobsWords(step.jobs.length)} taken in from a file`;
  const [first] = step.jobs;
  return first !== undefined && step.jobs.length === 1
    ? `“${jobName(first)}” deleted`
    : `${jobsWords(step.jobs.length)} deleted`;
}
