import { expect, test } from "vitest";
import { readArguments } from "./arguments.ts";

const message = (...argv: string[]): string => {
  const request = readArguments(argv);
  return request.kind === "wrong" ? request.message : "";
};

test("help wins wherever it stands, and nothing at all asks for it", () => {
  for (const argv of [
    [],
    ["-h"],
    ["--help"],
    ["plan", "-h"],
    ["plan", "job.yaml", "--json", "--help"],
    ["help"],
  ]) {
    expect(readArguments(argv), argv.join(" ")).toEqual({ kind: "help" });
  }
});

test("each command is understood", () => {
  expect(readArguments(["plan", "job.yaml"])).toEqual({
    kind: "plan",
    job: "job.yaml",
    form: { as: "text" },
    language: "en-GB",
    strict: false,
  });
  expect(readArguments(["plan", "--json", "--strict", "-"])).toEqual({
    kind: "plan",
    job: "-",
    form: { as: "json" },
    language: "en-GB",
    strict: true,
  });
  expect(readArguments(["plan", "job.yaml", "--card"])).toMatchObject({ form: { as: "card" } });
  expect(readArguments(["plan", "job.yaml", "--html=out.html"])).toMatchObject({
    form: { as: "html", file: "out.html", part: "all" },
  });
  expect(readArguments(["plan", "job.yaml", "--report", "--html", "out.html"])).toMatchObject({
    form: { as: "html", file: "out.html", part: "report" },
  });
  expect(readArguments(["plan", "job.yaml", "--pdf", "out.pdf"])).toMatchObject({
    form: { as: "pdf", file: "out.pdf", part: "all", paper: "A4" },
  });
  expect(
    readArguments(["plan", "job.yaml", "--card", "--pdf", "out.pdf", "--paper", "letter"]),
  ).toMatchObject({ form: { as: "pdf", file: "out.pdf", part: "card", paper: "Letter" } });
  expect(readArguments(["flasks", "demo.yaml", "--svg", "x.svg"])).toEqual({
    kind: "flasks",
    demo: "demo.yaml",
    form: { as: "svg", file: "x.svg" },
    language: "en-GB",
    strict: false,
  });
  expect(readArguments(["water", "job.yaml", "--json"])).toEqual({
    kind: "water",
    job: "job.yaml",
    json: true,
    strict: false,
  });
  expect(readArguments(["speciate", "case.json", "--json"])).toEqual({
    kind: "speciate",
    case: "case.json",
    strict: false,
  });
  expect(readArguments(["serve", "--port", "8080"])).toEqual({ kind: "serve", port: 8080 });
  expect(readArguments(["serve"])).toEqual({ kind: "serve", port: null });
  expect(readArguments(["--version"])).toEqual({ kind: "version" });
});

test.each([
  [["paln", "job.yaml"], "Did you mean “plan”?"],
  [["plan", "job.yaml", "--jsno"], "Did you mean “--json”?"],
  [["plan"], "needs a file"],
  [["plan", "a.yaml", "b.yaml"], "One file at a time"],
  [["plan", "a.yaml", "--json", "--card"], "One form at a time"],
  [["plan", "a.yaml", "--html"], "needs the name of a file"],
  [["plan", "a.yaml", "--json=yes"], "takes no value"],
  [["water", "a.yaml", "--card"], "takes no --card"],
  [["serve", "--port", "eighty"], "expected a whole number"],
  [["serve", "--port", "70000"], "expected a whole number"],
  [["serve", "file"], "takes no file"],
  [["plan", "a.yaml", "--pdf"], "“--pdf” needs the name of a file"],
  [["plan", "a.yaml", "--pdf", "a.pdf", "--html", "a.html"], "One form at a time"],
  [["plan", "a.yaml", "--card", "--report", "--pdf", "a.pdf"], "what you get without either"],
  [["plan", "a.yaml", "--report"], "goes with --html FILE or --pdf FILE"],
  [["plan", "a.yaml", "--pdf", "a.pdf", "--paper", "A5"], "expected A4 or Letter"],
  [["plan", "a.yaml", "--paper", "A4"], "goes with --pdf FILE"],
  [["flasks"], "hardstand flasks demo.yaml"],
  [["flasks", "demo.yaml", "--card"], "“flasks” takes no --card"],
  [["flasks", "demo.yaml", "--svg"], "“--svg” needs the name of a file"],
  [["--json"], "No command given"],
])("%j is answered with what to do", (argv, expected) => {
  expect(message(...argv)).toContain(expected);
});
