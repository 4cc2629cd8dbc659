import { GRAIN_MG, IMPERIAL_GALLON_L, US_GALLON_L } from "./reading-units.ts";
import { foldText, lookUp } from "./text.ts";

/** Area of one acre [ha]. @source international yard (1959): 4840 square yards of 0.9144 m, exact */
export const ACRE_HA = (4840 * 0.9144 ** 2) / 10_000;
/** @source 7000 grains, exact */
export const POUND_KG = (7000 * GRAIN_MG) / 1e6;
const OUNCE_KG = POUND_KG / 16;
const FLUID_OUNCE_US_L = US_GALLON_L / 128;
const FLUID_OUNCE_IMPERIAL_L = IMPERIAL_GALLON_L / 160;

/** A unit of one dimension: value in the internal unit = (value − offset) · factor. */
export interface QuantityUnit {
  readonly factor: number;
  readonly offset?: number;
  /** Which of the dimension's internal units the factor leads to, where there are several. */
  readonly per?: "L" | "kg";
}

const VOLUME: Readonly<Record<string, number>> = {
  l: 1,
  litre: 1,
  litres: 1,
  liter: 1,
  liters: 1,
  ml: 1e-3,
  cl: 1e-2,
  dl: 0.1,
  hl: 100,
  m3: 1000,
  cm3: 1e-3,
  cc: 1e-3,
  "us gal": US_GALLON_L,
  "us gallon": US_GALLON_L,
  "us gallons": US_GALLON_L,
  gal: US_GALLON_L,
  gallon: US_GALLON_L,
  gallons: US_GALLON_L,
  "gal (us)": US_GALLON_L,
  "imp gal": IMPERIAL_GALLON_L,
  "imperial gallon": IMPERIAL_GALLON_L,
  "imperial gallons": IMPERIAL_GALLON_L,
  "uk gal": IMPERIAL_GALLON_L,
  "gal (imp)": IMPERIAL_GALLON_L,
  "gal (uk)": IMPERIAL_GALLON_L,
  "fl oz": FLUID_OUNCE_US_L,
  "us fl oz": FLUID_OUNCE_US_L,
  floz: FLUID_OUNCE_US_L,
  "imp fl oz": FLUID_OUNCE_IMPERIAL_L,
  "uk fl oz": FLUID_OUNCE_IMPERIAL_L,
  pt: US_GALLON_L / 8,
  pint: US_GALLON_L / 8,
  pints: US_GALLON_L / 8,
  "us pt": US_GALLON_L / 8,
  "imp pt": IMPERIAL_GALLON_L / 8,
  "imp pint": IMPERIAL_GALLON_L / 8,
  qt: US_GALLON_L / 4,
  quart: US_GALLON_L / 4,
  quarts: US_GALLON_L / 4,
  "us qt": US_GALLON_L / 4,
  "imp qt": IMPERIAL_GALLON_L / 4,
};
const MASS: Readonly<Record<string, number>> = {
  kg: 1,
  g: 1e-3,
  mg: 1e-6,
  t: 1000,
  tonne: 1000,
  tonnes: 1000,
  lb: POUND_KG,
  lbs: POUND_KG,
  pound: POUND_KG,
  pounds: POUND_KG,
  oz: OUNCE_KG,
  "oz wt": OUNCE_KG,
  ounce: OUNCE_KG,
  ounces: OUNCE_KG,
};
const AREA: Readonly<Record<string, number>> = {
  ha: 1,
  hectare: 1,
  hectares: 1,
  ac: ACRE_HA,
  acre: ACRE_HA,
  acres: ACRE_HA,
  a: ACRE_HA,
  m2: 1e-4,
  "sq m": 1e-4,
  km2: 100,
};
const TIME: Readonly<Record<string, number>> = {
  h: 1,
  hr: 1,
  hrs: 1,
  hour: 1,
  hours: 1,
  min: 1 / 60,
  mins: 1 / 60,
  minute: 1 / 60,
  minutes: 1 / 60,
  d: 24,
  day: 24,
  days: 24,
  s: 1 / 3600,
};
const TEMPERATURE: Readonly<Record<string, QuantityUnit>> = {
  "°c": { factor: 1 },
  c: { factor: 1 },
  degc: { factor: 1 },
  "deg c": { factor: 1 },
  celsius: { factor: 1 },
  "°f": { factor: 5 / 9, offset: 32 },
  f: { factor: 5 / 9, offset: 32 },
  degf: { factor: 5 / 9, offset: 32 },
  "deg f": { factor: 5 / 9, offset: 32 },
  fahrenheit: { factor: 5 / 9, offset: 32 },
};

/** A typed unit in one spelling: lower case, "per" as a slash, no spaces around slashes, "L ha-1" as "l/ha". */
export function foldUnit(typed: string): string {
  return foldText(typed)
    .toLowerCase()
    .replace(/[µμ]/g, "u")
    .replace(/\bu\.s\.( ?)/g, "us ")
    .replace(/\bimp\b\.? ?/g, "imp ")
    .replace(/\bfl\.? ?oz\.?\b/g, "fl oz")
    .replace(/lit(?:re|er)s?\b/g, "l")
    .replace(/\bper\b/g, "/")
    .replace(/[ ·.](ha|ac|l|kg|m)-1\b/g, "/$1")
    .replace(/\s*\/\s*/g, "/")
    .replace(/\s+/g, " ")
    .trim();
}

type Table = (unit: string) => QuantityUnit | null;

function plain(table: Readonly<Record<string, number>>): Table {
  return (unit) => (Object.hasOwn(table, unit) ? { factor: table[unit] ?? NaN } : null);
}

