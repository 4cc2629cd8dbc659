import { fromInternal, readQuantity, readReadingUnit, readingScale } from "../../../src/units/index.ts";
import type { Parameter } from "../../../src/units/index.ts";
import { expectedNumber, halfWidth, list, num } from "./published-check.ts";
import type { Handler, Pair, PublishedCheck } from "./published-check.ts";

/** A value of a parameter turned from one unit into another. */
export function turned(parameter: Parameter, value: number, from: string, to: string): number {
  const scale = readingScale(parameter, from, "unit");
  if (!scale.ok) throw new Error(`${from}: ${scale.issues[0]?.code ?? ""}`);
  const read = fromInternal(parameter, (value - scale.value.offset) * scale.value.factor, to);
  if (!read.ok) throw new Error(`${to}: ${read.issues[0]?.code ?? ""}`);
  return read.value;
}

/** One conversion as the check gives it. */
function conversion(parameter: Parameter, to?: string): Handler {
  return (check) => {
    const from = String(check.input["from"]);
    const target = to ?? String(check.input["to"]);
    const published = expectedNumber(check);
    const ours = turned(parameter, num(check, "value"), from, target);
    return [{ published, ours, tolerance: halfWidth(check, published), unit: target }];
  };
}

const KEY_UNITS: Readonly<Record<string, string>> = {
  ppm_CaCO3: "mg/L as CaCO3",
  mg_per_L_CaCO3: "mg/L as CaCO3",
  mmol_per_L: "mmol/L",
  meq_per_L: "meq/L",
  dH: "°dH",
  fH: "°fH",
  Clark: "°e",
  gpg: "gpg",
};

/** A hardness in one unit, published in several others. */
const hardnessTable: Handler = (check) => {
  const [fromKey = "", value] = Object.entries(check.input)[0] ?? [];
  const values = Array.isArray(value) ? list<number>(value) : [value as number];
  return Object.entries(check.expected as Record<string, number | readonly number[]>).flatMap(
    ([key, published]) =>
      values.map((input, i): Pair => {
        const wanted = Array.isArray(published)
          ? (published as readonly number[])[i]!
          : (published as number);
        const ours = turned("hardness", input, KEY_UNITS[fromKey] ?? fromKey, KEY_UNITS[key] ?? key);
        return {
          label: key,
          published: wanted,
          ours,
          tolerance: halfWidth(check, wanted),
          unit: KEY_UNITS[key] ?? key,
        };
      }),
  );
};

function roundTrips(check: PublishedCheck): readonly Pair[] {
  const units = list<string>(check.input["units"]);
  return list<number>(check.input["values"]).map((value): Pair => {
    let worst = value;
    for (const from of units) {
      for (const to of units) {
        const back = turned("hardness", turned("hardness", value, from, to), to, from);
        if (Math.abs(back - value) > Math.abs(worst - value)) worst = back;
      }
    }
    return {
      label: `${value}, worst of all pairs`,
      published: value,
      ours: worst,
      tolerance: halfWidth(check, value),
      unit: "",
    };
  });
}

const needsCharge: Handler = (check) => {
  const ours = turned("calcium", num(check, "value"), "meq/L", "mmol/L");
  const refused = readingScale("iron", "meq/L", "unit");
  return [
    { published: expectedNumber(check), ours, tolerance: halfWidth(check, 1), unit: "mmol/L" },
    {
      label: "charge unknown",
      published: "unit-needs-charge",
      ours: refused.ok ? "read" : (refused.issues[0]?.code ?? ""),
    },
  ];
};

const ppmTrap: Handler = () => [
  {
    published: JSON.stringify(readReadingUnit("mg/L")),
    ours: JSON.stringify(readReadingUnit("ppm")),
  },
];

const fauRefused: Handler = () => {
  const read = readingScale("turbidity", "FAU", "unit");
  return [{ published: "unit-not-comparable", ours: read.ok ? "read" : (read.issues[0]?.code ?? "") }];
};

const fahrenheit: Handler = (check) => {
  const published = expectedNumber(check);
  const tolerance = halfWidth(check, published);
  const job = readQuantity(`${num(check, "value")} °F`, "temperature", "q");
  return [
    { published, ours: turned("temperature", num(check, "value"), "°F", "°C"), tolerance, unit: "°C" },
    { label: "in a job", published, ours: job.ok ? job.value : Infinity, tolerance, unit: "°C" },
  ];
};

