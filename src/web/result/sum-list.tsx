import type { ReactElement } from "react";
import { sayIn, useLanguage } from "../language/language-context.ts";
import { Text } from "../language/text.tsx";
import { Evidence, SourceLink } from "./evidence.tsx";
import { Formula } from "./formula.tsx";
import type { Sum } from "./sums.ts";

/** Results with the way to them: formula, the numbers put in, the result, the source. */
export function SumList({ summary, sums }: { summary: string; sums: readonly Sum[] }): ReactElement | null {
  const say = sayIn(useLanguage());
  if (sums.length === 0) return null;
  return (
    <details>
      <summary>{say(summary)}</summary>
      <dl className="sums">
        {sums.map((sum) => (
          <div key={sum.what}>
            <dt>{sum.what}</dt>
            <dd>
              <Formula text={`= ${sum.formula}`} />
            </dd>
            <dd>= {sum.numbers}</dd>
            <dd>
              ={" "}
              <strong>
                <Formula text={sum.result} />
              </strong>{" "}
              <Evidence of="computed" />{" "}
              {sum.source === null ? (
                <span className="about">{say("from what you entered")}</span>
              ) : (
                <SourceLink source={sum.source} />
              )}
              {typeof sum.place === "string" && (
                <span className="about">
                  {" "}
                  <Text of={sum.place} />
                </span>
              )}
            </dd>
          </div>
        ))}
      </dl>
    </details>
  );
}