/** "a/b" with a from one table and b from another. */
function ratio(
  top: Readonly<Record<string, number>>,
  bottom: Readonly<Record<string, number>>,
  per?: "L" | "kg",
): Table {
  return (unit) => {
    const [above = "", below = "", ...more] = unit.split("/");
    if (more.length > 0 || !Object.hasOwn(top, above) || !Object.hasOwn(bottom, below)) return null;
    const factor = (top[above] ?? NaN) / (bottom[below] ?? NaN);
    return per === undefined ? { factor } : { factor, per };
  };
}

function firstOf(...tables: readonly Table[]): Table {
  return (unit) => {
    for (const table of tables) {
      const found = table(unit);
      if (found !== null) return found;
    }
    return null;
  };
}

const minutesOf = Object.fromEntries(Object.entries(TIME).map(([unit, hours]) => [unit, hours * 60]));
const gramsOf = Object.fromEntries(Object.entries(MASS).map(([unit, kg]) => [unit, kg * 1000]));
/** "100 l" and "100 us gal" below the slash, as doses are written. */
const volumeWithCount = (unit: string): number | null => {
  const match = /^(\d+(?:\.\d+)?)? ?(.+)$/.exec(unit);
  const size = lookUp(VOLUME, match?.[2] ?? "");
  return size === undefined ? null : size * Number(match?.[1] ?? 1);
};
const doseRatio: Table = (unit) => {
  const slash = unit.indexOf("/");
  const below = slash < 0 ? null : volumeWithCount(unit.slice(slash + 1));
  if (below === null) return null;
  const above = unit.slice(0, slash);
  const grams = lookUp(gramsOf, above);
  if (grams !== undefined) return { factor: grams / below, per: "kg" };
  const litres = lookUp(VOLUME, above);
  return litres === undefined ? null : { factor: litres / below, per: "L" };
};

const perKg: Readonly<Record<string, number>> = MASS;
/** Percentages with their kind said. */
const percent =
  (spellings: readonly string[], unit: QuantityUnit): Table =>
  (typed) =>
    spellings.includes(typed.replace(/ /g, "").replace(/\(|\)/g, "")) ? unit : null;

const liquidRate: Table = (unit) =>
  unit === "oz/ac" || unit === "oz/acre" ? null : ratio(VOLUME, AREA, "L")(unit);
const solidRate = ratio(MASS, AREA, "kg");

/** The units of each dimension, as a function from a folded spelling to its meaning. */
export const QUANTITY_TABLES = {
  "volume per area": firstOf(ratio(VOLUME, AREA), (unit) =>
    unit === "gpa" ? { factor: US_GALLON_L / ACRE_HA } : null,
  ),
  volume: plain(VOLUME),
  area: plain(AREA),
  temperature: (unit: string): QuantityUnit | null => lookUp(TEMPERATURE, unit) ?? null,
  time: plain(TIME),
  flow: ratio(VOLUME, minutesOf),
  "liquid rate": liquidRate,
  "solid rate": solidRate,
  rate: firstOf(liquidRate, solidRate),
  content: firstOf(
    ratio(gramsOf, VOLUME, "L"),
    ratio(gramsOf, perKg, "kg"),
    percent(["%w/w", "%ww", "%m/m", "%bymass", "%byweight"], { factor: 10, per: "kg" }),
    percent(["%w/v", "%wv", "%m/v"], { factor: 10, per: "L" }),
  ),
  dose: firstOf(
    doseRatio,
    percent(["%w/v", "%wv", "%m/v"], { factor: 10, per: "kg" }),
    percent(["%v/v", "%vv", "%byvolume"], { factor: 0.01, per: "L" }),
  ),
  share: (unit: string): QuantityUnit | null =>
    unit === "%" || unit === "percent" ? { factor: 0.01 } : null,
  "molar mass": plain({ "g/mol": 1, "kg/mol": 1000, da: 1, u: 1 }),
} as const satisfies Readonly<Record<string, Table>>;

/** Litres or kilograms in the pack a price is for ("/20 kg", "/L"); null when the text names neither. */
export function packSize(unit: string): { readonly size: number; readonly per: "L" | "kg" } | null {
  const match = /^\/ ?(\d+(?:\.\d+)?)? ?(.+)$/.exec(unit);
  if (match === null) return null;
  const count = match[1] === undefined ? 1 : Number(match[1]);
  const name = match[2] ?? "";
  if (Object.hasOwn(MASS, name)) return { size: count * (MASS[name] ?? NaN), per: "kg" };
  if (Object.hasOwn(VOLUME, name)) return { size: count * (VOLUME[name] ?? NaN), per: "L" };
  return null;
}

/** Units offered for each dimension, the internal one first. */
export const QUANTITY_UNITS = {
  "volume per area": ["L/ha", "gal/ac", "imp gal/ac"],
  volume: ["L", "m3", "mL", "US gal", "imp gal"],
  area: ["ha", "ac", "m2"],
  temperature: ["°C", "°F"],
  time: ["h", "min", "d"],
  flow: ["L/min", "US gal/min", "L/h"],
  "liquid rate": ["L/ha", "mL/ha", "fl oz/ac", "pt/ac", "qt/ac", "gal/ac"],
  "solid rate": ["kg/ha", "g/ha", "lb/ac", "oz/ac"],
  rate: ["L/ha", "mL/ha", "kg/ha", "g/ha", "fl oz/ac", "pt/ac", "qt/ac", "gal/ac", "lb/ac", "oz/ac"],
  content: ["g/L", "g/kg", "% w/w", "% w/v", "lb/US gal"],
  dose: ["g/L", "kg/100 L", "L/100 L", "% w/v", "% v/v", "lb/100 US gal"],
  share: ["%"],
  "molar mass": ["g/mol"],
} as const satisfies Readonly<Record<keyof typeof QUANTITY_TABLES, readonly string[]>>;
