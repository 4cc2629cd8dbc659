/** Products above this are not exact; entries above the second are not safe to form coordinates from. */
const SAFE = Number.MAX_SAFE_INTEGER;
const SAFE_ENTRY = SAFE / 256;
/** In floating point, a difference this small against its terms is taken to be zero. */
const CANCELLED = 1e-11;

/**
 * Inverse of a basis of integer rows that is built up one row at a time, free of rounding.
 *
 * Holds an integer matrix N and an integer D such that the inverse of the basis is N / D (fraction-free
 * pivoting: every entry is a minor of the rows, so every division below is exact). At the start the basis is
 * the identity, its rows called labels; each accepted row takes the place of one label. If numbers leave the range
 * of exact integers, `exact` becomes false: start again with `reset(order, false)`, which works in floating point with
 * pivots chosen for accuracy.
 */
export class IntegerBasis {
  readonly size: number;
  readonly numerator: Float64Array;
  readonly taken: Uint8Array;
  denominator = 1;
  order = 0;
  rank = 0;
  exact = true;
  private readonly coordinates: Float64Array;

  /** @param size largest number of rows */
  constructor(size: number) {
    this.size = size;
    this.numerator = new Float64Array(size * size);
    this.taken = new Uint8Array(size);
    this.coordinates = new Float64Array(size);
  }

  /** Starts again from the identity of the given order (at most `size`). */
  reset(order: number, exact: boolean): void {
    this.order = order;
    this.rank = 0;
    this.denominator = 1;
    this.exact = exact;
    this.numerator.fill(0, 0, order * order);
    for (let k = 0; k < order; k++) this.numerator[k * order + k] = 1;
    this.taken.fill(0, 0, order);
  }

  /**
   * Coordinates of a sparse row in the present basis, multiplied by `denominator`.
   * @returns the internal buffer, valid until the next call
   */
  express(index: Int32Array, value: Float64Array, from: number, to: number): Float64Array {
    const { order, numerator, coordinates } = this;
    coordinates.fill(0, 0, order);
    for (let e = from; e < to; e++) {
      const a = value[e]!;
      const row = index[e]! * order;
      for (let k = 0; k < order; k++) coordinates[k] = coordinates[k]! + a * numerator[row + k]!;
    }
    if (!this.exact) this.silence(index, value, from, to);
    return coordinates;
  }

  /**
   * Takes the row into the basis if it is independent of the rows already taken.
   * @returns the position it took, or -1 if it depends on them
   */
  offer(index: Int32Array, value: Float64Array, from: number, to: number): number {
    const { order, taken } = this;
    const w = this.express(index, value, from, to);
    let at = -1;
    for (let k = 0; k < order; k++) {
      const size = Math.abs(w[k]!);
      if (taken[k] === 1 || size === 0) continue;
      // The pivot becomes the denominator: the smallest keeps integers small; in floating point the largest is safer.
      if (at < 0 || (this.exact ? size < Math.abs(w[at]!) : size > Math.abs(w[at]!))) at = k;
    }
    if (at < 0) return -1;
    this.pivot(w, at);
    taken[at] = 1;
    this.rank++;
    return at;
  }

  /** In floating point: coordinates that are what is left of a cancellation are zero. */
  private silence(index: Int32Array, value: Float64Array, from: number, to: number): void {
    const { order, numerator, coordinates } = this;
    for (let k = 0; k < order; k++) {
      let size = 0;
      for (let e = from; e < to; e++) size += Math.abs(value[e]! * numerator[index[e]! * order + k]!);
      if (Math.abs(coordinates[k]!) < CANCELLED * size) coordinates[k] = 0;
    }
  }

  private pivot(w: Float64Array, at: number): void {
    const { order, numerator } = this;
    const old = this.denominator;
    const pivot = w[at]!;
    let largest = Math.abs(pivot);
    for (let l = 0; l < order; l++) {
      const wl = w[l]!;
      if (l === at || (wl === 0 && pivot === old)) continue;
      for (let j = 0; j < order; j++) {
        const row = j * order;
        const left = numerator[row + l]! * pivot;
        const right = numerator[row + at]! * wl;
        const size = Math.max(Math.abs(left), Math.abs(right));
        if (size > SAFE) this.exact = false;
        const next = (left - right) / old;
        numerator[row + l] = !this.exact && Math.abs(left - right) < CANCELLED * size ? 0 : next;
        if (Math.abs(next) > largest) largest = Math.abs(next);
      }
    }
    this.denominator = pivot;
    if (this.exact && largest > SAFE_ENTRY) this.exact = false;
    if (!this.exact) this.normalise();
  }

  /** In floating point: denominator 1, so that entries keep their size. */
  private normalise(): void {
    const { order, numerator, denominator } = this;
    for (let e = 0; e < order * order; e++) numerator[e] = numerator[e]! / denominator;
    this.denominator = 1;
  }
}
