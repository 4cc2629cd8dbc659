import { readFileSync, readdirSync } from "node:fs";
import { Ajv2020 } from "ajv/dist/2020.js";
import { describe, expect, it } from "vitest";
import { parse } from "yaml";
import {
  builtInFlasks,
  builtInTrade,
  designDemo,
  flaskScript,
  isDesign,
  readDemo,
  runDemo,
} from "../../src/agronomy/index.ts";
import type { Demo, FlaskShow } from "../../src/agronomy/index.ts";
import { builtInThermo } from "../../src/chem/index.ts";
import type { CliIo } from "../../src/cli/io.ts";
import { runCli } from "../../src/cli/run.ts";
import { flasksHtml, flasksJson } from "../../src/report/index.ts";

const folder = new URL("../../", import.meta.url);
const text = (path: string): string => readFileSync(new URL(path, folder), "utf8");
const ajv = new Ajv2020({ allErrors: true, strict: true, allowUnionTypes: true });
const schema = (name: string) => ajv.compile(JSON.parse(text(`schemas/${name}.schema.json`)) as object);
const fitsDemo = schema("demo");
const fitsFlasks = schema("flasks");
const context = { thermo: builtInThermo(), trade: builtInTrade(), flasks: builtInFlasks() };
const demos = readdirSync(new URL("examples/demos/", folder)).filter((name) => name.endsWith(".yaml"));

interface Run {
  readonly code: number;
  readonly out: string;
  readonly talk: string;
  readonly files: ReadonlyMap<string, string>;
}

async function flasks(content: string, ...options: readonly string[]): Promise<Run> {
  let out = "";
  let talk = "";
  const files = new Map<string, string>();
  const bytes = new TextEncoder().encode(content);
  const io: CliIo = {
    stdout: (piece) => void (out += piece),
    stderr: (piece) => void (talk += piece),
    readStdin: () => Promise.reject(new Error("not part of this command")),
    readFile: (_path, most) => Promise.resolve({ bytes: bytes.subarray(0, most), more: bytes.length > most }),
    writeFile: (path, piece) => {
      files.set(path, String(piece));
      return Promise.resolve();
    },
    today: () => "2026-01-01",
    findPrinter: () => null,
    serve: () => Promise.reject(new Error("not part of this command")),
  };
  const code = await runCli(["flasks", "demo.yaml", ...options], io);
  return { code, out, talk, files };
}

function demoOf(name: string): Demo {
  const document: unknown = parse(text(`examples/demos/${name}`));
  if (isDesign(document)) {
    const found = designDemo(document, context);
    if (!found.ok) throw new Error(JSON.stringify(found.issues));
    return found.value.demo;
  }
  const read = readDemo(document, context);
  if (!read.ok) throw new Error(JSON.stringify(read.issues));
  return read.value;
}

describe("ready demonstrations", () => {
  it("show every indicator of the data", () => {
    const all = demos.map((name) => text(`examples/demos/${name}`)).join("\n");
    for (const { reagents } of [context.flasks]) {
      const used = new Set(reagents.filter(({ name }) => all.includes(name)).map((one) => one.indicator));
      for (const { id } of context.flasks.indicators) expect([...used], id).toContain(id);
    }
  });

  it.each(demos)("%s fits its schema, runs, and gives what the other schema says", (name) => {
    const document: unknown = parse(text(`examples/demos/${name}`));
    expect(fitsDemo(document), JSON.stringify(fitsDemo.errors)).toBe(true);
    const run = runDemo(demoOf(name), context, { draws: 8 });
    expect(run.issues).toEqual([]);
    if (!run.ok) return;
    const given: unknown = JSON.parse(JSON.stringify(flasksJson(run.value, null, null)));
    expect(fitsFlasks(given), JSON.stringify(fitsFlasks.errors)).toBe(true);
  });

  it.each(demos)("%s has sentences short enough to say", (name) => {
    for (const { steps } of demoOf(name).flasks) {
      for (const { say } of steps) expect((say ?? "").split(" ").length).toBeLessThanOrEqual(20);
    }
  });
});

