import { readFileSync } from "node:fs";
import { parse, stringify } from "yaml";
import { describe, expect, test } from "vitest";
import type { CliIo } from "../../src/cli/io.ts";
import { runCli } from "../../src/cli/run.ts";

interface Run {
  readonly code: number;
  readonly out: string;
  readonly talk: string;
}

/** Runs `plan` on the bytes of a job; `--json` so that a failure would show on the result channel. */
async function plan(content: string | Uint8Array | Error): Promise<Run> {
  let out = "";
  let talk = "";
  const bytes = typeof content === "string" ? new TextEncoder().encode(content) : content;
  const never = (): Promise<never> => Promise.reject(new Error("not part of this command"));
  const io: CliIo = {
    stdout: (text) => void (out += text),
    stderr: (text) => void (talk += text),
    readStdin: never,
    readFile: (_path, most) =>
      bytes instanceof Error
        ? Promise.reject(bytes)
        : Promise.resolve({ bytes: bytes.subarray(0, most), more: bytes.length > most }),
    writeFile: never,
    today: () => "2026-01-01",
    findPrinter: () => null,
    serve: never,
  };
  const code = await runCli(["plan", "job.yaml", "--json"], io);
  return { code, out, talk };
}

interface Job {
  water: { readings: Record<string, unknown>[] } & Record<string, unknown>;
  spray: Record<string, unknown>;
  mix: Record<string, unknown>[];
  [key: string]: unknown;
}
const good = readFileSync(new URL("../../examples/jobs/top-bore.yaml", import.meta.url), "utf8");

/** The sample job with a change, as YAML. */
function changed(change: (job: Job) => void): string {
  const job = parse(good) as Job;
  change(job);
  return stringify(job);
}
const reading = (job: Job, parameter: string): Record<string, unknown> =>
  job.water.readings.find((one) => one["parameter"] === parameter)!;

/** What is wrong, the job, and what the talk must name: the place, what was received, what to do. */
const JOBS: readonly (readonly [what: string, job: string, says: readonly string[]])[] = [
  [
    "a unit of another kind",
    changed((j) => (reading(j, "calcium")["unit"] = "µS/cm")),
    ["water.readings[0].unit", "µS/cm", "mg/L"],
  ],
  [
    "a unit that does not exist",
    changed((j) => (reading(j, "calcium")["unit"] = "mg/K")),
    ["water.readings[0].unit", "mg/K", "mg/L"],
  ],
  [
    "a negative reading",
    changed((j) => (reading(j, "magnesium")["value"] = -31)),
    ["water.readings[1].value", "-31", "zero or more"],
  ],
  ["a pH no water has", changed((j) => (reading(j, "pH")["value"] = 76)), ["readings", "76", "a pH from"]],
  [
    "an unknown active",
    changed((j) => (j.mix[0]!["active"] = "glyfosate")),
    ["mix[0].active", "glyfosate", "glyphosate"],
  ],
  ["no volume", changed((j) => delete j.spray["volume"]), ["spray.volume", "200 L/ha"]],
  ["a volume without a unit", changed((j) => (j.spray["volume"] = 200)), ["spray.volume", "200"]],
  ["a number with two readings", changed((j) => (j.spray["tank"] = "3,000 L")), ["spray.tank", "3,000"]],
  [
    "a key with a slip",
    changed((j) => {
      j["spary"] = j.spray;
    }),
    ["spary", "spray"],
  ],
  ["another version", changed((j) => (j["hardstand"] = 2)), ["hardstand", "2", "1"]],
  ["no mix", changed((j) => delete (j as Record<string, unknown>)["mix"]), ["mix"]],
  ["a key twice", `${good}\nwater: {}\n`, ["water", "again", "line"]],
  ["tabs for indents", "hardstand: 1\nwater:\n\tsource: x\n", ["line 3", "spaces"]],
  ["several documents", `${good}---\nhardstand: 1\n`, ["more than one"]],
  ["a list for a job", "- 1\n- 2\n", ["job.yaml"]],
  ["a bare text", "just a note", ["job.yaml"]],
];

describe("bad input", () => {
  test.each(JOBS)("%s: named, with what was received and what to do; exit 2", async (_what, job, says) => {
    const { code, out, talk } = await plan(job);
    expect([code, out]).toEqual([2, ""]);
    for (const part of says) expect(talk).toContain(part);
  });

  test("a hardness that cannot hold its own calcium is not passed over", async () => {
    const job = changed(
      (j) => void j.water.readings.push({ parameter: "hardness", value: 100, unit: "mg/L as CaCO3" }),
    );
    const { code, out, talk } = await plan(job);
    // 92 mg/L of calcium alone are 230 mg/L as CaCO3, with 31 mg/L of magnesium 357.
    expect([code, out]).toEqual([2, ""]);
    for (const part of ["water.readings[5].value", "hardness 100", "magnesium 357", "units"])
      expect(talk).toContain(part);
  });

  test("everything at once: each problem is said, none hides another", async () => {
    const job = changed((j) => {
      reading(j, "calcium")["unit"] = "mg/K";
      reading(j, "magnesium")["value"] = -31;
      reading(j, "pH")["value"] = 76;
      j.mix[0]!["active"] = "glyfosate";
      delete j.spray["volume"];
      j["aims"] = {};
    });
    const { code, talk } = await plan(job);
    expect(code).toBe(2);
    for (const part of ["mg/K", "-31", "76", "glyfosate", "spray.volume", "aims"])
      expect(talk).toContain(part);
    expect(talk).toMatch(/^job\.yaml: [6-9] things to mend/);
  });
});

const nested = `${"[".repeat(5000)}`;
const bomb = [
  "a: &a [x,x,x,x,x,x,x,x,x]",
  ..."bcdefgh".split("").map((c, i) => `${c}: &${c} [${Array(9).fill(`*${"abcdefg"[i]!}`).join(",")}]`),
].join("\n");
const FILES: readonly (readonly [what: string, content: string | Uint8Array | Error, says: string])[] = [
  ["an empty file", "", "nothing in it"],
  ["spaces only", " \n\t\n", "nothing in it"],
  ["a picture", new Uint8Array([0x89, 0x50, 0x4e, 0x47, 0, 1, 2]), "89 50 4e 47"],
  ["UTF-16", new Uint8Array([0xff, 0xfe, 0x68, 0x00]), "UTF-16"],
  ["10 MB of YAML", `a: 1\n${"# filling\n".repeat(1_000_000)}`, "1 MB"],
  ["300 kB of YAML", `a: 1\n${"b: 2 # filling\n".repeat(20_000)}`, "0.25 MB"],
  ["brackets without end", nested, "brackets"],
  ["an alias bomb", bomb, "alias"],
  ["a missing file", Object.assign(new Error("no"), { code: "ENOENT" }), "job.yaml"],
  ["a folder", Object.assign(new Error("no"), { code: "EISDIR" }), "folder"],
];

describe("files that are no job", () => {
  test.each(FILES)(
    "%s: refused with a reason, exit 2, nothing on the result channel",
    async (_what, content, says) => {
      const { code, out, talk } = await plan(content);
      expect([code, out]).toEqual([2, ""]);
      expect(talk).toContain(says);
      expect(talk.length).toBeLessThan(2000);
    },
  );

  test("a byte order mark and CRLF line ends do no harm", async () => {
    const { code } = await plan(`\uFEFF${good.replace(/\n/g, "\r\n")}`);
    expect(code).toBe(0);
  });
});
