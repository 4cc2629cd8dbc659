import { startTransition, useEffect, useState } from "react";

/**
 * Parts of a long page that come in one by one: the first can be used while the browser lays out the next, and no step
 * keeps it for long.
 *
 * @param all how many there are in the end
 * @returns how many are to be shown by now, one at first
 */
export function useOneByOne(all: number): number {
  const [count, setCount] = useState(1);
  useEffect(() => {
    if (count < all)
      startTransition(() => {
        setCount(count + 1);
      });
  }, [count, all]);
  return count;
}
