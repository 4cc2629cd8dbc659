import type { ReactElement } from "react";
import type { Plan } from "../../agronomy/index.ts";
import { Evidence, SourceLink } from "./evidence.tsx";
import { figure, inHundred } from "./words.ts";

/** How sure the ranges are, and which test would narrow them: the step that is mostly left out. */
export function Certainty(props: {
  uncertainty: Plan["uncertainty"];
  words: readonly string[];
}): ReactElement {
  const { uncertainty, words } = props;
  if (uncertainty === null) return <p>Nothing was drawn, so no range is known.</p>;
  const { measureNext, about } = uncertainty;
  return (
    <>
      {measureNext.length === 0 ? (
        <p>No single test of the water would narrow the range much.</p>
      ) : (
        <div className="table" role="region" aria-label="What to measure next" tabIndex={0}>
          <table className="words-table">
            <caption>What to measure next, most useful first</caption>
            <thead>
              <tr>
                <th scope="col">Test</th>
                <th scope="col">For</th>
                <th scope="col">Range in 100, now</th>
                <th scope="col">Then about</th>
                <th scope="col">Source</th>
              </tr>
            </thead>
            <tbody>
              {measureNext.map((next) => (
                <tr key={next.test}>
                  <th scope="row">{next.test}</th>
                  <td>{next.words}</td>
                  <td>{figure(100 * about.width, 2)}</td>
                  <td>{figure(100 * next.width, 2)}</td>
                  <td>
                    takes {inHundred(next.removes)} in 100 of the spread <SourceLink source={next.source} />
                  </td>
                </tr>
              ))}
            </tbody>
          </table>
        </div>
      )}
      <details>
        <summary>What the ranges rest on</summary>
        {words.map((sentence) => (
          <p key={sentence}>{sentence}</p>
        ))}
        <Evidence of="computed" />
      </details>
    </>
  );
}
