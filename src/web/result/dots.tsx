import type { ReactElement } from "react";
import { countOutOf } from "../../units/index.ts";

/** Dots in a row: as many as can be counted at arm's length on a phone. */
export const DOTS = 20;

const SIZE = 15;

/** A share of draws as dots out of twenty. */
export function dotsOf(share: number): number {
  return countOutOf(share, DOTS);
}

/** Twenty countable dots, the filled ones for the draws that meet the aim. The words beside them say the same. */
export function DotRow({ share }: { share: number }): ReactElement {
  const filled = dotsOf(share);
  return (
    <svg
      className="dot-row"
      width={DOTS * SIZE}
      height={SIZE}
      viewBox={`0 0 ${String(DOTS * SIZE)} ${String(SIZE)}`}
      aria-hidden="true"
      focusable="false"
    >
      {Array.from({ length: DOTS }, (_, i) => (
        <circle
          key={i}
          cx={SIZE * (i + 0.5)}
          cy={SIZE / 2}
          r={SIZE / 2 - 2}
          className={i < filled ? "dot" : "dot-open"}
        />
      ))}
    </svg>
  );
}
