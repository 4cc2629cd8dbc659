/**
 * A share as a count out of `of`, never more than it is, so that what misses an aim does not seem to meet it: 0.88 is 17
 * of 20, not 18. Neither end is claimed by rounding: all only for 1, none only for 0.
 */
export function countOutOf(share: number, of: number): number {
  if (share >= 1) return of;
  if (share <= 0) return 0;
  return Math.min(of - 1, Math.max(1, Math.floor(share * of + 1e-9)));
}