const alkalinityToIon =
  (unit: string, parameter: Parameter): Handler =>
  (check) => {
    const published = expectedNumber(check);
    const ours = turned(parameter, num(check, "value"), "mg/L as CaCO3", "mg/L");
    return [{ published, ours, tolerance: halfWidth(check, published), unit }];
  };

const hydrogenCarbonate: Handler = (check) => {
  const wanted = check.expected as Record<string, number>;
  const start = check.input["HCO3_mg_per_L"];
  const pairs: Pair[] = [];
  const put = (key: string, ours: number, unit: string): void => {
    const published = wanted[key];
    if (published !== undefined)
      pairs.push({ label: key, published, ours, tolerance: halfWidth(check, published), unit });
  };
  if (typeof start === "number") {
    put(
      "alkalinity_mg_per_L_CaCO3",
      turned("alkalinity", start, "mg/L as HCO3", "mg/L as CaCO3"),
      "mg/L as CaCO3",
    );
    put("meq_per_L", turned("alkalinity", start, "mg/L as HCO3", "meq/L"), "meq/L");
  } else {
    const alkalinity = num(check, "alkalinity_mg_per_L_CaCO3");
    put("HCO3_mg_per_L", turned("alkalinity", alkalinity, "mg/L as CaCO3", "mg/L as HCO3"), "mg/L");
    put("meq_per_L", turned("alkalinity", alkalinity, "mg/L as CaCO3", "meq/L"), "meq/L");
  }
  return pairs;
};

const calciumWaters: Handler = (check) => {
  const wanted = check.expected as Record<string, readonly number[]>;
  return list<number>(check.input["Ca_mmol_per_L"]).flatMap((value, i): Pair[] => {
    const mass = wanted["Ca_mg_per_L"]![i]!;
    const hardness = wanted["hardness_mg_per_L_CaCO3"]![i]!;
    return [
      {
        published: mass,
        ours: turned("calcium", value, "mmol/L", "mg/L"),
        tolerance: halfWidth(check, mass),
        unit: "mg/L",
      },
      {
        published: hardness,
        ours: turned("hardness", value, "mmol/L", "mg/L as CaCO3"),
        tolerance: halfWidth(check, hardness),
        unit: "mg/L as CaCO3",
      },
    ];
  });
};

/** Checks of units, by id. */
export const UNIT_HANDLERS: Readonly<Record<string, Handler>> = {
  ...Object.fromEntries(
    [
      "dh-to-ppm",
      "fh-to-ppm",
      "gpg-to-ppm",
      "mmol-to-ppm",
      "meq-to-ppm",
      "meq-to-dh",
      "342-to-dh",
      "342-to-fh",
    ]
      .concat(["342-to-clark", "342-to-mmol", "342-to-meq"])
      .map((name) => [`unit-${name}`, conversion("hardness")]),
  ),
  "unit-round-trip": roundTrips,
  "unit-ec-mSm": conversion("conductivity"),
  "unit-ec-dSm": conversion("conductivity"),
  "unit-ec-umho": conversion("conductivity"),
  "unit-ueq-to-meq": conversion("calcium"),
  "unit-f-to-c": fahrenheit,
  "unit-no3n": conversion("nitrate"),
  "unit-usgs-no3": conversion("nitrate"),
  "unit-nh4n": conversion("ammonium"),
  "unit-so4s": conversion("sulfate"),
  "unit-caco3-to-ca": alkalinityToIon("mg/L Ca", "calcium"),
  "unit-caco3-to-mg": alkalinityToIon("mg/L Mg", "magnesium"),
  "unit-caco3-to-hco3": alkalinityToIon("mg/L HCO3", "bicarbonate"),
  "unit-ppm-trap": ppmTrap,
  "unit-meq-needs-charge": needsCharge,
  "ntu-fnu": conversion("turbidity"),
  "fau-not-ntu": fauRefused,
  ...Object.fromEntries(
    ["030", "031", "032", "033", "035", "036", "037", "038", "057"].map((n) => [`TC${n}`, hardnessTable]),
  ),
  TC045: calciumWaters,
  TC047: hydrogenCarbonate,
  TC048: hydrogenCarbonate,
};
