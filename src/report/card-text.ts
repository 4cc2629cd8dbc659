import { ENGLISH, fill } from "../words/index.ts";
import type { Language } from "../words/index.ts";
import type { CardStep, FillCard } from "./card.ts";
import { evidenceMark } from "./sentences.ts";

const WIDTH = 78;

/** The fill card as plain text, at most 78 signs wide. @param language the one the card was made in */
export function cardText(card: FillCard, language: Language = ENGLISH): string {
  const words = language.words.card;
  const { full, last, count } = card.loads;
  const lines: string[] = [card.title, "=".repeat(Math.min(WIDTH, card.title.length))];
  lines.push(
    ...wrap(`${words.water}: ${card.sample}`),
    ...wrap(`${words.fill}: ${card.programme}, ${card.waterVolume}`),
  );
  if (card.result !== null) lines.push(...wrap(card.result));
  lines.push(`${words.printed}: ${card.date}`, fill(words.loadCount, { count, ...full }));
  if (last !== null) lines.push(fill(words.lastLoadLine, { ...last }));
  for (const warning of card.warnings) lines.push("", ...wrap(`! ${warning.text}`, "  "));
  if (card.before.length > 0) {
    lines.push("", words.beforeYouStart);
    for (const caution of card.before) lines.push(...wrap(`! ${caution.text}`, "  "));
  }
  lines.push("");
  if (card.jar !== null) lines.push(...wrap(card.jar), "");
  for (const step of card.steps) lines.push(...stepLines(step, words));
  lines.push(
    "",
    ...wrap(card.check),
    ...wrap(`${card.redo.text} ${evidenceMark(card.redo.evidence, language)}`),
    ...wrap(card.footer),
    "",
  );
  return lines.join("\n");
}

function stepLines(step: CardStep, words: Language["words"]["card"]): string[] {
  const number = String(step.number).padStart(2);
  const lines = step.pause
    ? [
        "-".repeat(WIDTH),
        ...wrap(`[ ] ${number}. ${words.pause.toUpperCase()} ${step.what.text}`, "        "),
      ]
    : wrap(`[ ] ${number}. ${step.what.text}`, "        ");
  if (step.amount !== null) {
    const { label, full, last } = step.amount;
    const lastLoad = last === null ? "" : `   ${fill(words.lastLoadAmount, { amount: last })}`;
    lines.push(`        ${label}: ${full}${lastLoad}`);
  }
  for (const caution of step.cautions) lines.push(...wrap(`        ! ${caution.text}`, "          "));
  if (step.pause) lines.push("-".repeat(WIDTH));
  return lines;
}

/** Where a line may end: not before a sign that French sets apart from its word. */
const GAP = /(?<!«)\s+(?![;:?!»](?:\s|$))/;

/** Breaks a text into lines of at most 78 signs; later lines start with `indent`. A word is never broken. */
export function wrap(text: string, indent = ""): string[] {
  const lead = /^ */.exec(text)?.[0] ?? "";
  const lines: string[] = [];
  let line = lead;
  for (const word of text.trim().split(GAP)) {
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
