import { expect, test } from "vitest";
import { JOB_VERSION, USUAL_CONFIDENCE, USUAL_FREE_SHARE, readJob } from "./job.ts";
import { builtInTrade } from "./trade-data.ts";

const trade = builtInTrade();
const read = (document: unknown) => readJob(document, { trade });

type Block = Record<string, unknown>;

/** A job that reads without a word, to be changed in one place. */
function sound(changes: Block = {}): Block {
  return {
    hardstand: 1,
    water: {
      source: "Top bore",
      sampled: "2026-03-02",
      method: "laboratory",
      readings: [
        { parameter: "calcium", value: 92, unit: "mg/L" },
        { parameter: "pH", value: 7.6 },
      ],
    },
    spray: { volume: "200 L/ha", tank: "3000 L", area: "38 ha" },
    mix: [product()],
    ...changes,
  };
}

function product(changes: Block = {}): Block {
  return {
    active: "glyphosate",
    form: "isopropylammonium",
    strength: "360 g/L ae",
    rate: "2 L/ha",
    formulation: "SL",
    ...changes,
  };
}

const found = (document: unknown): string[] =>
  read(document).issues.map((issue) => `${issue.code} ${issue.path}`);
const errors = (document: unknown): string[] =>
  read(document)
    .issues.filter((issue) => issue.severity === "error")
    .map((issue) => `${issue.code} ${issue.path}`);

test("a sound job reads without a word, in internal units", () => {
  const job = read(
    sound({
      title: "Fallow",
      spray: {
        volume: "10 US gal/ac",
        "least volume": "5 gal/ac",
        tank: "0.8 m3",
        area: "94 ac",
        temperature: "54 °F",
        "holding time": "90 min",
        jar: "500 mL",
      },
      site: { "volatility rules": true },
      aim: { "free share": "95 %", confidence: 0.8, where: "in the tank" },
    }),
  );
  expect(job.issues).toEqual([]);
  if (!job.ok) throw new Error("not read");
  const { spray, mix, aim, site, title, conditioners } = job.value;
  expect(title).toBe("Fallow");
  expect(spray.volume_LPerHa).toBeCloseTo(93.54, 2);
  expect(spray.leastVolume_LPerHa).toBeCloseTo(46.77, 2);
  expect(spray.tank_L).toBeCloseTo(800, 9);
  expect(spray.area_ha).toBeCloseTo(38.04, 2);
  expect(spray.temperature_C).toBeCloseTo(12.22, 2);
  expect(spray.holdingTime_h).toBeCloseTo(1.5, 12);
  expect(spray.jar_L).toBeCloseTo(0.5, 12);
  expect(mix).toEqual([
    {
      active: "glyphosate",
      form: "isopropylammonium",
      own: null,
      strength: { value: 360, per: "L", basis: "acid equivalent" },
      rate: { value: 2, per: "L" },
      formulation: "SL",
      name: null,
      price: null,
      mostRate: null,
      path: "mix[0]",
    },
  ]);
  expect(aim).toEqual({ freeShare: 0.95, confidence: 0.8, where: "in the tank" });
  expect(site).toEqual({
    volatilityRules: true,
    waterTreatments: null,
    metals: null,
    airTemperature_C: null,
  });
  expect(conditioners).toBeNull();
});

test("what is left out is not known, never zero and never no", () => {
  const job = read(sound());
  if (!job.ok) throw new Error("not read");
  expect(job.value.spray).toMatchObject({
    leastVolume_LPerHa: null,
    temperature_C: null,
    humidity: null,
    holdingTime_h: null,
    jar_L: 1,
    seasonArea_ha: null,
    deadVolume_L: null,
    hopper_L: null,
    output_LPerMin: null,
  });
  expect(job.value.otherWaters).toEqual([]);
  expect(job.value.site).toEqual({
    volatilityRules: null,
    waterTreatments: null,
    metals: null,
    airTemperature_C: null,
  });
  expect(job.value.partners).toBeNull();
  expect(job.value.aim).toEqual({
    freeShare: USUAL_FREE_SHARE,
    confidence: USUAL_CONFIDENCE,
    where: "on the leaf",
  });
  const none = read(sound({ conditioners: [] }));
  expect(none.ok && none.value.conditioners).toEqual([]);
});

test("names are found by synonym, and a form names the physical form sold", () => {
  const job = read(
    sound({
      mix: [product({ active: "Glyphosate", form: "IPA salt" })],
      conditioners: [
        { chemistry: "AMS", price: "0.55 /kg", "least dose": "1 kg/100 L", "most dose": "2 % w/v" },
        {
          chemistry: "ammonium sulphate",
          form: "liquid, 40 % w/w",
          price: "0.40 /L",
          "least dose": "2 L/100 L",
        },
      ],
    }),
  );
  if (!job.ok) throw new Error(JSON.stringify(job.issues));
  expect(job.value.mix[0]).toMatchObject({ active: "glyphosate", form: "isopropylammonium" });
  const [crystals, liquid] = job.value.conditioners ?? [];
  expect(crystals).toMatchObject({
    chemistry: "ammonium-sulfate",
    form: "ammonium-sulfate-crystals",
    price: { value: 0.55, per: "kg" },
  });
  expect(crystals?.leastDose_gPerL).toBeCloseTo(10, 9);
  expect(crystals?.mostDose_gPerL).toBeCloseTo(20, 9);
  expect(liquid?.form).toBe("ammonium-sulfate-liquid-40");
  // 20 mL of a liquid of 1.2277 g/mL in a litre.
  expect(liquid?.leastDose_gPerL).toBeCloseTo(24.554, 3);
});

