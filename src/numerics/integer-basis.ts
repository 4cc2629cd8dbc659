/** Integers above this are not safe to multiply further. */
const SAFE = Number.MAX_SAFE_INTEGER;

/**
 * Inverse of a basis of integer rows that is built up one row at a time, free of rounding.
 *
 * Holds an integer matrix N and an integer D such that the inverse of the basis is N / D (fraction-free
 * pivoting: every entry is a minor of the rows, so every division below is exact). At the start the basis is
 * the identity, its rows called labels; each accepted row takes the place of one label. If a product leaves the
 * range of exact integers, the work goes on in floating point and `exact` becomes false.
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
    if (!this.exact) {
      const noise = 1e-9 * Math.abs(this.denominator);
      for (let k = 0; k < order; k++) if (Math.abs(coordinates[k]!) < noise) coordinates[k] = 0;
    }
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
        if (Math.abs(left) > SAFE || Math.abs(right) > SAFE) this.exact = false;
        const next = (left - right) / old;
        numerator[row + l] = next;
        if (Math.abs(next) > largest) largest = Math.abs(next);
      }
    }
    this.denominator = pivot;
    if (!this.exact) this.normalise(largest);
  }

  /** In floating point: denominator 1 and entries that are noise set to zero. */
  private normalise(largest: number): void {
    const { order, numerator } = this;
    const d = this.denominator;
    const noise = 1e-12 * largest;
    for (let e = 0; e < order * order; e++) {
      numerator[e] = Math.abs(numerator[e]!) < noise ? 0 : numerator[e]! / d;
    }
    this.denominator = 1;
  }
}
