import { createContext, useContext } from "react";

/** How the page is made for bright light, on every screen of it. */
export interface BrightLight {
  /** Black on white, with larger text, lines and buttons. */
  readonly on: boolean;
  readonly set: (on: boolean) => void;
  /** True where the page brings number keys of its own, larger than those of the device. */
  readonly ownKeys: boolean;
}

export const BrightLightContext = createContext<BrightLight>({
  on: false,
  set: () => undefined,
  ownKeys: false,
});

export function useBrightLight(): BrightLight {
  return useContext(BrightLightContext);
}

/** Marks a box for numbers, for the page's own number keys to find. */
export const NUMBER_BOX = { "data-number": "" } as const;

/**
 * The keyboard that a device is to show for a number: none where the page has keys of its own, else one of digits, unless
 * a minus may be needed, which that of some phones lacks.
 */
export function useNumberMode(signed: boolean): "none" | "decimal" | undefined {
  const { ownKeys } = useBrightLight();
  if (ownKeys) return "none";
  return signed ? undefined : "decimal";
}
