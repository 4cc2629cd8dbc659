import type { ReactElement, ReactNode } from "react";

/**
 * Text with its chemical formulas set with real subscripts and superscripts: "CO3-2" becomes CO₃²⁻. Words, and numbers
 * that belong to no formula, stay as they are.
 */
export function Formula({ text }: { text: string }): ReactElement {
  return (
    <>
      {text.split(/(\s+)/).map((word, i) => (
        <FormulaWord key={`${String(i)} ${word}`} word={word} />
      ))}
    </>
  );
}

const FORMULA = /^\(?(?:[A-Z][a-z]?\d*|\(|\)\d*)+(?:[+-]\d*)?$/;

function FormulaWord({ word }: { word: string }): ReactNode {
  if (!FORMULA.test(word) || !/[\d+-]/.test(word) || /^pH$/.test(word)) return word;
  const charge = /([+-])(\d*)$/.exec(word);
  const body = charge === null ? word : word.slice(0, charge.index);
  const parts = body
    .split(/(\d+)/)
    .map((part, i) => (i % 2 === 1 ? <sub key={`${String(i)} ${part}`}>{part}</sub> : part));
  return (
    <>
      {parts}
      {charge !== null && (
        <sup>
          {charge[2]}
          {charge[1] === "-" ? "−" : "+"}
        </sup>
      )}
    </>
  );
}