test("the basis of a strength is taken from its text, else from the active, and that is said", () => {
  const basis = (changes: Block): unknown => {
    const job = read(sound({ mix: [product(changes)] }));
    return job.ok ? job.value.mix[0]?.strength.basis : job.issues;
  };
  expect(basis({ strength: "360 g/L" })).toBe("acid equivalent");
  expect(found(sound({ mix: [product({ strength: "360 g/L" })] }))).toEqual([
    "strength-basis-assumed mix[0].strength",
  ]);
  expect(basis({ strength: "480 g/L salt" })).toBe("salt");
  expect(basis({ active: "clethodim", form: undefined, strength: "240 g/L", formulation: "EC" })).toBe(
    "active",
  );
  expect(errors(sound({ mix: [product({ strength: "360 g/L ai" })] }))).toEqual([
    "strength-basis-differs mix[0].strength",
  ]);
  expect(errors(sound({ mix: [product({ strength: "480 g/L salt", form: undefined })] }))).toEqual([
    "strength-needs-form mix[0].strength",
  ]);
});

test("an active with one form gets it; one with several is warned about", () => {
  const job = read(
    sound({ mix: [product({ active: "glufosinate", form: undefined, strength: "200 g/L salt" })] }),
  );
  expect(job.ok && job.value.mix[0]?.form).toBe("ammonium");
  expect(found(sound({ mix: [product({ form: undefined })] }))).toEqual(["active-form-not-said mix[0].form"]);
});

test.each([
  ["no object", 7, ["object-expected "]],
  ["a list", [], ["object-expected "]],
  [
    "nothing in it",
    {},
    ["key-missing hardstand", "key-missing water", "key-missing spray", "key-missing mix"],
  ],
  ["another version", sound({ hardstand: 2 }), ["version-unknown hardstand"]],
  ["a version in quotes", sound({ hardstand: "1" }), ["version-unknown hardstand"]],
  ["an unknown key", sound({ sprays: {} }), ["key-unknown sprays"]],
  ["a title that is no text", sound({ title: 5 }), ["text-expected title"]],
  ["an empty title", sound({ title: " " }), ["text-empty title"]],
  ["no products", sound({ mix: [] }), ["list-empty mix"]],
  ["a product alone", sound({ mix: product() }), ["list-expected mix"]],
  ["a product that is a name", sound({ mix: ["glyphosate"] }), ["object-expected mix[0]"]],
  ["conditioners by name", sound({ conditioners: "all" }), ["list-expected conditioners"]],
  ["an unknown place", sound({ aim: { where: "in the drop" } }), ["choice-unknown aim.where"]],
  ["an aim above one", sound({ aim: { "free share": 95 } }), ["share-out-of-range aim.free share"]],
  [
    "yes in words",
    sound({ site: { "volatility rules": "yes" } }),
    ["yes-or-no-expected site.volatility rules"],
  ],
  ["an unknown active", sound({ mix: [product({ active: "glyfosate" })] }), ["active-unknown mix[0].active"]],
  ["an unknown salt", sound({ mix: [product({ form: "calcium" })] }), ["active-form-unknown mix[0].form"]],
  [
    "an unknown formulation",
    sound({ mix: [product({ formulation: "QX" })] }),
    ["formulation-unknown mix[0].formulation"],
  ],
  [
    "a dust",
    sound({ mix: [product({ formulation: "DP" })] }),
    ["formulation-not-for-water mix[0].formulation"],
  ],
  [
    "a rate by mass",
    sound({ mix: [product({ rate: "2 kg/ha" })] }),
    ["rate-does-not-fit-strength mix[0].rate"],
  ],
  [
    "a price by mass",
    sound({ mix: [product({ price: "8 /kg" })] }),
    ["price-does-not-fit-product mix[0].price"],
  ],
  [
    "an unknown conditioner",
    sound({ conditioners: [{ chemistry: "citrc acid" }] }),
    ["conditioner-unknown conditioners[0].chemistry"],
  ],
  [
    "a conditioner twice",
    sound({ conditioners: [{ chemistry: "AMS" }, { chemistry: "ammonium sulfate" }] }),
    ["conditioner-repeated conditioners[1]"],
  ],
  [
    "an unknown form of it",
    sound({ conditioners: [{ chemistry: "AMS", form: "tablets" }] }),
    ["conditioner-form-unknown conditioners[0].form"],
  ],
  [
    "a solid by the litre",
    sound({ conditioners: [{ chemistry: "AMS", price: "1 /L" }] }),
    ["price-does-not-fit-product conditioners[0].price"],
  ],
  [
    "a solid dosed in litres",
    sound({ conditioners: [{ chemistry: "AMS", "most dose": "2 L/100 L" }] }),
    ["dose-does-not-fit-form conditioners[0].most dose"],
  ],
  [
    "doses swapped",
    sound({ conditioners: [{ chemistry: "AMS", "least dose": "2 kg/100 L", "most dose": "1 kg/100 L" }] }),
    ["least-above-most conditioners[0].least dose"],
  ],
] as const)("refused with its path: %s", (_, document, expected) => {
  expect(errors(document)).toEqual(expected);
});

