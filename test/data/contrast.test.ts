import { readdirSync, readFileSync } from "node:fs";
import { describe, expect, test } from "vitest";
import { inProject } from "../../scripts/project.mjs";
import { linearOfHex } from "../../src/colour/index.ts";

/** Relative luminance [1] of "#rrggbb" or "#rgb". @source W3C (2023) WCAG 2.2, "relative luminance" */
function luminance(hex: string): number {
  const rgb = linearOfHex(hex);
  if (rgb === null) throw new Error(`${hex} is no colour`);
  return 0.2126 * rgb[0] + 0.7152 * rgb[1] + 0.0722 * rgb[2];
}

/** Contrast ratio [1] of two colours, 1 to 21. @source W3C (2023) WCAG 2.2, "contrast ratio" */
function contrast(one: string, other: string): number {
  const [dark = 0, light = 0] = [luminance(one), luminance(other)].sort((a, b) => a - b);
  return (light + 0.05) / (dark + 0.05);
}

/** One that stands on another. */
type Pair = readonly [front: string, ground: string];

const METALS = ["calcium", "magnesium", "iron", "manganese", "other"] as const;

/** Each token that colours text, on each ground it stands on. */
const TEXTS: readonly Pair[] = [
  ["ink", "paper"],
  ["ink", "field"],
  ["quiet", "paper"],
  ["quiet", "field"],
  ["on-warn", "warn"],
  // On buttons, the way past the head of the page, and the point picked in the picture of costs.
  ["paper", "ink"],
];

/** Each token that colours something drawn that has to be seen, on each ground it stands on. */
const DRAWN: readonly Pair[] = [
  // Edges of boxes, buttons and marks, and the lines of the scales.
  ["edge", "paper"],
  ["edge", "field"],
  ["on-warn", "warn"],
  ["wrong", "paper"],
  ["wrong", "field"],
  // The ring around what has the keyboard; the bar of the free share; the hatch of what is unsure.
  ["free", "paper"],
  ["free", "field"],
  // Curves, dots, the aim, outlines of bars; the dot in a button that is chosen.
  ["ink", "paper"],
  ["ink", "field"],
  ["paper", "ink"],
  ["field", "ink"],
  // The halo between a bar and the line across it.
  ["paper", "free"],
  ...METALS.flatMap((metal): readonly Pair[] => [
    [metal, `${metal}-tint`],
    ["ink", `${metal}-tint`],
  ]),
];

/** Hairlines between rows that stand apart without them: decoration, of which WCAG 2.2 (1.4.11) asks nothing. */
const PARTING: readonly Pair[] = [["line", "paper"]];

/** What WCAG 2.2 asks: 1.4.3 and 1.4.11; in bright light 1.4.6 for text, and 1.4.3 for what is drawn. */
const USUAL = { texts: 4.5, drawn: 3, parting: 1 } as const;
const STRICT = { texts: 7, drawn: 4.5, parting: 4.5 } as const;

interface Rule {
  /** Conditions of the media queries around it. */
  readonly media: readonly string[];
  readonly selector: string;
  readonly declarations: readonly (readonly [property: string, value: string])[];
}

