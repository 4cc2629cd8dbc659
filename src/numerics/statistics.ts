/**
 * Quantile of sorted values, linear between them.
 *
 * @param sorted ascending, at least one
 * @param p 0…1
 * @source Hyndman & Fan (1996) The American Statistician 50:361, definition 7
 */
export function quantileOf(sorted: ArrayLike<number>, p: number): number {
  const at = p * (sorted.length - 1);
  const below = Math.floor(at);
  const low = sorted[below]!;
  const high = sorted[Math.min(sorted.length - 1, below + 1)]!;
  return low + (at - below) * (high - low);
}

/** Ranks 1…n of values, ties sharing their mean rank. */
export function ranksOf(values: ArrayLike<number>): Float64Array {
  const order = Array.from(values, (_, i) => i).sort((a, b) => values[a]! - values[b]!);
  const ranks = new Float64Array(values.length);
  for (let start = 0; start < order.length;) {
    let end = start;
    while (end + 1 < order.length && values[order[end + 1]!] === values[order[start]!]) end++;
    for (let k = start; k <= end; k++) ranks[order[k]!] = 1 + (start + end) / 2;
    start = end + 1;
  }
  return ranks;
}

/** Pearson's correlation of two series of equal length; 0 when one of them does not vary. */
export function correlationOf(a: ArrayLike<number>, b: ArrayLike<number>): number {
  const n = a.length;
  let meanA = 0;
  let meanB = 0;
  for (let i = 0; i < n; i++) {
    meanA += a[i]! / n;
    meanB += b[i]! / n;
  }
  let aa = 0;
  let bb = 0;
  let ab = 0;
  for (let i = 0; i < n; i++) {
    aa += (a[i]! - meanA) ** 2;
    bb += (b[i]! - meanB) ** 2;
    ab += (a[i]! - meanA) * (b[i]! - meanB);
  }
  return aa > 0 && bb > 0 ? ab / Math.sqrt(aa * bb) : 0;
}