const spray = (changes: Block): Block =>
  sound({ spray: { volume: "200 L/ha", tank: "3000 L", area: "38 ha", ...changes } });

test.each([
  [{ volume: undefined }, "key-missing spray.volume"],
  [{ volume: 200 }, "unit-missing spray.volume"],
  [{ volume: "200 mg/L" }, "unit-wrong-kind spray.volume"],
  [{ volume: "200 L/hectolitre" }, "unit-unknown spray.volume"],
  [{ volume: "-200 L/ha" }, "number-negative spray.volume"],
  [{ volume: "0 L/ha" }, "number-not-positive spray.volume"],
  [{ volume: "1.250 L/ha" }, "number-ambiguous spray.volume"],
  [{ volume: "50000 L/ha" }, "value-out-of-range spray.volume"],
  [{ tank: "3000 L/ha" }, "unit-wrong-kind spray.tank"],
  [{ temperature: "75 °C" }, "value-out-of-range spray.temperature"],
  [{ humidity: "120 %" }, "share-out-of-range spray.humidity"],
  [{ humidity: "2 %" }, "value-out-of-range spray.humidity"],
  [{ "least volume": "300 L/ha" }, "least-volume-above-volume spray.least volume"],
  [{ "holding time": "3" }, "unit-missing spray.holding time"],
] as const)("the spray block refuses %j", (changes, expected) => {
  expect(errors(spray(changes))).toEqual([expected]);
});

test("an unlikely figure is a warning and does not stop the job", () => {
  const job = read(spray({ volume: "2 L/ha" }));
  expect(job.ok).toBe(true);
  expect(job.issues.map(({ code, severity }) => [code, severity])).toEqual([["value-unlikely", "warning"]]);
});

test("suggestions name what was most likely meant", () => {
  const hint = (document: unknown, path: string): string | undefined =>
    read(document).issues.find((issue) => issue.path === path)?.hint;
  expect(hint(sound({ mix: [product({ active: "glyfosate" })] }), "mix[0].active")).toContain("“glyphosate”");
  expect(hint(sound({ conditioners: [{ chemistry: "citrc acid" }] }), "conditioners[0].chemistry")).toContain(
    "“citric acid”",
  );
  expect(hint(spray({ holding_time: "3 h" }), "spray.holding_time")).toContain("“holding time”");
  expect(hint(spray({ Volume: "3 h" }), "spray.Volume")).toContain("“volume”");
  expect(hint(sound({ conditioner: [] }), "conditioner")).toContain("“conditioners”");
});

test("all problems come at once, each once, with a place, what was received and what was expected", () => {
  const all = read({
    hardstand: 3,
    watr: {},
    water: {
      readings: [
        { parameter: "calcium", value: -5, unit: "mg/L" },
        { parameter: "pH", value: 17 },
      ],
    },
    spray: { volume: 200, tank: "3000 kg", holdingtime: "3 h" },
    mix: [{ active: "glyfosate", strength: "360", rate: "2 L", formulation: "??", colour: "red" }],
    conditioners: [{ chemistry: "salt of the earth", price: "cheap" }],
    aim: { "free share": 2, where: "somewhere" },
    site: { volatility: true },
  });
  expect(all.ok).toBe(false);
  const places = all.issues.filter((issue) => issue.severity === "error").map((issue) => issue.path);
  expect([...places].sort()).toEqual(
    [
      "aim.free share",
      "aim.where",
      "conditioners[0].chemistry",
      "conditioners[0].price",
      "hardstand",
      "mix[0].active",
      "mix[0].colour",
      "mix[0].formulation",
      "mix[0].rate",
      "mix[0].strength",
      "site.volatility",
      "spray.area",
      "spray.holdingtime",
      "spray.tank",
      "spray.volume",
      "water.readings[0].value",
      "water.readings[1].value",
      "watr",
    ].sort(),
  );
  for (const issue of all.issues.filter((one) => one.severity === "error")) {
    expect(issue.received, issue.path).toBeDefined();
    expect(issue.expected, issue.path).toBeDefined();
  }
});

test("keys that every object has are no keys of a job", () => {
  const document = JSON.parse('{"hardstand": 1, "__proto__": {"water": {}}, "constructor": 1}') as unknown;
  expect(errors(document)).toContain("key-unknown __proto__");
  expect(errors(document)).toContain("key-unknown constructor");
  expect(errors(document)).toContain("key-missing water");
});

test("the version read is the one written about", () => {
  expect(JOB_VERSION).toBe(1);
});
