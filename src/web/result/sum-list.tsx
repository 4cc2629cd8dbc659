import type { ReactElement } from "react";
import { Evidence, SourceLink } from "./evidence.tsx";
import { Formula } from "./formula.tsx";
import type { Sum } from "./sums.ts";

/** Results with the way to them: formula, the numbers put in, the result, the source. */
export function SumList({ summary, sums }: { summary: string; sums: readonly Sum[] }): ReactElement | null {
  if (sums.length === 0) return null;
  return (
    <details>
      <summary>{summary}</summary>
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
                <span className="about">from what you entered</span>
              ) : (
                <SourceLink source={sum.source} />
              )}
            </dd>
          </div>
        ))}
      </dl>
    </details>
  );
}
