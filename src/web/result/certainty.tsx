import type { ReactElement } from "react";
import type { Plan } from "../../agronomy/index.ts";
import { sayIn, useLanguage } from "../language/language-context.ts";
import { Text } from "../language/text.tsx";
import { Evidence, SourceLink } from "./evidence.tsx";
import { figure, inHundred } from "./words.ts";

/** How sure the ranges are, and which test would narrow them: the step that is mostly left out. */
export function Certainty(props: {
  uncertainty: Plan["uncertainty"];
  words: readonly string[];
}): ReactElement {
  const { uncertainty, words } = props;
  const language = useLanguage();
  const say = sayIn(language);
  if (uncertainty === null) return <p>{say("Nothing was drawn, so no range is known.")}</p>;
  const { measureNext, about } = uncertainty;
  return (
    <>
      {measureNext.length === 0 ? (
        <p>{say("No single test of the water would narrow the range much.")}</p>
      ) : (
        <div className="table" role="region" aria-label={say("What to measure next")} tabIndex={0}>
          <table className="words-table">
            <caption>{say("What to measure next, most useful first")}</caption>
            <thead>
              <tr>
                <th scope="col">{say("Test")}</th>
                <th scope="col">{say("For")}</th>
                <th scope="col">{say("Range in 100, now")}</th>
                <th scope="col">{say("Then about")}</th>
                <th scope="col">{say("Source")}</th>
              </tr>
            </thead>
            <tbody>
              {measureNext.map((next) => (
                <tr key={next.test}>
                  <th scope="row">{language.phrases.name(next.test)}</th>
                  <td>
                    <Text of={next.words} />
                  </td>
                  <td>{figure(100 * about.width, 2, language)}</td>
                  <td>{figure(100 * next.width, 2, language)}</td>
                  <td>
                    {say("takes {share} in 100 of the spread", { share: inHundred(next.removes, language) })}{" "}
                    <SourceLink source={next.source} />
                  </td>
                </tr>
              ))}
            </tbody>
          </table>
        </div>
      )}
      <details>
        <summary>{say("What the ranges rest on")}</summary>
        {words.map((sentence) => (
          <p key={sentence}>{sentence}</p>
        ))}
        <Evidence of="computed" />
      </details>
    </>
  );
}