describe("hardstand flasks", () => {
  // The form that checks from outside rely on.
  const contract = `hardstand-flasks: 1
path: 6 cm
flasks:
  - name: conditioner first
    start: {water: deionised, volume: 100 mL}
    steps:
      - {add: hydrochloric acid, as: 1 mol/L, amount: 2 mL}
      - {add: iron(III) chloride hexahydrate, as: 1 % w/v, amount: 1 mL}
      - {add: disodium EDTA dihydrate, amount: 0.03 g}
      - {add: sulfosalicylic acid dihydrate, as: 2 % w/v, amount: 1 mL}
  - name: nothing first
    start: {water: deionised, volume: 100 mL}
    steps:
      - {add: hydrochloric acid, as: 1 mol/L, amount: 2 mL}
      - {add: iron(III) chloride hexahydrate, as: 1 % w/v, amount: 1 mL}
      - {add: sulfosalicylic acid dihydrate, as: 2 % w/v, amount: 1 mL}
`;

  it("--json gives every flask after every step and every pair", async () => {
    const { code, out, talk } = await flasks(contract, "--json");
    expect([code, talk]).toEqual([0, ""]);
    const show = JSON.parse(out) as FlaskShow;
    expect(fitsFlasks(show), JSON.stringify(fitsFlasks.errors)).toBe(true);
    const [first, second] = show.flasks;
    expect(first?.steps.map(({ volume_mL }) => volume_mL)).toEqual([102, 103, 103, 104]);
    expect(first?.steps.at(-1)?.colour.L).toBeGreaterThan(97);
    expect(second?.steps.at(-1)?.colour.L).toBeLessThan(40);
    const [pair] = show.pairs;
    expect(pair!.low).toBeLessThanOrEqual(pair!.deltaE00);
    expect(pair!.high).toBeGreaterThanOrEqual(pair!.deltaE00);
    expect(pair!.low).toBeGreaterThan(30);
  });

  it("without an option says it in words", async () => {
    const { code, out } = await flasks(contract);
    expect(code).toBe(0);
    expect(out).toContain("nothing first > conditioner first");
    expect(out).toContain("estimates made for drawing");
  });

  it("--svg writes a drawing that says in words what it shows", async () => {
    const { code, files, talk } = await flasks(contract, "--svg", "flasks.svg");
    expect([code, talk]).toEqual([0, "Drawing written to flasks.svg.\n"]);
    const drawing = files.get("flasks.svg")!;
    expect(drawing).toMatch(/^<svg[\s\S]+<\/svg>\n$/);
    expect(drawing).toMatch(/<desc>conditioner first: .+; nothing first: dark violet-red<\/desc>/);
  });

  it("--html writes a script that stands alone", async () => {
    const { code, files } = await flasks(contract, "--html", "script.html");
    expect(code).toBe(0);
    const page = files.get("script.html")!;
    for (const heading of [
      "Beware",
      "To have",
      "Stocks to make at home",
      "Step by step",
      "If a flask is not as drawn",
    ])
      expect(page).toContain(heading);
    expect(page).not.toMatch(/<script|src=|href=|https?:\/\/(?!www\.w3\.org)/);
  });

  it.each([
    ["an unknown reagent", contract.replace("sulfosalicylic", "sulfosalycilic"), "flasks[0].steps[3].add"],
    [
      "another version",
      contract.replace("flasks: 1", "flasks: 3"),
      "Write “hardstand-flasks: 1” at the top.",
    ],
    ["no flasks", "hardstand-flasks: 1\n", "flasks: This key is needed."],
  ])("leaves with 2 for %s and says where", async (_, document, said) => {
    const { code, out, talk } = await flasks(document, "--json");
    expect([code, out]).toEqual([2, ""]);
    expect(talk).toContain(said);
  });

  it("compares colours seen with what was computed", async () => {
    const seen = `${contract}seen:\n  white: "#ffffff"\n  flasks: {nothing first: "#fdfdf5"}\n`;
    const { out } = await flasks(seen, "--json");
    const given = JSON.parse(out) as { check: { verdict: string } };
    expect(fitsFlasks(given), JSON.stringify(fitsFlasks.errors)).toBe(true);
    expect(given.check.verdict).toContain("Not as computed");
    expect((await flasks(seen)).out).toContain("Seen at the show");
  });

  it("finds amounts for bottles, and leaves with 3 when they cannot keep the difference", async () => {
    const asked = text("examples/demos/amounts-to-find.yaml");
    const found = await flasks(asked, "--json");
    expect(found.code).toBe(0);
    const given = JSON.parse(found.out) as { design: { reached: boolean } };
    expect(fitsFlasks(given), JSON.stringify(fitsFlasks.errors)).toBe(true);
    expect(given.design.reached).toBe(true);
    const tooMuch = await flasks(asked.replace("least difference: 15", "least difference: 60"));
    expect(tooMuch.code).toBe(3);
    expect(tooMuch.out).toContain("less than asked for");
  });

  it.each(["de", "fr", "es"] as const)("says nothing in English in %s", async (tag) => {
    // Words that none of the three languages shares.
    const english = /\b(?:the|and|of|with|is|are|from|held|first|by|to|water|look)\b/i;
    const seen = `${contract}seen:\n  white: "#ffffff"\n  flasks: {nothing first: "#fdfdf5"}\n`;
    const documents = [...demos.map((name) => text(`examples/demos/${name}`)), seen];
    for (const document of documents) {
      const { out, talk } = await flasks(document, "--language", tag);
      // Names of flasks in a file of one's own stay.
      const lines = out.replaceAll("conditioner first", "").split("\n");
      expect(lines.length, talk).toBeGreaterThan(10);
      expect(lines.filter((line) => english.test(line))).toEqual([]);
    }
    const { files } = await flasks(seen, "--html", "x.html", "--language", tag);
    expect(files.get("x.html")).toContain(`<html lang="${tag}">`);
    const drawn = await flasks(documents[0] ?? "", "--svg", "x.svg", "--language", tag);
    expect([...drawn.files.values()].filter((svg) => /lightness|violet-red/.test(svg))).toEqual([]);
    expect(drawn.files.size).toBe(1);
  });

  it("takes one form at a time", async () => {
    const { code, talk } = await flasks(contract, "--json", "--svg", "x.svg");
    expect(code).toBe(2);
    expect(talk).toContain("One form at a time");
  });

  it("leaves with 4 under --strict when a flask holds too much salt", async () => {
    const salty = contract.replace(
      "disodium EDTA dihydrate, amount: 0.03 g",
      "ammonium sulfate, amount: 10 g",
    );
    expect((await flasks(salty, "--json", "--strict")).code).toBe(4);
    expect((await flasks(contract, "--json", "--strict")).code).toBe(0);
  });
});

