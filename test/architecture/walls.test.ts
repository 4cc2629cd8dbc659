import { readdirSync } from "node:fs";
import { join } from "node:path";
import { fileURLToPath } from "node:url";
import { ESLint } from "eslint";
import ts from "typescript";
import { describe, expect, it } from "vitest";
import { layerNames, layers } from "../../scripts/layers.mjs";

const root = fileURLToPath(new URL("../..", import.meta.url));
const boundary = "boundaries/dependencies";
const indexOnly = "no-restricted-imports";

/** Lints a snippet as if it stood at a path; type-aware rules are left out because the file does not exist. */
const eslint = new ESLint({
  cwd: root,
  overrideConfig: [
    {
      files: ["**/*.{ts,tsx}"],
      languageOptions: { parserOptions: { projectService: false, project: null } },
      rules: Object.fromEntries(
        [
          "await-thenable",
          "no-base-to-string",
          "no-floating-promises",
          "no-misused-promises",
          "no-unsafe-argument",
          "no-unsafe-assignment",
          "no-unsafe-call",
          "no-unsafe-member-access",
          "no-unsafe-return",
          "only-throw-error",
          "require-array-sort-compare",
          "switch-exhaustiveness-check",
        ].map((rule) => [`@typescript-eslint/${rule}`, "off"]),
      ),
    },
  ],
});

async function rulesBroken(path: string, code: string): Promise<string[]> {
  const [result] = await eslint.lintText(`${code}\n`, { filePath: join(root, path) });
  const fatal = result?.messages.find((message) => message.fatal);
  if (fatal) throw new Error(fatal.message);
  return (result?.messages ?? [])
    .filter((message) => message.severity === 2)
    .map((message) => message.ruleId ?? "");
}

/** The first error of the kernel's type check when a snippet is added to it, or none. */
function kernelTypeErrors(code: string): string[] {
  const configPath = join(root, "tsconfig.kernel.json");
  const config = ts.parseJsonConfigFileContent(
    ts.readConfigFile(configPath, (path) => ts.sys.readFile(path)).config,
    ts.sys,
    root,
  );
  const snippet = join(root, "src", "units", "snippet-in-memory.ts");
  const host = ts.createCompilerHost(config.options);
  const { getSourceFile, fileExists, readFile } = host;
  host.fileExists = (path) => path === snippet || fileExists(path);
  host.readFile = (path) => (path === snippet ? code : readFile(path));
  host.getSourceFile = (path, languageVersion, onError) =>
    path === snippet
      ? ts.createSourceFile(path, code, languageVersion)
      : getSourceFile(path, languageVersion, onError);
  const program = ts.createProgram([snippet], config.options, host);
  return program
    .getSemanticDiagnostics(program.getSourceFile(snippet))
    .map((diagnostic) => ts.flattenDiagnosticMessageText(diagnostic.messageText, "\n"));
}

