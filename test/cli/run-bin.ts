import { spawn } from "node:child_process";
import { inProject, root } from "../../scripts/project.mjs";

/** What a run of the command line left behind. */
export interface BinRun {
  readonly code: number | null;
  readonly out: string;
  readonly talk: string;
}

/** Runs `bin/hardstand.js` as a process of its own, as a person would. @param input what is sent to standard input */
export function runBin(args: readonly string[], input = ""): Promise<BinRun> {
  return new Promise((resolve, reject) => {
    const child = spawn(process.execPath, [inProject("bin", "hardstand.js"), ...args], { cwd: root });
    const out: Buffer[] = [];
    const talk: Buffer[] = [];
    child.stdout.on("data", (part: Buffer) => void out.push(part));
    child.stderr.on("data", (part: Buffer) => void talk.push(part));
    child.on("error", reject);
    child.on("close", (code) =>
      resolve({ code, out: Buffer.concat(out).toString(), talk: Buffer.concat(talk).toString() }),
    );
    child.stdin.end(input);
  });
}