describe("the script", () => {
  const demo = demoOf("iron-held-and-freed.yaml");
  const run = runDemo(demo, context, { draws: 0 });
  if (!run.ok) throw new Error(JSON.stringify(run.issues));
  const made = flaskScript(demo, run.value, context);
  if (!made.ok) throw new Error(JSON.stringify(made.issues));
  const script = made.value;

  it("gives the masses of stocks that a balance can weigh", () => {
    const stock = (name: string) => script.bench.stocks.find((one) => one.substance.startsWith(name))!;
    expect(stock("iron(III) chloride").measure).toEqual({ value: 1, unit: "g" });
    expect(stock("iron(III) chloride").make_mL).toBe(100);
    expect(stock("iron(III) chloride").medium).toEqual({ substance: "hydrochloric acid", molPerL: 0.1 });
    // 25 mL of 1 mol/L from 37 % acid of 1.18 g/mL.
    expect(stock("hydrochloric acid").measure?.value).toBeCloseTo((0.025 * 36.458) / 0.37 / 1.18, 6);
    expect(stock("hydrochloric acid").measure?.unit).toBe("mL");
    expect(stock("glyphosate").measure).toBeNull();
  });

  it("says the cautions of what is on the table, and none of the filling of tanks", () => {
    const said = script.cautions.map((one) => one.text).join(" ");
    for (const word of ["Iron(III) chloride", "acid into water", "eye protection", "thimble", "local rules"])
      expect(said).toContain(word);
    expect(said).not.toMatch(/Thiocyanate|hose|filling tank/);
  });

  it("tells slips apart by what they do to the flasks", () => {
    const slip = (id: string) => script.slips.find((one) => one.id === id)!;
    const flask = (id: string, name: string) => slip(id).flasks.find((one) => one.flask.startsWith(name))!;
    expect(flask("metal-half", "a.").colour.L).toBeGreaterThan(run.value.flasks[0]!.steps.at(-1)!.colour.L);
    expect(flask("no-conditioner", "b.").deltaE00).toBeGreaterThan(30);
    expect(flask("no-acid", "c.").deltaE00).toBeGreaterThan(10);
  });

  it("puts the audience's own water beside the flasks and says what they do not show", () => {
    const { farm } = script;
    expect(farm?.hardness_mgPerL_asCaCO3).toBeGreaterThan(300);
    expect(farm?.programmes.filter(({ shown }) => shown).length).toBeGreaterThanOrEqual(3);
    expect(farm?.notShown.join(" ")).toMatch(/iron in acid.*calcium and magnesium near pH 5/);
    expect(flasksHtml(script)).toContain("From flask to farm");
  });

  it("escapes what a person wrote", () => {
    const wild = { ...script, show: { ...script.show, title: "<b>&</b>" } };
    expect(flasksHtml(wild)).toContain("&lt;b&gt;&amp;&lt;/b&gt;");
  });
});
