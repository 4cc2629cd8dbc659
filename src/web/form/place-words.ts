import { ownName } from "../job/draft.ts";
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
};
const GROUPS: Readonly<Record<string, string>> = {
  water: "Water test",
  "water.readings": "Water test",
  spray: "Spray",
  mix: "Tank mix",
  conditioners: "Conditioners",
  aim: "Aim",
};

/** Where on the form a path of the document stands, in the words of the form; null when it stands nowhere. */
export function placeWords(path: string, draft: Draft): string | null {
  const row = /^(water\.readings|mix|conditioners)\[(\d+)\](?:\.(.+))?$/.exec(path);
  if (row !== null) {
    const [, list = "", at = "0", part] = row;
    return rowWords(list, Number(at), part, draft);
  }
  const [group = "", key] = path.split(".");
  if (group === "spray" && key !== undefined) return SPRAY[key] ?? capital(key);
  return GROUPS[path] ?? (key === undefined ? null : capital(key));
}

function rowWords(list: string, index: number, part: string | undefined, draft: Draft): string {
  if (list === "water.readings") {
    const name = draft.water.readings[index]?.parameter ?? "";
    return name === "" ? `Reading ${String(index + 1)}` : capital(name);
  }
  const row = draft.mix[index];
  const product = row === undefined ? undefined : (ownName(row) ?? row.active);
  const name = list === "mix" ? product : draft.conditioners[index]?.chemistry;
  const kind = list === "mix" ? "Product" : "Conditioner";
  const shown = name === undefined || name === "" ? `${kind} ${String(index + 1)}` : capital(name);
  return part === undefined ? shown : `${shown}, ${part}`;
}

/** The first letter large, except where the small one is part of the name. */
export function capital(text: string): string {
  return text.startsWith("pH") ? text : `${text.slice(0, 1).toUpperCase()}${text.slice(1)}`;
}
