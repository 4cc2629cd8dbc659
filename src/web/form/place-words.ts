import { conditionerName } from "../job/draft-conditioners.ts";
import { entryName } from "../job/draft-mix.ts";
import type { Draft } from "../job/draft.ts";

const SPRAY: Readonly<Record<string, string>> = {
  volume: "Water volume",
  "least volume": "Least volume",
  tank: "Tank",
  area: "Area",
  temperature: "Water temperature",
  humidity: "Humidity",
  "holding time": "Time in the tank",
  jar: "Jar",
  "season area": "Area of a season",
  "dead volume": "Left when it runs dry",
  hopper: "Induction hopper",
  output: "Output of all nozzles",
  "leaf calcium": "Calcium on the leaf",
  coverage: "Share of the leaf covered",
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

/** Where on the form a path of the document stands, in the words of the form; null when it stands nowhere. */
export function placeWords(path: string, draft: Draft): string | null {
  const row = ROW.exec(path);
  if (row !== null) {
    const [, list = "", at = "0", part] = row;
    return rowWords(list, Number(at), part, draft);
  }
  const group = path.replace(/[.[].*$/s, "");
  const key = path === group ? undefined : path.slice(group.length + 1).replace(/\[.*$/s, "");
  if (group === "spray" && key !== undefined) return SPRAY[key] ?? capital(key);
  if (key !== undefined && path.startsWith(`${group}[`)) return GROUPS[group] ?? capital(group);
  return GROUPS[path] ?? (key === undefined ? null : capital(key));
}

function rowWords(list: string, index: number, part: string | undefined, draft: Draft): string {
  if (list === "water.readings") {
    const name = draft.water.readings[index]?.parameter ?? "";
    return name === "" ? `Reading ${String(index + 1)}` : capital(name);
  }
  const name = rowName(list, index, draft);
  const kind = { mix: "Product", conditioners: "Conditioner" }[list] ?? "Other water";
  const shown = name === "" ? `${kind} ${String(index + 1)}` : capital(name);
  if (part === undefined) return shown;
  return `${shown}, ${insideWords(list, index, part, draft)}`;
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
function insideWords(list: string, index: number, part: string, draft: Draft): string {
  const reading = /^readings\[(\d+)\]/.exec(part);
  if (list === "other waters" && reading !== null)
    return draft.otherWaters[index]?.readings[Number(reading[1])]?.parameter ?? "reading";
  return part.replace(/^active\./, "").replace(/\[\d+\]\./, " ");
}

/** The first letter large, except where the small one is part of the name. */
export function capital(text: string): string {
  return text.startsWith("pH") ? text : `${text.slice(0, 1).toUpperCase()}${text.slice(1)}`;
}
