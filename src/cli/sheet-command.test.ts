import { expect, test } from "vitest";
import { writePdf } from "../../test/pdf/write-pdf.ts";
import type { CliIo } from "./io.ts";
import { runCli } from "./run.ts";

interface Run {
  readonly code: number;
  readonly out: string;
  readonly err: string;
}

async function sheet(bytes: Uint8Array | Error, ...more: readonly string[]): Promise<Run> {
  let out = "";
  let err = "";
  const never = (): never => {
    throw new Error("not part of this command");
  };
  const io: CliIo = {
    stdout: (text) => void (out += text),
    stderr: (text) => void (err += text),
    readStdin: never,
    readFile: (_path, most) =>
      bytes instanceof Error
        ? Promise.reject(bytes)
        : Promise.resolve({ bytes: bytes.subarray(0, most), more: bytes.length > most }),
    writeFile: never,
    today: never,
    findPrinter: () => null,
    serve: never,
  };
  const code = await runCli(["sheet", "report.csv", ...more], io);
  return { code, out, err };
}
const utf8 = (text: string): Uint8Array => new TextEncoder().encode(text);

test("a sheet comes out as a water block, with what has to be asked beside it", async () => {
  const { code, out, err } = await sheet(
    utf8("Sample: Top bore\nCalcium\t92\tmg/L\nNitrate\t12\tmg/L\npH\t7.6\t"),
  );
  expect(code).toBe(0);
  expect(out).toContain('- {parameter: calcium, value: "92", unit: "mg/L"}');
  expect(out).toContain('source: "Top bore"');
  expect(out).toContain("Which one: nitrate 12 mg/L as NO3; nitrate 12 mg/L as N?");
  expect(err).toBe("1 reading has to be asked about.\n");
});

const PAGE = [
  { text: "Calcium", x: 50, y: 700 },
  { text: "92", x: 200, y: 700 },
  { text: "mg/L", x: 240, y: 700 },
];

test("a PDF is read, and what of it was not is said", async () => {
  const { code, out, err } = await sheet(writePdf([PAGE, []]));
  expect(code).toBe(0);
  expect(out).toContain('- {parameter: calcium, value: "92", unit: "mg/L"}');
  expect(out).toContain("[line 1: Calcium | 92 | mg/L]");
  expect(err).toContain("Page 2 without text");
});

test("as data it carries every line and the readings of each sample", async () => {
  const { out } = await sheet(utf8("Site;Ca (mg/L);Mg (mg/L);pH\nA;92;31;7,4\nB;20;5;6,9"), "--json");
  const data = JSON.parse(out) as { samples: { label: string; readings: unknown[] }[] };
  expect(data.samples.map((sample) => sample.label)).toEqual(["A", "B"]);
  expect(data.samples[1]?.readings).toContainEqual({ parameter: "pH", value: "6,9", unit: "" });
});

test("an old encoding is read and said", async () => {
  const { code, out, err } = await sheet(
    new Uint8Array([...utf8("Gesamth"), 0xe4, ...utf8("rte\t17.3\t"), 0xb0, ...utf8("dH")]),
  );
  expect(code).toBe(0);
  expect(out).toContain("hardness");
  expect(err).toContain("Windows-1252");
});

test.each([
  ["a scanned PDF", writePdf([[]]), "holds pictures without text"],
  ["a PDF cut short", writePdf([PAGE]).subarray(0, 200), "a broken PDF"],
  ["a flood that begins as a PDF", utf8(`%PDF-1.4${" ".repeat(5_000_000)}`), "a PDF of at most 5 MB"],
  ["a picture", new Uint8Array([0x89, 0x50, 0, 1]), "expected a text or CSV file"],
  ["a letter", utf8("Dear grower,\nplease find the invoice attached."), "no reading found"],
  ["nothing", utf8(""), "no reading found"],
  ["a missing file", Object.assign(new Error("no"), { code: "ENOENT" }), "ENOENT"],
  ["a flood", new Uint8Array(1_000_001).fill(65), "at most 1 MB"],
])("%s is refused with a reason and nothing on the result channel", async (_what, bytes, why) => {
  const { code, out, err } = await sheet(bytes);
  expect([code, out]).toEqual([2, ""]);
  expect(err).toContain(why);
});
