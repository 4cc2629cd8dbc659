import names from "../../../data/sheet-names.json" with { type: "json" };
import { parameterNamed, PARAMETER_RULES, PARAMETERS, readReadingUnit } from "../../units/index.ts";
import type { Parameter } from "../../units/index.ts";

/** What a heading or the first cell of a line says. */
export interface NameRead {
  readonly parameter: Parameter | null;
  /** Parameters the name may mean when it has two meanings in use; empty otherwise. */
  readonly choices: readonly Parameter[];
  /** Why it is asked; null when the name is clear. */
  readonly why: string | null;
  /** Unit that stands in the same cell; "" when none does. */
  readonly unit: string;
  /** What the figure counts ("CaCO3", "N"), where the name says so; "" otherwise. */
  readonly basis: string;
  readonly fraction: "total" | "dissolved" | null;
}

interface Meaning {
  readonly parameter: Parameter;
  readonly basis: string;
}

/** Lower case, no accents, no charges, punctuation as single spaces: how names are compared. */
export function plainName(text: string): string {
  return text
    .normalize("NFKD")
    .replace(/[\u0300-\u036f]/g, "")
    .replace(/ł/gi, "l")
    .toLowerCase()
    .replace(/[^a-z0-9+.,]+/g, " ")
    .replace(/[.,](?!\d)/g, " ")
    .replace(/\s+/g, " ")
    .trim();
}

const MEANINGS = new Map<string, Meaning>();
for (const entry of names.names) {
  const parameter = PARAMETERS.find((known) => known === entry.parameter);
  if (parameter === undefined) continue;
  for (const word of entry.words) MEANINGS.set(plainName(word), { parameter, basis: entry.basis ?? "" });
}
const ASKED = new Map(names.asked.flatMap((entry) => entry.words.map((word) => [plainName(word), entry])));
const QUALIFIERS = new Map<string, "total" | "dissolved" | "other">(
  (["total", "dissolved", "other"] as const).flatMap((kind) =>
    names.qualifiers[kind].map((word) => [plainName(word), kind] as const),
  ),
);

/** A name without its blanks: text copied from a PDF may part words where letters were set closer, as "Richtwer t". */
export function unspaced(plain: string): string {
  return plain.replaceAll(" ", "");
}

const MEANINGS_UNSPACED = new Map(
  [...MEANINGS].filter(([word]) => word.length > 5).map(([word, meaning]) => [unspaced(word), meaning]),
);

/** Whether a text is a unit of a concentration, hardness, conductivity, temperature or turbidity. */
export function isUnit(text: string): boolean {
  const trimmed = text.trim();
  if (trimmed === "" || /^[ckf]$/i.test(trimmed)) return false;
  const read = readReadingUnit(trimmed);
  if (read.kind === "other method") return true;
  return read.kind === "meanings" && read.meanings.some((meaning) => meaning.kind !== "pH");
}

/** A unit with its basis: "mg/L" and "CaCO3" give "mg/L as CaCO3"; a unit that says its basis stays as it is. */
export function unitWithBasis(unit: string, basis: string): string {
  const trimmed = unit.trim();
  if (basis === "" || trimmed === "") return trimmed;
  const joined = `${trimmed} as ${basis}`;
  const read = readReadingUnit(trimmed);
  const bare = read.kind === "meanings" && read.meanings.some((m) => "basis" in m && m.basis === null);
  return bare && isUnit(joined) ? joined : trimmed;
}

/** Whether a text names what a figure counts: "CaCO3", "N", "HCO3". */
function isBasis(text: string): boolean {
  return /^[A-Za-z0-9]{1,6}$/.test(text) && isUnit(`mg/L as ${text}`);
}

