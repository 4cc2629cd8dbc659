import { existsSync, readdirSync, readFileSync } from "node:fs";
import { dirname, join } from "node:path";
import { expect, it } from "vitest";
import { inProject, root } from "../../scripts/project.mjs";

const skipped = new Set(["node_modules", "dist", "test-output", "coverage", ".git"]);

function markdownFiles(folder = "."): string[] {
  return readdirSync(join(root, folder), { withFileTypes: true }).flatMap((entry) => {
    const path = join(folder, entry.name);
    if (entry.isDirectory()) return skipped.has(entry.name) ? [] : markdownFiles(path);
    return entry.name.endsWith(".md") ? [path] : [];
  });
}

/** The anchor a heading gets. */
const anchorOf = (heading: string) =>
  heading
    .toLowerCase()
    .replaceAll(/[^\p{L}\p{N} _-]/gu, "")
    .replaceAll(" ", "-");

function anchorsIn(text: string): string[] {
  return [...text.matchAll(/^#+ (.+)$/gm)].map((match) => anchorOf(match[1] ?? ""));
}

it.each(markdownFiles())("every link inside the project in %s leads somewhere", (file) => {
  const text = readFileSync(inProject(file), "utf8").replaceAll(/```[\s\S]*?```/g, "");
  const targets = [...text.matchAll(/\]\(([^)\s]+)\)/g)].map((match) => match[1] ?? "");
  const broken = targets
    .filter((target) => !/^(?:https?|mailto):/.test(target))
    .filter((target) => {
      const [path = "", anchor] = target.split("#");
      const found = path === "" ? inProject(file) : inProject(dirname(file), path);
      if (!existsSync(found)) return true;
      return anchor !== undefined && !anchorsIn(readFileSync(found, "utf8")).includes(anchor);
    });
  expect(broken).toEqual([]);
});
