import { fileURLToPath } from "node:url";
import type { Page } from "playwright-core";
import { afterAll, beforeAll, expect, test } from "vitest";
import { SHEET_CELLS } from "../pdf/sheet.ts";
import { tablePuts, writePdf } from "../pdf/write-pdf.ts";
import { setStage, SOON } from "./page.ts";
import type { Stage } from "./page.ts";
import { workbook } from "./workbook.ts";

/** Where the columns of a table stand on a page [points]. */
const COLUMNS = [50, 260, 340, 440];

let stage: Stage;
let page: Page;
beforeAll(async () => {
  stage = await setStage();
  page = await stage.open(1280, 900);
});
afterAll(async () => {
  await stage.close();
});

const reference = (name: string): string =>
  fileURLToPath(new URL(`../reference/sheets/${name}`, import.meta.url));

async function openPanel(on = page): Promise<void> {
  if (!(await on.locator("#sheet-text").isVisible())) await on.getByText("Paste or open a lab sheet").click();
  await on.waitForSelector("#sheet-text");
}

/** Headings of the groups with their counts, e.g. "Understood: 4". */
async function groups(on = page): Promise<string[]> {
  return on.locator("[data-testid=sheet-preview] h4").allTextContents();
}

/** The water test on the form: parameter, number and unit as they stand in the document that would be saved. */
async function readingsOnForm(): Promise<string[]> {
  return page.locator(".reading").evaluateAll((rows) =>
    rows.map((row) => {
      const label = row.querySelector("label")?.textContent ?? "";
      const text = row.querySelector("input")?.value ?? "";
      const unit = row.querySelector("select")?.value ?? "";
      return `${label} ${text} ${unit}`.trim();
    }),
  );
}

test("pasted lines are shown raw beside understood, doubtful ones asked, and one undo gives back the old test", async () => {
  const before = await readingsOnForm();
  await openPanel();
  await page.fill(
    "#sheet-text",
    ["Sample: Hill bore", "Calcium 92 mg/L", "Iron <0.05 mg/L", "Nitrate 12 mg/L", "Arsenic <1 µg/L"].join(
      "\n",
    ),
  );
  await expect
    .poll(groups, SOON)
    .toEqual(["To ask: 1", "Understood: 2", "Not used, takes no part in the answer: 1"]);
  const understood = page.locator('[data-status="understood"] li').first();
  expect(await understood.locator("code").textContent()).toBe("Calcium 92 mg/L");
  expect(await understood.locator("strong").textContent()).toBe("Calcium 92 mg/L");
  await page.getByLabel("Nitrate 12 mg/L as N", { exact: true }).check();
  await page.getByRole("button", { name: "Take over 3 readings" }).click();
  await expect
    .poll(readingsOnForm, SOON)
    .toEqual(["Calcium 92 mg/L", "Iron <0.05 mg/L", "Nitrate 12 mg/L as N"]);
  expect(await page.inputValue("#field-water-source")).toBe("Hill bore");
  await page.getByRole("button", { name: "Undo" }).click();
  await expect.poll(readingsOnForm, SOON).toEqual(before);
});

test("one answer about the decimal mark settles a sheet", async () => {
  await openPanel();
  await page.fill("#sheet-text", "Calcium 1,250 mg/L\nSulfate 1,125 mg/L");
  await expect.poll(() => groups(), SOON).toEqual(["To ask: 2"]);
  await page.getByRole("button", { name: "1,5" }).click();
  await expect.poll(() => groups(), SOON).toEqual(["Understood: 2"]);
  expect(await page.locator('[data-status="understood"] strong').allTextContents()).toEqual([
    "Calcium 1.25 mg/L",
    "Sulfate 1.1250 mg/L",
  ]);
  await page.fill("#sheet-text", "Calcium;92,5;mg/l\nEisen;0,05;mg/l\npH-Wert;7,6;");
  await expect.poll(() => groups(), SOON).toEqual(["Understood: 3"]);
});

test("a published file with one line a result is read", async () => {
  await page.setInputFiles('input[aria-label="Sheet file"]', reference("moenkopi-well.csv"));
  await expect
    .poll(() => page.locator('[data-status="understood"] strong').allTextContents(), SOON)
    .toEqual(expect.arrayContaining(["Calcium 270 mg/L", "Iron <10 ug/L"]));
  await page.waitForSelector('[data-status="second"]');
});

test("a published table with one line a well asks for its unit once and for the well", async () => {
  await page.setInputFiles('input[aria-label="Sheet file"]', reference("semarang-groundwater.csv"));
  await page.getByLabel("Sample, one of 58").selectOption({ label: "Aorta, Kaligawe" });
  await page.getByLabel("Unit of concentrations that stand without one").selectOption("mg/L");
  await expect
    .poll(() => page.locator('[data-status="understood"] strong').allTextContents(), SOON)
    .toEqual(expect.arrayContaining(["Calcium 20.4 mg/L", "Bicarbonate 275.8 mg/L", "pH 7.81"]));
});

test("a spreadsheet is read, and what of it was not read is said", async () => {
  const tables = {
    Results: [
      ["Parameter", "Result", "Unit"],
      ["Calcium", 92.5, "mg/L"],
      ["Manganese", 1.125, "mg/L"],
    ],
    Remarks: [["Bottle was warm"]],
  };
  await page.setInputFiles('input[aria-label="Sheet file"]', {
    name: "sheet.xlsx",
    mimeType: "application/vnd.openxmlformats-officedocument.spreadsheetml.sheet",
    buffer: Buffer.from(workbook(tables)),
  });
  await expect
    .poll(() => page.locator('[data-status="understood"] strong').allTextContents(), SOON)
    .toEqual(["Calcium 92.5 mg/L", "Manganese 1.1250 mg/L"]);
  expect(await page.locator(".sheet .message").textContent()).toContain("Not read: “Remarks”");
  await page.setInputFiles('input[aria-label="Sheet file"]', {
    name: "photo.jpg",
    mimeType: "image/jpeg",
    buffer: Buffer.from([255, 216, 255, 224, 0, 16]),
  });
  expect(await page.getByRole("alert").textContent()).toContain("photo.jpg is not text");
});

