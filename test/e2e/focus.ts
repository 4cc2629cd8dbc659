import type { Page } from "playwright-core";

/** One stop of the Tab key. */
export interface Stop {
  /** Tag, id and first words of what has the focus. */
  readonly name: string;
  /** What is wrong with how the focus is shown, in words. */
  readonly faults: readonly string[];
}

/** What is found where the focus is. */
interface Found extends Stop {
  /** Where the walk stands: outside the page, at the stop it began with, or at another one. */
  readonly at: "outside" | "start" | "other";
}

/** Contrast of what tells a state from its ground (WCAG 2.2, 1.4.11), and the least width of a focus mark [px]. */
const LEAST_CONTRAST = 3;
const LEAST_WIDTH = 2;
/** How long the page may take until it lies still again. */
const SETTLING_MS = 100;
/** More stops than any screen has. */
const MOST_STOPS = 1000;

const look = (page: Page): Promise<Found> =>
  page.evaluate(lookAtFocus, [LEAST_CONTRAST, LEAST_WIDTH] as const);

/** Goes once round a whole screen by the keyboard alone, from wherever the focus is, and looks at every stop. */
export async function walk(page: Page, key: "Tab" | "Shift+Tab"): Promise<readonly Stop[]> {
  await page.evaluate(() => {
    delete (window as unknown as { walked?: unknown }).walked;
  });
  const stops: Stop[] = [];
  while (stops.length < MOST_STOPS) {
    await page.keyboard.press(key);
    let found = await look(page);
    if (found.at === "start") return stops;
    if (found.faults.length > 0) {
      // What grows or moves upon the focus has its moment.
      await page.waitForTimeout(SETTLING_MS);
      found = await look(page);
    }
    if (found.at === "other") stops.push({ name: found.name, faults: found.faults });
  }
  throw new Error(`${key} never comes round`);
}

/** Opens by the keyboard everything that is folded away, from the start of the page to its end; gives how much. */
export async function unfoldByKeys(page: Page): Promise<number> {
  let opened = 0;
  for (let i = 0; i < MOST_STOPS; i += 1) {
    await page.keyboard.press("Tab");
    const state = await page.evaluate(() => {
      const focused = window.document.activeElement;
      if (focused === null || focused === window.document.body) return "outside";
      const isFolded =
        (focused.tagName === "SUMMARY" && !(focused.parentElement as HTMLDetailsElement).open) ||
        focused.getAttribute("aria-expanded") === "false";
      return isFolded ? "folded" : "other";
    });
    if (state === "outside") return opened;
    if (state === "folded") {
      await page.keyboard.press("Enter");
      opened += 1;
    }
  }
  throw new Error("Tab never leaves the page");
}

/** What is wrong at the stops of a walk, each kind once. */
export function faultsOf(stops: readonly Stop[]): readonly string[] {
  return [...new Set(stops.flatMap(({ name, faults }) => faults.map((fault) => `${name}: ${fault}`)))];
}

/** Goes on by Tab until something of a kind has the focus; with words, what says them. */
export async function tabTo(page: Page, selector: string, words = ""): Promise<void> {
  for (let i = 0; i < MOST_STOPS; i += 1) {
    const isThere = await page.evaluate(
      ([wanted, said]) => {
        const focused = window.document.activeElement;
        return focused !== null && focused.matches(wanted) && focused.textContent.includes(said);
      },
      [selector, words] as const,
    );
    if (isThere) return;
    await page.keyboard.press("Tab");
  }
  throw new Error(`the keyboard does not reach ${selector} ${words}`);
}

interface Marked {
  readonly element: Element;
  readonly mark: string;
}

/** What a walk remembers in the page: the stop it began with, the one it is at, and the one before. */
interface Walked {
  first: Element | null;
  now: Marked | null;
  before: Marked | null;
}

/**
 * What is found where the focus is. It is shown by an outline that is not there without it, wide enough and of enough
 * contrast with its ground; and neither it nor its outline is out of the window, cut off, or under the bar at the foot.
 * What is larger than the window need only fill it. In one piece, since it is sent to the page.
 */
