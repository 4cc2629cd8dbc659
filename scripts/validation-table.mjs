/**
 * Writes docs/validation.md from the rows that the reference tests recorded: each published figure with ours beside
 * it. With CI set, the file must already say the same; else the difference is shown and the step fails.
 */
import { existsSync, mkdirSync, readdirSync, readFileSync, writeFileSync } from "node:fs";
import { pathToFileURL } from "node:url";
import { inProject } from "./project.mjs";

/** A number as text, short enough to be the same on every machine. */
function figure(value, digits = 6) {
  if (value === 0) return "0";
  const [mantissa, exponent] =
    Math.abs(value) < 1e-4 || Math.abs(value) >= 1e9 ? value.toExponential().split("e") : [];
  if (exponent === undefined) return String(Number(value.toPrecision(digits)));
  const [shortMantissa, shift = "0"] = Number(mantissa).toPrecision(digits).split("e");
  return `${String(Number(shortMantissa))}e${String(Number(exponent) + Number(shift))}`;
}

/**
 * Our value as text. Where nothing but rounding is left (a residual that should be zero), a bound is said instead:
 * the last bits of a double differ between versions of the engine.
 */
function oursAsText({ published, ours, tolerance }) {
  const bound = tolerance / 1000;
  return published === 0 && Math.abs(ours) < bound ? `below ${figure(bound)}` : figure(ours);
}

/** Ours less the published value, in their unit; 0 when the two are the same but for rounding. */
function deviationAsText({ published, ours, tolerance }) {
  const deviation = ours - published;
  const rounding = Math.max(1e-9 * Math.abs(published), 1e-3 * tolerance);
  if (Math.abs(deviation) <= rounding) return "0";
  return `${deviation > 0 ? "+" : "−"}${figure(Math.abs(deviation), 2)}`;
}

/** Text of a table's cell: one line, with no bar and nothing that the page would read as markup. */
const cell = (text) =>
  text
    .replaceAll(/[\\|<>*_`[\]]/g, "\\$&")
    .replaceAll(/\s+/g, " ")
    .trim();

const columns = [
  ["what", (row) => row.what],
  ["published", (row) => figure(row.published)],
  ["ours", oursAsText],
  ["deviation", deviationAsText],
  ["tolerance ±", (row) => figure(row.tolerance)],
  ["unit", (row) => row.unit],
  ["source", (row) => row.source],
];
const reasonColumn = ["reason", (row) => (row.within ? "" : "**outside:** ") + cell(row.reason ?? "")];

function tableLines(rows) {
  const shown = rows.some((row) => row.reason !== undefined) ? [...columns, reasonColumn] : columns;
  const line = (cells) => `| ${cells.join(" | ")} |`;
  return [
    line(shown.map(([head]) => head)),
    line(shown.map(() => "---")),
    ...rows.map((row) =>
      line(shown.map((column) => (column === reasonColumn ? column[1](row) : cell(column[1](row))))),
    ),
    "",
  ];
}

/** Rows in a fixed order, each once; rows that differ in anything all stay. */
function inOrder(rows) {
  const keyed = rows.map((row) => [
    JSON.stringify([row.group, row.what, row.source, row.published, row.ours]),
    row,
  ]);
  return [...new Map(keyed)].sort(([a], [b]) => (a < b ? -1 : a > b ? 1 : 0)).map(([, row]) => row);
}

/**
 * The table as Markdown.
 *
 * @param given rows as the tests record them, in any order
 */
export function validationTable(given) {
  const rows = inOrder(given);
  const outside = rows.filter((row) => !row.within);
  const groups = [...new Set(rows.map((row) => row.group))];
  const lines = [
    "# Published values, and ours beside them",
    "",
    "The test run writes this page; it is not edited by hand. The deviation is ours less the published value, in the",
    "unit of both; 0 says that it is below a thousandth of the tolerance. A value outside its tolerance stays in the",
    "table with its reason.",
    "",
    `**${rows.length} values: ${rows.length - outside.length} within their tolerance, ${outside.length} outside it.**`,
    "",
    "| group | values | within | outside |",
    "| --- | --- | --- | --- |",
    ...groups.map((group) => {
      const all = rows.filter((row) => row.group === group).length;
      const out = outside.filter((row) => row.group === group).length;
      return `| ${cell(group)} | ${all} | ${all - out} | ${out} |`;
    }),
    "",
    ...(outside.length > 0 ? ["## Outside the tolerance", "", ...tableLines(outside)] : []),
    ...groups.flatMap((group) => [
      `## ${cell(group)}`,
      "",
      ...tableLines(rows.filter((row) => row.group === group)),
    ]),
  ];
  return `${lines.join("\n").trimEnd()}\n`;
}

/** The lines that differ between the file and this run, as a list of removed and added lines. */
function difference(before, after) {
  const [old, now] = [before.split("\n"), after.split("\n")];
  return [
    ...old.filter((line) => !now.includes(line)).map((line) => `- ${line}`),
    ...now.filter((line) => !old.includes(line)).map((line) => `+ ${line}`),
  ];
}

function readRows(folder) {
  if (!existsSync(folder)) return [];
  return readdirSync(folder)
    .filter((file) => file.endsWith(".jsonl"))
    .flatMap((file) => readFileSync(`${folder}/${file}`, "utf8").split("\n"))
    .filter((line) => line !== "")
    .map((line) => JSON.parse(line));
}

/** Writes or compares the page. @returns whether all is well. */
function main() {
  const rows = readRows(inProject("test-output", "validation"));
  if (rows.length === 0) {
    console.error("no reference test recorded a value: run the tests first");
    return false;
  }
  const outside = inOrder(rows).filter((row) => !row.within);
  console.log(`${inOrder(rows).length} published values compared, ${outside.length} outside their tolerance`);
  for (const row of outside) {
    const numbers = `published ${figure(row.published)}, ours ${oursAsText(row)} ${row.unit}`.trim();
    console.log(`  ${row.group}: ${row.what}: ${numbers} (${row.reason ?? "no reason given"})`);
  }
  const text = validationTable(rows);
  const target = inProject("docs", "validation.md");
  const before = existsSync(target) ? readFileSync(target, "utf8") : "";
  const isCi = ![undefined, "", "0", "false"].includes(process.env.CI);
  if (!isCi) {
    mkdirSync(inProject("docs"), { recursive: true });
    writeFileSync(target, text);
    console.log(before === text ? "docs/validation.md is unchanged" : "docs/validation.md is written anew");
    return true;
  }
  if (before === text) return true;
  console.log("docs/validation.md is not what this run gives; run npm test and commit it:");
  for (const line of difference(before, text)) console.log(line);
  return false;
}

if (import.meta.url === pathToFileURL(process.argv[1] ?? "").href) process.exitCode = main() ? 0 : 1;