/** Lines around the cells of a table, and none with cells that stand near each other. */
const LINED = "td { border: 1px solid; padding: 3px 6px; max-width: 12em }";
const NARROW = "table { border-spacing: 2px } td { padding: 0 1px }";

/** A sheet as a browser prints it, CaCO3 with its small figure below; with or without marks for each cell. */
async function printedSheet(style: string, tagged: boolean): Promise<Buffer> {
  const printer = await stage.open(900, 900);
  const rows = SHEET_CELLS.map((cells) => {
    const tags = cells.map((cell) => {
      const html = cell.replaceAll("<", "&lt;").replace("CaCO3", "CaCO<sub>3</sub>");
      return cells.length === 1 ? `<td colspan="4">${html}</td>` : `<td>${html}</td>`;
    });
    return `<tr>${tags.join("")}</tr>`;
  });
  await printer.setContent(`<style>${style}</style><table>${rows.join("")}</table>`);
  const pdf = await printer.pdf({ format: "A4", tagged });
  await printer.close();
  return pdf;
}

/** What is shown of the sheet: raw beside understood, group by group. */
async function shown(): Promise<string[]> {
  const texts = await page.locator("[data-testid=sheet-preview] li").allTextContents();
  return texts.map((text) => text.replace(/[Ll]ine \d+/g, "line"));
}

test("a PDF gives the readings that the same table gives, raw beside understood, and they are taken over", async () => {
  const before = await readingsOnForm();
  await openPanel();
  await page.fill("#sheet-text", SHEET_CELLS.map((row) => row.join("\t")).join("\n"));
  await expect.poll(() => groups(), SOON).toEqual(expect.arrayContaining(["To ask: 1", "Understood: 7"]));
  const expected = await shown();
  await page.fill("#sheet-text", "");
  await expect.poll(() => groups(), SOON).toEqual([]);
  await page.setInputFiles('input[aria-label="Sheet file"]', {
    name: "sheet.pdf",
    mimeType: "application/pdf",
    buffer: await printedSheet(LINED, false),
  });
  await expect.poll(() => groups(), SOON).toEqual(expect.arrayContaining(["To ask: 1", "Understood: 7"]));
  expect(await shown()).toEqual(expected);
  await page.getByRole("button", { name: "Take over 7 readings" }).click();
  await expect
    .poll(readingsOnForm, SOON)
    .toEqual([
      "Calcium 92 mg/L",
      "Magnesium 31 mg/L",
      "Hardness 357 mg/L as CaCO3",
      "Alkalinity 240 mg/L as CaCO3",
      "Iron < 0.05 mg/L",
      "Conductivity 780 µS/cm",
      "pH 7.6",
    ]);
  expect(await page.inputValue("#field-water-source")).toBe("Top bore");
  await page.getByRole("button", { name: "Undo" }).click();
  await expect.poll(readingsOnForm, SOON).toEqual(before);
});

test("a PDF is read with the network cut", async () => {
  const context = await stage.browser.newContext({ viewport: { width: 360, height: 740 } });
  const away = await context.newPage();
  await away.goto(stage.address);
  await away.waitForSelector('[data-offline="ready"]', { timeout: 60_000 });
  // Only a page that was opened from what was put by asks there first.
  await away.reload();
  await away.waitForSelector("#field-title");
  await context.setOffline(true);
  await openPanel(away);
  await away.setInputFiles('input[aria-label="Sheet file"]', {
    name: "sheet.pdf",
    mimeType: "application/pdf",
    buffer: Buffer.from(writePdf([tablePuts(SHEET_CELLS, COLUMNS)])),
  });
  await expect.poll(() => groups(away), SOON).toEqual(expect.arrayContaining(["To ask: 1", "Understood: 7"]));
  await context.close();
});

test.each([
  ["lines, marks for each cell", LINED, true],
  ["narrow, marks for each cell", NARROW, true],
  ["narrow, without marks", NARROW, false],
])("a PDF printed by a browser gives the readings of its table: %s", async (_how, style, tagged) => {
  await openPanel();
  await page.setInputFiles('input[aria-label="Sheet file"]', {
    name: "sheet.pdf",
    mimeType: "application/pdf",
    buffer: await printedSheet(style, tagged),
  });
  await expect.poll(groups, SOON).toEqual(expect.arrayContaining(["To ask: 1", "Understood: 7"]));
  await page.fill("#sheet-text", "");
  await expect.poll(groups, SOON).toEqual([]);
});

test.each([
  ["a scanned PDF", writePdf([[]]), "holds pictures without text"],
  ["a broken PDF", writePdf([[]]).subarray(0, 60), "is a broken PDF"],
])("%s is refused with what to do instead", async (_what, bytes, words) => {
  await openPanel();
  await page.setInputFiles('input[aria-label="Sheet file"]', {
    name: "sheet.pdf",
    mimeType: "application/pdf",
    buffer: Buffer.from(bytes),
  });
  await expect.poll(() => page.getByRole("alert").textContent(), SOON).toContain(words);
});