function lookAtFocus([leastContrast, leastWidth]: readonly [number, number]): Found {
  const kept = window as unknown as { walked?: Walked };
  const walked = (kept.walked ??= { first: null, now: null, before: null });
  const markOf = (element: Element): string => {
    const { outlineStyle, outlineWidth, outlineColor, boxShadow } = getComputedStyle(element);
    return outlineStyle === "none"
      ? boxShadow
      : `${outlineStyle} ${outlineWidth} ${outlineColor} ${boxShadow}`;
  };
  const nameOf = (element: Element): string => {
    const said = element.getAttribute("aria-label") ?? element.closest("label")?.textContent;
    return `${element.tagName} ${element.id || element.className} ${(said ?? element.textContent).slice(0, 40)}`;
  };
  const around = (element: Element): readonly Element[] => {
    const root = element.getRootNode();
    const parent = element.parentElement ?? (root instanceof ShadowRoot ? root.host : null);
    return parent === null ? [] : [parent, ...around(parent)];
  };
  const channels = (colour: string): readonly number[] => (colour.match(/[\d.]+/g) ?? []).map(Number);
  const luminance = (colour: readonly number[]): number => {
    const [r = 0, g = 0, b = 0] = colour
      .map((part) => part / 255)
      .map((part) => (part <= 0.04045 ? part / 12.92 : ((part + 0.055) / 1.055) ** 2.4));
    return 0.2126 * r + 0.7152 * g + 0.0722 * b;
  };
  const contrast = (one: readonly number[], other: readonly number[]): number => {
    const [dark = 0, light = 0] = [luminance(one), luminance(other)].sort((a, b) => a - b);
    return (light + 0.05) / (dark + 0.05);
  };

  const faults: string[] = [];
  let focused = window.document.activeElement ?? window.document.body;
  while (focused.shadowRoot?.activeElement) focused = focused.shadowRoot.activeElement;
  if (focused === window.document.body) return { at: "outside", name: "", faults };
  if (focused !== walked.now?.element) {
    if (focused === walked.first) return { at: "start", name: nameOf(focused), faults };
    walked.before = walked.now;
    walked.now = { element: focused, mark: markOf(focused) };
    walked.first ??= focused;
  }
  const { before } = walked;
  if (before !== null && markOf(before.element) === before.mark)
    faults.push(`no other mark than without the focus: ${nameOf(before.element)}`);

  const { outlineStyle, outlineWidth, outlineColor, outlineOffset } = getComputedStyle(focused);
  const width = outlineStyle === "none" ? 0 : parseFloat(outlineWidth);
  if (width < leastWidth) faults.push(`mark of ${String(width)} px`);
  const ground = around(focused)
    .map((one) => channels(getComputedStyle(one).backgroundColor))
    .find(([, , , alpha = 1]) => alpha > 0) ?? [255, 255, 255];
  const found = contrast(channels(outlineColor), ground);
  if (found < leastContrast) faults.push(`contrast of the mark ${found.toFixed(2)}`);

  const bar = window.document.querySelector(".bottom-bar");
  const foot =
    bar === null || bar.contains(focused) || bar.getBoundingClientRect().height === 0
      ? window.innerHeight
      : bar.getBoundingClientRect().top;
  const reach = width + Math.max(0, parseFloat(outlineOffset));
  const frames = around(focused).filter(
    (one) => one.parentElement?.parentElement !== null && getComputedStyle(one).overflow !== "visible",
  );
  for (const box of focused.getClientRects()) {
    const isLarge = box.height > 0.8 * foot;
    // Rounding to whole pixels hides nothing.
    if (box.left < -1 || box.right > window.innerWidth + 1)
      faults.push(`from ${box.left.toFixed(0)} to ${box.right.toFixed(0)} px across`);
    if (isLarge && Math.min(box.bottom, foot) - Math.max(box.top, 0) < 0.7 * foot) faults.push("hardly seen");
    if (!isLarge && (box.top - reach < -1 || box.bottom + reach > foot + 1))
      faults.push(`from ${box.top.toFixed(0)} to ${box.bottom.toFixed(0)} px of ${foot.toFixed(0)}`);
    for (const frame of frames.map((one) => one.getBoundingClientRect()))
      if (
        box.left - reach < frame.left - 1 ||
        box.right + reach > frame.right + 1 ||
        box.top - reach < frame.top - 1 ||
        box.bottom + reach > frame.bottom + 1
      )
        faults.push("its mark is cut off");
    for (const [across, down] of [0.05, 0.5, 0.95].flatMap((x) =>
      [0.05, 0.5, 0.95].map((y) => [x, y] as const),
    )) {
      const y = box.top + down * box.height;
      if (isLarge && (y < 0 || y > foot)) continue;
      const root = focused.getRootNode() as Document | ShadowRoot;
      const hit = root.elementFromPoint(box.left + across * box.width, y);
      const owners = [focused, focused.closest("label")];
      if (!owners.some((owner) => hit !== null && owner?.contains(hit)))
        faults.push(`covered by ${hit === null ? "nothing" : nameOf(hit)}`);
    }
  }
  return { at: "other", name: nameOf(focused), faults: [...new Set(faults)] };
}
