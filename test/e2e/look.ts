import { AxeBuilder } from "@axe-core/playwright";
import type { Locator, Page } from "playwright-core";

/** A way the page can be looked at. */
export interface Look {
  readonly name: string;
  readonly set: (page: Page) => Promise<void>;
}

/** Every look of the page: as it comes, dark, with the system's own colours, and with more contrast. */
export const LOOKS: readonly Look[] = [
  {
    name: "light",
    set: (page) =>
      page.emulateMedia({ colorScheme: "light", forcedColors: "none", contrast: "no-preference" }),
  },
  { name: "dark", set: (page) => page.emulateMedia({ colorScheme: "dark" }) },
  { name: "forced colours", set: (page) => page.emulateMedia({ forcedColors: "active" }) },
  {
    name: "more contrast",
    set: (page) => page.emulateMedia({ colorScheme: "light", forcedColors: "none", contrast: "more" }),
  },
];

/**
 * What axe finds wrong with a page as it stands, or with a part of it, A and AA. With the system's own colours it reads
 * the page's text fill beside the system's background, a pair that is never shown: contrast is the system's matter there.
 *
 * @param only "colours" for the rules that the colours decide, "bright colours" for the stricter ones of bright light,
 *   "every rule" for A and AA and what is good practice beside them
 */
export async function violationsOf(
  page: Page,
  within = "body",
  only: "all" | "every rule" | "colours" | "bright colours" = "all",
): Promise<readonly string[]> {
  const forced = await page.evaluate(() => window.matchMedia("(forced-colors: active)").matches);
  // Neither the selectors of what passes nor a second page to gather the results of frames (there are none) are
  // asked for: together they take half of the time.
  const scan = new AxeBuilder({ page })
    .setLegacyMode()
    .options({ resultTypes: ["violations"] })
    .include(within);
  if (only === "colours") scan.withRules(["color-contrast"]);
  else if (only === "bright colours") scan.withRules(["color-contrast-enhanced"]);
  else if (only === "all")
    scan
      .withTags(["wcag2a", "wcag2aa", "wcag21a", "wcag21aa", "wcag22aa"])
      .disableRules(forced ? ["color-contrast"] : []);
  const { violations } = await scan.analyze();
  return violations.map(
    ({ id, nodes }) =>
      `${id}: ${nodes
        .map(({ target }) => String(target))
        .slice(0, 4)
        .join(" | ")}`,
  );
}

/** Where two texts part, with what stands there. */
function firstDifference(one: string, other: string): string {
  let at = 0;
  while (at < one.length && one[at] === other[at]) at++;
  return `"${one.slice(at - 60, at + 60)}" against "${other.slice(at - 60, at + 60)}"`;
}

/** The marks of the page. */
function marks(page: Page, within: string): Promise<string> {
  return page
    .locator(within)
    .first()
    .evaluate((element) => element.outerHTML);
}

/** What a reader of the page is given: its marks, and what of them is there to be read. */
async function content(page: Page, within: string): Promise<string> {
  return `${await marks(page, within)}\n${await page.locator(within).first().ariaSnapshot()}`;
}

/** Readings, a quarter of a second apart, that must agree for a page to have settled, and most that are made. */
const SETTLED = 6;
const MOST_READINGS = 80;

/** The same, once it has stopped changing: parts come when they are first opened, and the engine's answer comes late. */
async function settledContent(page: Page, within: string): Promise<string> {
  let before = "";
  let alike = 0;
  for (let i = 0; i < MOST_READINGS; i++) {
    const now = await marks(page, within);
    alike = now === before ? alike + 1 : 1;
    if (alike === SETTLED) return content(page, within);
    before = now;
    await page.waitForTimeout(250);
  }
  throw new Error("the page does not settle");
}

/**
 * The same in every look, each with its name. What the colours do not decide is read in the first only, as long as the
 * others give the same page to read: that is compared, and a difference counts as a find. With the system's colours
 * nothing is left to read then: their contrast is the system's matter.
 */
export async function violationsInEveryLook(page: Page, within = "body"): Promise<readonly string[]> {
  const found: string[] = [];
  let first = "";
  for (const [i, look] of LOOKS.entries()) {
    await look.set(page);
    const read = i === 0 ? await settledContent(page, within) : await content(page, within);
    if (i === 0) first = read;
    else if (read !== first)
      found.push(`${look.name}: not the page of the first look, ${firstDifference(first, read)}`);
    if (look.name === "forced colours" && read === first) continue;
    const only = i === 0 || look.name === "forced colours" ? "all" : "colours";
    found.push(...(await violationsOf(page, within, only)).map((one) => `${look.name}: ${one}`));
  }
  await LOOKS[0]?.set(page);
  return found;
}

/** The switch for bright light of the screen that is shown; the plan stays, hidden, behind the others. */
export function brightLightOf(page: Page): Locator {
  return page.getByRole("checkbox", { name: "Bright light" });
}

/**
 * What is hard to read in bright light, on a device that asks for dark; the page is left as it was. Its switch is at the
 * head of every screen.
 */
export async function violationsInBrightLight(page: Page, within = "body"): Promise<readonly string[]> {
  const brightLight = brightLightOf(page);
  await brightLight.check();
  await page.emulateMedia({ colorScheme: "dark" });
  const found = await violationsOf(page, within, "bright colours");
  await brightLight.uncheck();
  await LOOKS[0]?.set(page);
  return found.map((one) => `bright light: ${one}`);
}

/** Controls smaller than a gloved finger needs, in words. */
export function smallControls(page: Page): Promise<readonly string[]> {
  return page.evaluate(() =>
    [...document.querySelectorAll("button, select, summary, input, textarea, label:has(input)")]
      .filter(
        (one) => one.checkVisibility() && !one.matches("[type=radio], [type=checkbox], .visually-hidden"),
      )
      .filter((one) => {
        const { width, height } = one.getBoundingClientRect();
        return width < 47.5 || height < 47.5;
      })
      .map((one) => `${one.tagName} ${one.textContent ?? ""}`),
  );
}

/** Opens everything that is folded away. */
export function unfold(page: Page, within = "body"): Promise<void> {
  return page.evaluate((place) => {
    for (const fold of document.querySelectorAll(`${place} details`)) fold.setAttribute("open", "");
  }, within);
}

/** By how much the page is wider than its window [px]; none where nothing scrolls sideways. */
export function overhang(page: Page): Promise<number> {
  return page.evaluate(() => document.documentElement.scrollWidth - window.innerWidth);
}
