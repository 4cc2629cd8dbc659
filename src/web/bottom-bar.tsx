import { memo, useLayoutEffect, useRef, useState } from "react";
import type { ReactElement, RefObject } from "react";
import type { Programme } from "../agronomy/index.ts";
import { bringFocusIntoSight } from "./focus-in-sight.ts";
import type { FirstAnswer, Planned } from "./engine/messages.ts";
import { useLanguage, useSay } from "./language/language-context.ts";
import { costWords, inHundred, leastFreeOf } from "./result/words.ts";

interface BottomBarProps {
  readonly planned: Planned | null;
  /** The tank as planned of a newer document, while its ways out are still worked out. */
  readonly first: FirstAnswer | null;
  readonly picked: Programme | null;
  readonly waiting: boolean;
}

/** On a phone: the two figures that matter, and the way to the next group. */
export const BottomBar = memo(function BottomBar(props: BottomBarProps): ReactElement {
  const { planned, first, picked, waiting } = props;
  const next = useNextSection();
  const bar = useHeightTold();
  const language = useLanguage();
  const say = useSay();
  const group = next?.dataset["section"] ?? "";
  const newest = first ?? planned;
  const now = newest === null ? null : leastFreeOf(newest.plan.actives, newest.job.aim.where);
  const then =
    planned === null || picked === null ? null : leastFreeOf(picked.actives, planned.job.aim.where);
  return (
    <nav ref={bar} className="bottom-bar" aria-label={say("Result and next group")}>
      <p className={waiting ? "stale" : undefined}>
        <span className="bar-figure">{now === null ? "–" : inHundred(now.free, language)}</span>{" "}
        {say("free now")}
        <span aria-hidden="true"> · </span>
        <span className="bar-figure">{then === null ? "–" : inHundred(then.free, language)}</span>{" "}
        {say("with the row picked")}
        {picked !== null && picked.kind !== "none" && `, ${costWords(picked.cost.perHa, language)}`}
      </p>
      <button
        type="button"
        onClick={() => {
          const heading =
            next === null ? window.document.querySelector("h1") : next.querySelector<HTMLElement>("h3");
          heading?.scrollIntoView({ block: "start" });
          heading?.focus({ preventScroll: true });
        }}
      >
        {next === null ? say("Top") : say("Next: {group}", { group })}
      </button>
    </nav>
  );
});

const HEIGHT = "--bar-height";

/** Tells the styles how high the bar is, so that what has the focus never ends up under it, also when the bar grows. */
function useHeightTold(): RefObject<HTMLElement | null> {
  const bar = useRef<HTMLElement>(null);
  useLayoutEffect(() => {
    const page = bar.current?.closest<HTMLElement>(".page");
    const users = [window.document.documentElement, ...(page ? [page] : [])];
    const watched = new ResizeObserver(() => {
      const height = `${String(bar.current?.offsetHeight ?? 0)}px`;
      for (const { style } of users) style.setProperty(HEIGHT, height);
      // As the bar grows over what has the focus; never away from where somebody has scrolled to.
      const foot = bar.current?.getBoundingClientRect().top ?? 0;
      const focused = window.document.activeElement?.getBoundingClientRect();
      if (focused !== undefined && focused.top < foot && focused.bottom > foot) bringFocusIntoSight();
    });
    if (bar.current !== null) watched.observe(bar.current, { box: "border-box" });
    return () => {
      watched.disconnect();
      for (const { style } of users) style.removeProperty(HEIGHT);
    };
  }, []);
  return bar;
}

/** The first group whose heading is still below the upper part of the screen; looked for anew when the page grows. */
function useNextSection(): HTMLElement | null {
  const [next, setNext] = useState<HTMLElement | null>(null);
  useLayoutEffect(() => {
    let asked = false;
    const look = (): void => {
      asked = false;
      const sections = [...window.document.querySelectorAll<HTMLElement>("[data-section]")];
      setNext(
        sections.find((section) => section.getBoundingClientRect().top > window.innerHeight * 0.4) ?? null,
      );
    };
    const soon = (): void => {
      if (!asked) requestAnimationFrame(look);
      asked = true;
    };
    // At the head of the page it is the first one. Where somebody is further down is seen once the page is laid out;
    // to ask for that here would have the browser do it twice.
    setNext(window.document.querySelector<HTMLElement>("[data-section]"));
    soon();
    const growing = new ResizeObserver(soon);
    growing.observe(window.document.body);
    window.addEventListener("scroll", soon, { passive: true });
    window.addEventListener("resize", soon);
    return () => {
      growing.disconnect();
      window.removeEventListener("scroll", soon);
      window.removeEventListener("resize", soon);
    };
  }, []);
  return next;
}
