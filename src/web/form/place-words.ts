import { conditionerName } from "../job/draft-conditioners.ts";
import { entryName } from "../job/draft-mix.ts";
import type { Draft } from "../job/draft.ts";
import type { Say } from "../language/language-context.ts";

const SPRAY: Readonly<Record<string, string>> = {
  volume: "Water volume",
  "least volume": "Least volume",
  tank: "Tank",
  area: "Area",
  temperature: "Water temperature",
  humidity: "Humidity",
  "leaf calcium": "Calcium on the leaf",
  coverage: "Leaf the spray covers",
  "holding time": "Time in the tank",
  jar: "Jar",
  "season area": "Area of a season",
  "dead volume": "Left when it runs dry",
  hopper: "Induction hopper",
  output: "Output of all nozzles",
  aerated: "Air in the tank",
};
const GROUPS: Readonly<Record<string, string>> = {
  water: "Water test",
  "water.readings": "Water test",
  spray: "Spray",
  mix: "Tank mix",
  conditioners: "Conditioners",
  aim: "Aim",
  partners: "Other partners",
  site: "Place",
  "other waters": "Other waters",
};

/** A row of a list, and what stands behind it. */
const ROW = /^(water\.readings|other waters|mix|conditioners)\[(\d+)\](?:\.(.+))?$/;

/** Puts a name of the data, or a word of the document, into the language of the page. */
type Name = (text: string) => string;

/** Where on the form a path of the document stands, in the words of the form; null when it stands nowhere. */
export function placeWords(path: string, draft: Draft, say: Say, name: Name): string | null {
  const row = ROW.exec(path);
  if (row !== null) {
    const [, list = "", at = "0", part] = row;
    return rowWords({ list, index: Number(at), part }, draft, say, name);
  }
  const group = path.replace(/[.[].*$/s, "");
  const key = path === group ? undefined : path.slice(group.length + 1).replace(/\[.*$/s, "");
  if (group === "spray" && key !== undefined) return name(SPRAY[key] ?? capital(key));
  if (key !== undefined && path.startsWith(`${group}[`)) return name(GROUPS[group] ?? capital(group));
  const place = GROUPS[path] ?? key;
  return place === undefined ? null : capital(name(place));
}

interface Row {
  readonly list: string;
  readonly index: number;
  /** What is meant inside the row; undefined for the row itself. */
  readonly part: string | undefined;
}

function rowWords(row: Row, draft: Draft, say: Say, name: Name): string {
  const { list, index, part } = row;
  const number = index + 1;
  if (list === "water.readings") {
    const parameter = draft.water.readings[index]?.parameter ?? "";
    return parameter === "" ? say("Reading {number}", { number }) : capital(name(parameter));
  }
  const called = rowName(list, index, draft);
  const shown = called === "" ? unnamed(list, number, say) : capital(name(called));
  return part === undefined ? shown : `${shown}, ${insideWords(list, index, part, draft, name)}`;
}

function unnamed(list: string, number: number, say: Say): string {
  if (list === "mix") return say("Product {number}", { number });
  if (list === "conditioners") return say("Conditioner {number}", { number });
  return say("Other water {number}", { number });
}

function rowName(list: string, index: number, draft: Draft): string {
  if (list === "other waters") return draft.otherWaters[index]?.source ?? "";
  if (list === "mix") {
    const row = draft.mix[index];
    return row === undefined ? "" : entryName(row);
  }
  const row = draft.conditioners[index];
  return row === undefined ? "" : conditionerName(row);
}

/** What stands inside a row: the last word of its path that a form shows, with the reading of a further water named. */
function insideWords(list: string, index: number, part: string, draft: Draft, name: Name): string {
  const reading = /^readings\[(\d+)\]/.exec(part);
  if (list === "other waters" && reading !== null)
    return name(draft.otherWaters[index]?.readings[Number(reading[1])]?.parameter ?? "reading");
  return part
    .replace(/^active\./, "")
    .split(/\[\d+\]\.?/)
    .map(name)
    .join(" ")
    .trim();
}

/** The first letter large, except where the small one is part of the name. */
export function capital(text: string): string {
  return text.startsWith("pH") ? text : `${text.slice(0, 1).toUpperCase()}${text.slice(1)}`;
}
