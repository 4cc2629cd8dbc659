import type { CardStep, FillCard } from "./card.ts";

const WIDTH = 78;

/** The fill card as plain text, at most 78 signs wide. */
export function cardText(card: FillCard): string {
  const { full, last, count } = card.loads;
  const lines: string[] = [card.title, "=".repeat(Math.min(WIDTH, card.title.length))];
  lines.push(...wrap(`Water: ${card.sample}`), ...wrap(`Fill: ${card.programme}, ${card.waterVolume}`));
  if (card.result !== null) lines.push(...wrap(card.result));
  lines.push(`Printed: ${card.date}`);
  lines.push(`Loads: ${count}. Full load ${full.volume} for ${full.area}.`);
  if (last !== null) lines.push(`Last load ${last.volume} for ${last.area}.`);
  for (const warning of card.warnings) lines.push("", ...wrap(`! ${warning}`, "  "));
  if (card.before.length > 0) {
    lines.push("", "Before you start");
    for (const caution of card.before) lines.push(...wrap(`! ${caution}`, "  "));
  }
  lines.push("");
  for (const step of card.steps) lines.push(...stepLines(step));
  lines.push(
    "",
    ...wrap(card.check),
    ...wrap(`${card.redo.text} [${card.redo.evidence}]`),
    ...wrap(card.footer),
    "",
  );
  return lines.join("\n");
}

function stepLines(step: CardStep): string[] {
  const number = String(step.number).padStart(2);
  const lines = step.pause
    ? ["-".repeat(WIDTH), ...wrap(`[ ] ${number}. PAUSE. ${step.what}`, "        ")]
    : wrap(`[ ] ${number}. ${step.what}`, "        ");
  if (step.amount !== null) {
    const last = step.amount.last === null ? "" : `   last load ${step.amount.last}`;
    lines.push(`        ${step.amount.label}: ${step.amount.full}${last}`);
  }
  for (const caution of step.cautions) lines.push(...wrap(`        ! ${caution}`, "          "));
  if (step.pause) lines.push("-".repeat(WIDTH));
  return lines;
}

/** Breaks a text into lines of at most 78 signs; later lines start with `indent`. A word is never broken. */
export function wrap(text: string, indent = ""): string[] {
  const lead = /^ */.exec(text)?.[0] ?? "";
  const lines: string[] = [];
  let line = lead;
  for (const word of text.trim().split(/\s+/)) {
    const blank = line.trim() === "";
    if (!blank && line.length + 1 + word.length > WIDTH) {
      lines.push(line);
      line = indent + word;
    } else {
      line += blank ? word : ` ${word}`;
    }
  }
  lines.push(line);
  return lines;
}