/** Reads the name of a reading as a sheet prints it, with the unit, basis and fraction that stand with it. */
export function readName(cell: string): NameRead {
  const parts = {
    unit: "",
    basis: "",
    fraction: null as NameRead["fraction"],
    symbol: null as Meaning | null,
    measuredAt_C: null as number | null,
  };
  let rest = withoutNote(cell)
    .normalize("NFKC")
    .replace(/[([]([^()[\]]*)[)\]]/g, (_all, inner: string) => {
      takeBracket(inner.trim(), parts);
      return " ";
    });
  // "Conductivity at 25 °C" is a name as it stands.
  if (plainMeaning(rest) === null) rest = takeUnit(takeTemperature(rest, parts), parts);
  rest = rest.replace(
    /\b(?:expressed as|as|als|comme|en|como|in)\s+([A-Za-z][A-Za-z0-9]{0,5})\s*$/i,
    (all, basis: string) => {
      if (!isBasis(basis)) return all;
      if (parts.basis === "") parts.basis = basis;
      return " ";
    },
  );
  const asked = ASKED.get(plainName(rest)) ?? ASKED.get(plainName(cell)) ?? askedAt(rest, parts);
  const { unit, basis, fraction } = parts;
  if (asked !== undefined) {
    const choices = asked.choices.flatMap((name) => PARAMETERS.filter((known) => known === name));
    return { parameter: null, choices, why: asked.why, unit, basis, fraction };
  }
  // A symbol in brackets speaks for a short foreign name, never for "Sodium adsorption ratio (Na, Ca, Mg)".
  const symbol = plainName(rest).split(" ").length <= 2 ? parts.symbol : null;
  const found = meaningOf(rest, parts) ?? symbol ?? meaningOf(cell, parts);
  return {
    parameter: found?.parameter ?? null,
    choices: [],
    why: null,
    unit,
    basis: parts.basis === "" ? (found?.basis ?? "") : parts.basis,
    fraction: parts.fraction,
  };
}

/** Whether a text is the name of a reading, or one that may mean several. */
export function isKnownName(cell: string): boolean {
  const { parameter, choices } = readName(cell);
  return parameter !== null || choices.length > 0;
}

interface Parts {
  unit: string;
  basis: string;
  fraction: NameRead["fraction"];
  symbol: Meaning | null;
  /** Temperature that the name says the reading holds for. */
  measuredAt_C: number | null;
}