describe("wall 1: a layer imports only the layers below it", () => {
  it.each([
    ["src/chem/x.ts", `export { planJob } from "../agronomy/index.ts";`],
    ["src/chem/x.ts", `export const f = () => import("../agronomy/index.ts");`],
    ["src/chem/x.ts", `export type T = typeof import("../agronomy/index.ts");`],
    ["src/chem/deeper/x.ts", `import type { Tank } from "../../agronomy/index.ts"; export type T = Tank;`],
    ["src/chem/x.test.ts", `export * from "../agronomy/index.ts";`],
    ["src/units/x.ts", `export * from "../numerics/index.ts";`],
    ["src/numerics/x.ts", `export * from "../../data/sources.json";`],
    ["src/water/x.ts", `import { readFileSync } from "node:fs"; export const f = readFileSync;`],
    ["src/agronomy/x.ts", `import { parse } from "yaml"; export const f = parse;`],
    ["src/report/x.ts", `import { createElement } from "react"; export const f = createElement;`],
    ["src/web/x.ts", `export * from "../server/index.ts";`],
    ["src/server/x.ts", `export * from "../cli/index.ts";`],
    ["src/chem/x.ts", `export * from "./no-such-file.ts";`],
  ])("refuses in %s: %s", async (path, code) => {
    expect(await rulesBroken(path, code)).toContain(boundary);
  });

  it.each([
    ["src/agronomy/x.ts", `export * from "../chem/index.ts";`],
    ["src/chem/x.test.ts", `import { expect } from "vitest"; export const f = expect;`],
    ["src/cli/x.ts", `import { readFileSync } from "node:fs"; export const f = readFileSync;`],
  ])("allows in %s: %s", async (path, code) => {
    expect(await rulesBroken(path, code)).toEqual([]);
  });

  it("refuses a source file that belongs to no layer", async () => {
    expect(await rulesBroken("src/helpers/x.ts", "export const one = 1;")).toContain(
      "boundaries/no-unknown-files",
    );
  });

  it("has every folder of src in the table of layers, and no more", () => {
    const folders = readdirSync(join(root, "src"), { withFileTypes: true });
    expect(folders.filter((entry) => !entry.isDirectory())).toEqual([]);
    const missing = folders.map((entry) => entry.name).filter((name) => !layerNames.includes(name));
    expect(missing).toEqual([]);
  });

  it("has no circle among the layers", () => {
    const placed = new Set<string>();
    for (const name of layerNames) {
      expect(layers[name]?.imports.filter((other) => !placed.has(other))).toEqual([]);
      placed.add(name);
    }
  });
});

describe("wall 2: another layer is imported only through its index.ts", () => {
  it.each([
    ["src/agronomy/x.ts", `export * from "../chem/system.ts";`],
    ["src/agronomy/deeper/x.ts", `export * from "../../chem/system.ts";`],
    ["src/web/a/b/x.ts", `export * from "../../../chem/system.ts";`],
    [
      "src/cli/x.ts",
      `import type { SystemDefinition } from "../chem/system.ts"; export type T = SystemDefinition;`,
    ],
  ])("refuses in %s: %s", async (path, code) => {
    const broken = await rulesBroken(path, code);
    expect(broken).toContain(indexOnly);
    expect(broken).toContain(boundary);
  });

  it("refuses a way round by a longer path", async () => {
    expect(await rulesBroken("src/agronomy/x.ts", `export * from "../../src/chem/system.ts";`)).toContain(
      boundary,
    );
  });

  it("refuses a relative import without its file extension", async () => {
    expect(await rulesBroken("src/chem/x.ts", `export * from "./system";`)).toContain(indexOnly);
  });
});

describe("wall 3: the layers below the shells know no browser, no Node and no clock", () => {
  it.each([
    [`export const f = () => fetch("https://example.org");`, "fetch"],
    [`export const f = () => document.title;`, "document"],
    [`export const f = () => process.env;`, "process"],
    [`export const f = () => console.log("x");`, "console"],
    [`import { readFileSync } from "node:fs"; export const f = readFileSync;`, "node:fs"],
  ])("does not compile: %s", (code, name) => {
    const errors = kernelTypeErrors(code);
    expect(errors).toHaveLength(1);
    expect(errors[0]).toContain(name);
  });

  it("compiles plain code, so that the errors above are not errors of the check", () => {
    expect(kernelTypeErrors(`export const f = (x: number): number => Math.log10(x);`)).toEqual([]);
  });

  it.each([
    [`export const f = () => fetch("https://example.org");`, "no-restricted-globals"],
    [`export const f = () => console.log("x");`, "no-console"],
    [`export const f = () => Math.random();`, "no-restricted-properties"],
    [`export const f = () => Date.now();`, "no-restricted-properties"],
    [`export const f = () => new Date();`, "no-restricted-syntax"],
    [`export default 1;`, "no-restricted-syntax"],
  ])("does not pass the lint: %s", async (code, rule) => {
    expect(await rulesBroken("src/chem/x.ts", code)).toContain(rule);
  });
});
