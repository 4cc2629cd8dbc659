import type { ReactElement } from "react";

/** Names of the fills, one for each kind of thing that can hold an active. */
export type Fill = "calcium" | "magnesium" | "iron" | "manganese" | "other";

const METALS: readonly Fill[] = ["calcium", "magnesium", "iron", "manganese"];

/** The fill for what holds an active. */
export function fillOf(holder: string): Fill {
  return METALS.find((metal) => holder.toLowerCase().includes(metal)) ?? "other";
}

/** The patterns of every picture on the page, drawn once. Colour never speaks alone: each has its own texture. */
export function Patterns(): ReactElement {
  return (
    <svg className="patterns" width="0" height="0" aria-hidden="true" focusable="false">
      <defs>
        <Texture id="calcium" size={8} draw="M-2 2 L2 -2 M0 8 L8 0 M6 10 L10 6" />
        <pattern id="fill-magnesium" width="8" height="8" patternUnits="userSpaceOnUse">
          <rect width="8" height="8" className="tint-magnesium" />
          <circle cx="2" cy="2" r="1.5" className="dot-magnesium" />
          <circle cx="6" cy="6" r="1.5" className="dot-magnesium" />
        </pattern>
        <Texture id="iron" size={8} draw="M0 0 L8 8 M0 8 L8 0" />
        <Texture id="manganese" size={6} draw="M3 0 V6" />
        <Texture id="other" size={6} draw="M0 3 H6" />
        <pattern id="fill-unsure" width="12" height="12" patternUnits="userSpaceOnUse">
          <rect width="12" height="12" className="tint-unsure" />
          <path d="M-3 9 L3 15 M0 0 L12 12 M9 -3 L15 3" className="line-unsure" />
        </pattern>
      </defs>
    </svg>
  );
}

function Texture({ id, size, draw }: { id: Fill; size: number; draw: string }): ReactElement {
  return (
    <pattern id={`fill-${id}`} width={size} height={size} patternUnits="userSpaceOnUse">
      <rect width={size} height={size} className={`tint-${id}`} />
      <path d={draw} className={`line-${id}`} />
    </pattern>
  );
}

/** A small square of a fill, for the words beside it. */
export function Swatch({ fill }: { fill: Fill | "free" | "unsure" | "lost" }): ReactElement {
  return (
    <svg className="swatch" width="22" height="16" aria-hidden="true" focusable="false">
      <rect x="1" y="1" width="20" height="14" className={`bar-${fill}`} />
    </svg>
  );
}
