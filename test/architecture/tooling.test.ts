import { readFileSync } from "node:fs";
import ts from "typescript";
import { describe, expect, it } from "vitest";
import { inProject, nodeVersionProblem, root, typeChecks, version } from "../../scripts/project.mjs";
import { HARDSTAND_VERSION } from "../../src/agronomy/index.ts";

/** The files that a type check takes as its own, i.e. not merely because another file imports them. */
function filesChecked(config: string): string[] {
  const parsed = ts.parseJsonConfigFileContent(
    ts.readConfigFile(inProject(config), (path) => ts.sys.readFile(path)).config,
    ts.sys,
    root,
  );
  return parsed.fileNames;
}

describe("type checks", () => {
  const parts = typeChecks.map((part) => `tsconfig.${part}.json`);

  it("take in every source and test file, each with the types it may use", () => {
    const checked = new Set(parts.flatMap(filesChecked));
    const all = filesChecked("tsconfig.json");
    expect(all.length).toBeGreaterThan(100);
    expect(all.filter((file) => !checked.has(file))).toEqual([]);
  });

  it("give the layers below the shells neither a browser nor Node", () => {
    const { compilerOptions } = JSON.parse(readFileSync(inProject("tsconfig.kernel.json"), "utf8")) as {
      compilerOptions: { lib: string[]; types: string[] };
    };
    expect(compilerOptions).toEqual({ lib: ["ES2023"], types: [] });
  });
});

describe("packages", () => {
  it("the lock file names no host to download from", () => {
    const lock = readFileSync(inProject("package-lock.json"), "utf8");
    expect(lock).not.toMatch(/"resolved"|https?:\/\/registry/);
  });

  it("the version in a plan is that of the package", () => {
    expect(HARDSTAND_VERSION).toBe(version);
  });
});

describe("nodeVersionProblem", () => {
  it.each(["20.19.0", "20.20.2", "22.12.0", "24.0.0"])("accepts %s", (running) => {
    expect(nodeVersionProblem(running)).toBeNull();
  });
  it.each(["18.20.0", "20.18.3", "21.7.0", "22.11.0"])("refuses %s", (running) => {
    expect(nodeVersionProblem(running)).toContain(running);
  });
});
