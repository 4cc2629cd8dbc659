import { completeWater } from "./complete-water.ts";
import type { CompleteOptions } from "./complete-water.ts";
import type { WaterSystem } from "./solve-carbonate.ts";
import type { Water, WaterTest } from "./types.ts";

/** The completed water of each draw, and the uncertain inputs it was drawn from. */
export interface DrawnWaters {
  readonly keys: readonly string[];
  readonly waters: readonly Water[];
  /** Draws whose readings contradicted one another beyond repair and were replaced by the next that could be completed. */
  readonly replaced: number;
}

/** Keys of the uncertain inputs that the completion of a water test uses. */
export function waterInputKeys(test: WaterTest, options: CompleteOptions): readonly string[] {
  const keys = new Set<string>();
  completeWater(test, {
    ...options,
    draw: (key) => {
      keys.add(key);
      return null;
    },
  });
  return [...keys].sort();
}

/**
 * Completes a water test once for every draw of its uncertain inputs, exactly.
 *
 * @param column draws of an input in (0, 1) by its key, all of one length
 * @param central the water completed from central values, used where no draw could be completed at all
 */
export function drawWaters(
  test: WaterTest,
  options: CompleteOptions,
  central: Water,
  count: number,
  column: (key: string) => ArrayLike<number>,
): DrawnWaters {
  const keys = waterInputKeys(test, options);
  const systems = new Map<string, WaterSystem>();
  const columns = new Map(keys.map((key) => [key, column(key)]));
  const drawn: (Water | null)[] = [];
  for (let i = 0; i < count; i++) {
    const completed = completeWater(test, {
      ...options,
      systems,
      // A branch of the completion that the central one does not enter has no draws: its central value is used.
      draw: (key) => columns.get(key)?.[i] ?? null,
    });
    drawn.push(completed.ok ? completed.value : null);
  }
  const next = (from: number): Water => {
    for (let k = 0; k < count; k++) {
      const found = drawn[(from + k) % count];
      if (found !== null && found !== undefined) return found;
    }
    return central;
  };
  return { keys, waters: drawn.map((_, i) => next(i)), replaced: drawn.filter((w) => w === null).length };
}
