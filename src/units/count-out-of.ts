/** A share as a count out of `of`. Neither end is claimed by rounding: all only for 1, none only for 0. */
export function countOutOf(share: number, of: number): number {
  if (share >= 1) return of;
  if (share <= 0) return 0;
  return Math.min(of - 1, Math.max(1, Math.round(share * of)));
}