/** A name without the mark of a footnote behind it: "Iron*", "Calcium 1)", "Magnesium²". */
function withoutNote(cell: string): string {
  return cell.replace(/(?:\s*\(?[*†‡#]+\)?|\s*[¹²³⁴-⁹]{1,2}\)?|\s+\d{1,2}\))+\s*$/u, "");
}

const TEMPERATURE = /[\s,]*(?:\b(?:at|a|bei|bij)\s|@|à)?\s*\b(\d{2})\s*°?\s*C\s*$/i;

/** Takes "at 25 °C" off the end of a name that is not known with it. */
function takeTemperature(text: string, parts: Parts): string {
  const match = TEMPERATURE.exec(text);
  if (match === null) return text;
  parts.measuredAt_C = Number(match[1]);
  return text.slice(0, match.index);
}

/** Conductivities are compared at 25 °C: one at another temperature is asked about. */
function askedAt(name: string, parts: Parts): (typeof names.asked)[number] | undefined {
  if (parts.measuredAt_C === null || parts.measuredAt_C === 25) return undefined;
  const isConductivity = meaningOf(name, parts)?.parameter === "conductivity";
  return isConductivity ? ASKED.get("conductivity at another temperature") : undefined;
}

function takeBracket(inner: string, parts: Parts): void {
  const ofUnit = /^(?:as|als|en|in)\s+(.+)$/i.exec(inner)?.[1] ?? inner;
  if (isUnit(inner)) parts.unit = inner;
  else if (isUnit(ofUnit)) parts.unit = ofUnit;
  else if (isBasis(ofUnit) && ofUnit !== inner) parts.basis = ofUnit;
  else {
    if (TEMPERATURE.test(` ${inner}`)) {
      takeTemperature(` ${inner}`, parts);
      return;
    }
    const qualifier = QUALIFIERS.get(plainName(inner));
    if (qualifier === "total" || qualifier === "dissolved") parts.fraction = qualifier;
    else if (qualifier === undefined) {
      parts.symbol = plainMeaning(inner) ?? parts.symbol;
      // "Alkalinity (CaCO3)" names the basis; "Bicarbonate (HCO3)" the ion itself, which changes nothing.
      if (parts.symbol === null && isBasis(inner)) parts.basis = inner;
    }
  }
}

/** Takes a unit off the end of a name: "Calcium, mg/L", "Hardness mg/L as CaCO3". */
function takeUnit(text: string, parts: Parts): string {
  const pieces = text.trim().split(/(?<=,)(?!\d)\s*|\s+/);
  for (let from = 1; from < pieces.length; from++) {
    const tail = pieces
      .slice(from)
      .join(" ")
      .replace(/^(?:in|en)\s+/i, "");
    if (!/[/°]|ppm|ppb|gpg|NTU|FNU/i.test(tail) || !isUnit(tail)) continue;
    if (parts.unit === "") parts.unit = tail;
    return pieces.slice(0, from).join(" ").replace(/,\s*$/, "");
  }
  return text;
}

function plainMeaning(text: string): Meaning | null {
  const own = parameterNamed(text);
  if (own !== null) return { parameter: own, basis: "" };
  const plain = plainName(text);
  const named = MEANINGS.get(plain);
  if (named !== undefined) return named;
  const again = plain === "" ? null : parameterNamed(plain);
  if (again !== null) return { parameter: again, basis: "" };
  const closed = MEANINGS_UNSPACED.get(unspaced(plain));
  if (closed !== undefined) return closed;
  // "Magnesium2": the mark of a footnote that ran together with the name; never that of "iron3".
  const marked = /^([a-z]{6,})\d$/.exec(plain)?.[1];
  if (marked !== undefined) return plainMeaning(marked);
  // "Nitrat-N", "phosphate P": the ion counted as its element.
  const [, ion = "", element = ""] = /^(.{3,}) ([nsp])$/.exec(plain) ?? [];
  const ofIon = ion === "" ? null : (MEANINGS.get(ion)?.parameter ?? parameterNamed(ion));
  const basis = element.toUpperCase();
  return ofIon !== null && basis in PARAMETER_RULES[ofIon].bases ? { parameter: ofIon, basis } : null;
}

/** The meaning of a name, words such as "total" or "dissolved" set aside one by one if it has none with them. */
function meaningOf(text: string, parts: Parts): Meaning | null {
  let words = plainName(text)
    .split(" ")
    .filter((word) => word !== "");
  const noted = (list: readonly string[]): void => {
    for (const word of list) {
      const kind = QUALIFIERS.get(word);
      if (kind === "total" || kind === "dissolved") parts.fraction ??= kind;
    }
  };
  const whole = plainMeaning(text);
  if (whole !== null) {
    noted(words);
    return whole;
  }
  while (words.length > 1) {
    const drop = words.findIndex((word) => QUALIFIERS.has(word));
    if (drop < 0) break;
    noted([words[drop] ?? ""]);
    words = words.filter((_, i) => i !== drop);
    const found = plainMeaning(words.join(" "));
    if (found !== null) return found;
  }
  // "Calcium Ca", "Sulphate SO4": a name and its own symbol.
  if (words.length === 2) {
    const [a, b] = words.map((word) => plainMeaning(word));
    if (a !== null && a !== undefined && b !== null && b !== undefined && a.parameter === b.parameter)
      return a;
    if (a !== null && a !== undefined && isBasis(text.trim().split(/\s+/).at(-1) ?? "")) {
      parts.basis = parts.basis === "" ? (text.trim().split(/\s+/).at(-1) ?? "") : parts.basis;
      return a;
    }
  }
  return null;
}
