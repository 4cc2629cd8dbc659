import { useEffect, useLayoutEffect, useRef, useState } from "react";
import type { ReactElement } from "react";
import { useSay } from "../language/language-context.ts";
import "./keypad.css";

const BOXES = "input[data-number]";

/** A key that writes what stands on it, or something else. */
interface Writing {
  readonly face: string;
  readonly writes: string;
  /** What it is called where its face does not say it. */
  readonly name?: string;
}

const DIGITS: readonly Writing[] = [..."123456789"].map((digit) => ({ face: digit, writes: digit }));
const REST: readonly Writing[] = [
  { face: ",", writes: ",", name: "Comma" },
  { face: "0", writes: "0" },
  { face: ".", writes: ".", name: "Point" },
  { face: "<", writes: "<", name: "Less than" },
  { face: "–", writes: "-", name: "Minus, or up to" },
];

/**
 * Number keys for a gloved thumb at the foot of the page, while the keyboard is in a box for numbers: both decimal signs,
 * “<” and the dash of a range among them. The device's own keyboard is one key away, for units and words.
 */
export function Keypad(): ReactElement | null {
  const say = useSay();
  const place = useRef<HTMLDivElement>(null);
  const { box, leave, toLetters } = useNumberBox(place);
  useLayoutEffect(() => {
    if (box === null) return;
    const { documentElement } = window.document;
    documentElement.classList.add("keypad-up");
    // With its label and the second unit beneath it, in which a slip is seen.
    (box.closest(".field") ?? box).scrollIntoView({ block: "nearest" });
    return () => {
      documentElement.classList.remove("keypad-up");
    };
  }, [box]);
  if (box === null) return null;
  const next = nextAfter(box);
  return (
    <div
      ref={place}
      className="keypad"
      role="group"
      aria-label={say("Number keys")}
      // A key pressed must not take the keyboard out of the box.
      onPointerDown={keepFocus}
      onMouseDown={keepFocus}
    >
      {[...DIGITS, ...REST].map(({ face, writes, name }) => (
        <Key
          key={face}
          face={face}
          name={name === undefined ? undefined : say(name)}
          onPress={() => {
            write(box, writes);
          }}
        />
      ))}
      <Key
        face="⌫"
        name={say("Delete the last")}
        onPress={() => {
          removeLast(box);
        }}
      />
      <Key face={say("Letters")} onPress={toLetters} />
      <Key face={say("Close")} onPress={leave} />
      <Key
        face={say("Next box")}
        disabled={next === null}
        onPress={() => {
          next?.focus();
          next?.select();
        }}
      />
    </div>
  );
}

interface KeyProps {
  readonly face: string;
  readonly name?: string | undefined;
  readonly disabled?: boolean;
  readonly onPress: () => void;
}

function Key({ face, name, disabled, onPress }: KeyProps): ReactElement {
  return (
    <button type="button" tabIndex={-1} aria-label={name} disabled={disabled} onClick={onPress}>
      {face}
    </button>
  );
}

function keepFocus(event: { preventDefault(): void }): void {
  event.preventDefault();
}

interface NumberBox {
  /** The box the keyboard is in; null where it is in none, or the device's own keyboard is wanted. */
  readonly box: HTMLInputElement | null;
  readonly leave: () => void;
  /** Has the device show its own keyboard, until the box is left. */
  readonly toLetters: () => void;
}

function useNumberBox(place: { readonly current: HTMLElement | null }): NumberBox {
  const [box, setBox] = useState<HTMLInputElement | null>(() => numberBox(window.document.activeElement));
  const lettered = useRef<HTMLInputElement | null>(null);
  useEffect(() => {
    const into = ({ target }: FocusEvent): void => {
      const entered = numberBox(target);
      if (entered !== null && entered !== lettered.current) setBox(entered);
    };
    const outOf = ({ relatedTarget }: FocusEvent): void => {
      if (relatedTarget instanceof Node && place.current?.contains(relatedTarget) === true) return;
      setBox(null);
      if (lettered.current !== null && lettered.current !== relatedTarget) {
        lettered.current.inputMode = "none";
        lettered.current = null;
      }
    };
    const { document } = window;
    document.addEventListener("focusin", into);
    document.addEventListener("focusout", outOf);
    return () => {
      document.removeEventListener("focusin", into);
      document.removeEventListener("focusout", outOf);
    };
  }, [place]);
  return {
    box,
    leave: () => {
      box?.blur();
      setBox(null);
    },
    toLetters: () => {
      if (box === null) return;
      box.blur();
      box.inputMode = "text";
      lettered.current = box;
      box.focus();
    },
  };
}

function numberBox(element: EventTarget | null): HTMLInputElement | null {
  return element instanceof HTMLInputElement && element.matches(BOXES) ? element : null;
}

/** The next box for numbers that is shown; null after the last. */
function nextAfter(box: HTMLInputElement): HTMLInputElement | null {
  const boxes = [...window.document.querySelectorAll<HTMLInputElement>(BOXES)];
  return boxes.slice(boxes.indexOf(box) + 1).find((one) => one.checkVisibility()) ?? null;
}

/** Puts text in place of what is selected, and says so as a keyboard does. */
function write(box: HTMLInputElement, text: string): void {
  const end = box.value.length;
  change(box, text, box.selectionStart ?? end, box.selectionEnd ?? end);
}

function removeLast(box: HTMLInputElement): void {
  const end = box.selectionEnd ?? box.value.length;
  const start = box.selectionStart ?? end;
  change(box, "", start === end ? Math.max(0, end - 1) : start, end);
}

function change(box: HTMLInputElement, text: string, start: number, end: number): void {
  box.focus();
  box.setRangeText(text, start, end, "end");
  box.dispatchEvent(new InputEvent("input", { bubbles: true }));
}