/** The rules of a style sheet in which at-rules hold rules and nothing else is nested. */
function rulesOf(css: string): readonly Rule[] {
  const rules: Rule[] = [];
  const around: string[] = [];
  const pieces = css.replaceAll(/\/\*.*?\*\//gs, "").matchAll(/([^{}]*)([{}])/g);
  for (const [, text = "", brace] of pieces) {
    if (brace === "{") around.push(text.replaceAll(/\s+/g, " ").trim());
    else {
      const selector = around.pop() ?? "";
      const declarations = text
        .split(";")
        .map((one) => one.split(/:(.*)/s).map((part) => part.replaceAll(/\s+/g, " ").trim()))
        .flatMap(([name = "", value = ""]) => (value === "" ? [] : [[name, value] as const]));
      if (declarations.length > 0) rules.push({ media: [...around], selector, declarations });
    }
  }
  return rules;
}

/** What a device asks for, and whether the person chose bright light. */
interface Mode {
  readonly dark: boolean;
  readonly more: boolean;
  readonly forced: boolean;
  readonly outdoor: boolean;
}

const BOTH = [false, true];
const MODES: readonly Mode[] = BOTH.flatMap((dark) =>
  BOTH.flatMap((more) => BOTH.flatMap((forced) => BOTH.map((outdoor) => ({ dark, more, forced, outdoor })))),
);

const nameOf = ({ dark, more, forced, outdoor }: Mode): string =>
  [outdoor && "bright light", dark ? "dark" : "light", more && "more contrast", forced && "forced colours"]
    .filter((word) => word !== false)
    .join(", ");

/** The places where tokens are set, of one weight to the browser: the last that holds in a mode wins. */
const PLACES: Readonly<Record<string, (mode: Mode) => boolean>> = {
  ":root": () => true,
  ":root:where(:not(.outdoor))": ({ outdoor }) => !outdoor,
  ".outdoor": ({ outdoor }) => outdoor,
};
const CONDITIONS: Readonly<Record<string, (mode: Mode) => boolean>> = {
  "@media screen and (prefers-color-scheme: dark)": ({ dark }) => dark,
  "@media (prefers-contrast: more)": ({ more }) => more,
  "@media screen and (prefers-contrast: more) and (prefers-color-scheme: dark)": ({ dark, more }) =>
    dark && more,
  "@media (forced-colors: active)": ({ forced }) => forced,
};

const COLOUR = /^(?:#[0-9a-f]{3,8}|[A-Z][A-Za-z]+)$/;

/** The colours by their tokens' names, as they are in a mode. */
function tokensIn(rules: readonly Rule[], mode: Mode): Readonly<Record<string, string>> {
  const tokens: Record<string, string> = {};
  for (const { media, selector, declarations } of rules)
    for (const [property, value] of declarations) {
      if (!property.startsWith("--") || !COLOUR.test(value)) continue;
      const holds = [PLACES[selector], ...media.map((one) => CONDITIONS[one])];
      if (holds.includes(undefined))
        throw new Error(`${property} is set in ${[...media, selector].join(" ")}`);
      if (holds.every((one) => one?.(mode))) tokens[property.slice(2)] = value;
    }
  return tokens;
}

const KINDS = { texts: TEXTS, drawn: DRAWN, parting: PARTING } as const;
const ALL = Object.values(KINDS).flat();

/** What is too near its ground in a mode. */
function tooNear(rules: readonly Rule[], mode: Mode): readonly string[] {
  const tokens = tokensIn(rules, mode);
  const least = mode.more || mode.outdoor ? STRICT : USUAL;
  return (["texts", "drawn", "parting"] as const).flatMap((kind) =>
    KINDS[kind].flatMap(([front, ground]) => {
      const [one = "none", other = "none"] = [tokens[front], tokens[ground]];
      if (mode.forced)
        // The two that a system promises to keep apart.
        return [one, other].sort().join() === "Canvas,CanvasText"
          ? []
          : [`${front} on ${ground}: ${one}, ${other}`];
      const ratio = contrast(one, other);
      return ratio >= least[kind]
        ? []
        : [`${front} on ${ground}: ${ratio.toFixed(2)} of ${String(least[kind])}`];
    }),
  );
}

/** What the properties that colour ask of a token used in them. */
const USES: readonly (readonly [RegExp, string, readonly string[]])[] = [
  [/^color$/, "text", TEXTS.map(([front]) => front)],
  [/^background(?:-color)?$/, "ground", [...TEXTS, ...DRAWN].flatMap((pair) => pair)],
  [/^(?:border|outline|stroke|accent-color)/, "line", [...DRAWN, ...PARTING].map(([front]) => front)],
  [/^fill$/, "fill", [...TEXTS, ...DRAWN].flatMap((pair) => pair)],
];

/** Tokens and colours used as what they are not checked for. */
function unchecked(rules: readonly Rule[]): readonly string[] {
  const known = new Set(ALL.flat());
  const set = MODES.flatMap((mode) => Object.keys(tokensIn(rules, mode)));
  const inNoPair = [...new Set(set)]
    .filter((name) => !known.has(name))
    .map((name) => `${name} is in no pair`);
  const used = rules.flatMap(({ selector, declarations }) =>
    declarations.flatMap(([property, value]) => {
      const use = USES.find(([properties]) => properties.test(property));
      if (use === undefined) return [];
      const [, kind, names] = use;
      return [...value.matchAll(/var\(--([\w-]+)\)/g)]
        .map(([, name = ""]) => name)
        .filter((name) => set.includes(name) && !names.includes(name))
        .map((name) => `${name} is no ${kind} in any pair, but is in ${selector}`);
    }),
  );
  const byHand = rules.flatMap(({ selector, declarations }) =>
    declarations
      .filter(
        ([property, value]) => !property.startsWith("--") && /#[0-9a-f]{3}|\b(?:rgb|hsl)a?\(/i.test(value),
      )
      // Paper is white and its print black, whatever the screen is.
      .filter(([, value]) => !/#(?:000|fff)\b/.test(value))
      .map(([property, value]) => `${selector} has ${property}: ${value}, which is no token`),
  );
  return [...inNoPair, ...used, ...byHand];
}

const STYLES = readdirSync(inProject("src", "web"), { recursive: true, encoding: "utf8" })
  .filter((name) => name.endsWith(".css"))
  // The tokens' own sheet comes first.
  .sort((one, other) => Number(other === "styles.css") - Number(one === "styles.css"))
  .map((name) => readFileSync(inProject("src", "web", name), "utf8"))
  .join("\n");

describe("the colours of the page", () => {
  test("the ratio is the published one", () => {
    expect(contrast("#fff", "#000")).toBeCloseTo(21, 10);
    // A colour that is just too pale on white. @source MacDonald (2016) WCAG reaches consensus on threshold colours
    expect(contrast("#777777", "#fff")).toBeCloseTo(4.48, 2);
  });

  test.each(MODES.map((mode) => [nameOf(mode), mode] as const))("stand apart: %s", (_name, mode) => {
    expect(tooNear(rulesOf(STYLES), mode)).toEqual([]);
  });

  test("none is left out", () => {
    expect(unchecked(rulesOf(STYLES))).toEqual([]);
  });

  test("bright light is the same whatever the device asks for, black on white", () => {
    const rules = rulesOf(STYLES);
    const outdoors = MODES.filter(({ outdoor, forced }) => outdoor && !forced);
    const [first, ...others] = outdoors.map((mode) => tokensIn(rules, mode));
    for (const other of others) expect(other).toEqual(first);
    expect(first).toMatchObject({
      paper: "#fff",
      field: "#fff",
      ink: "#000",
      quiet: "#000",
      line: "#000",
      edge: "#000",
    });
  });

  const lightOnes = tokensIn(rulesOf(STYLES), { dark: false, more: false, forced: false, outdoor: false });
  const fronts = [...new Set([...TEXTS, ...DRAWN].map(([front]) => front))].filter(
    (name) => name !== "field",
  );

  test.each(fronts)("%s given the colour of its ground is found", (name) => {
    const ground = [...TEXTS, ...DRAWN].find(([front]) => front === name)?.[1] ?? "";
    const paler = STYLES.replace(`--${name}: ${lightOnes[name]!};`, `--${name}: ${lightOnes[ground]!};`);
    expect(tooNear(rulesOf(paler), MODES[0]!).join()).toContain(`${name} on ${ground}`);
  });

  test("a token more, and a colour by hand, are found", () => {
    expect(
      unchecked(rulesOf(`${STYLES} :root { --new: #abcdef; } p { color: #999; background: var(--edge) }`)),
    ).toEqual(["new is in no pair", "p has color: #999, which is no token"]);
    expect(unchecked(rulesOf(`${STYLES} p { color: var(--line) }`))).toHaveLength(1);
  });
});

/** What is printed, by hand: text on its ground, and what is drawn that has to be seen. */
const ON_PAPER: Readonly<Record<keyof typeof USUAL, readonly Pair[]>> = {
  texts: [
    ["#000", "#fff"],
    ["#14202b", "#fff"],
    ["#111827", "#fff"],
    ["#111827", "#ffffff"],
    ["#374151", "#fff"],
  ],
  drawn: [
    ["#000", "#fff"],
    ["#14202b", "#fff"],
    // The outline of a flask and of a square of its colour.
    ["#374151", "#ffffff"],
    ["#4b5563", "#fff"],
  ],
  parting: [
    ["#9ca3af", "#fff"],
    ["#e5e7eb", "#fff"],
    // The surface of what is in a flask, which the colour ends at.
    ["#6b7280", "#ffffff"],
    // Flecks in a cloud, white or of rust: the words under the flask say both.
    ["#4b3a24", "#f3f1ea"],
    ["#4b3a24", "#b5671f"],
  ],
};

describe("the colours of what is printed", () => {
  // The messages alone name colours that are not drawn.
  const files = readdirSync(inProject("src", "report")).filter((name) => !/\.test\.ts$|^wording/.test(name));

  test.each(["texts", "drawn"] as const)("%s stand apart", (kind) => {
    for (const [front, ground] of ON_PAPER[kind])
      expect(contrast(front, ground), `${front} on ${ground}`).toBeGreaterThanOrEqual(USUAL[kind]);
  });

  test("none is left out, and none is listed that is not there", () => {
    const used = files.flatMap((name) =>
      [
        ...readFileSync(inProject("src", "report", name), "utf8").matchAll(/(?<![&\w])#[0-9a-f]{3,8}\b/gi),
      ].map(([hex]) => hex),
    );
    const known = Object.values(ON_PAPER).flat(2);
    expect([...new Set(used)].sort()).toEqual([...new Set(known)].sort());
  });
});
