/** Hash of a text to four 32-bit words: four FNV-1a runs with different starts. */
function seedWords(text: string): [number, number, number, number] {
  const run = (start: number): number => {
    let hash = start;
    for (let i = 0; i < text.length; i++) hash = Math.imul(hash ^ text.charCodeAt(i), 0x01000193);
    return hash >>> 0;
  };
  return [run(0x811c9dc5), run(0x9e3779b9), run(0x243f6a88), run(0xb7e15162)];
}

/**
 * A stream of uniform random numbers in [0, 1) that depends on the seed text alone.
 *
 * @source the small fast counting generator of Doty-Humphrey (sfc32, public domain), warmed up by 15 steps
 */
export function randomFrom(seed: string): () => number {
  let [a, b, c, counter] = seedWords(seed);
  const next = (): number => {
    const sum = (a + b + counter) | 0;
    counter = (counter + 1) | 0;
    a = b ^ (b >>> 9);
    b = (c + (c << 3)) | 0;
    c = ((c << 21) | (c >>> 11)) + sum;
    return (sum >>> 0) / 4294967296;
  };
  for (let i = 0; i < 15; i++) next();
  return next;
}

/**
 * One column of a Latin hypercube: `count` numbers in (0, 1), one in each of `count` equal strata, in random order.
 *
 * Columns of different seeds are independent, so a matrix grows column by column and an input keeps its draws whatever
 * other inputs there are.
 * @source McKay, Beckman & Conover (1979) Technometrics 21:239
 */
export function latinColumn(count: number, seed: string): Float64Array {
  const random = randomFrom(seed);
  const column = new Float64Array(count);
  for (let i = 0; i < count; i++) {
    // Kept off the ends, where an inverse distribution has no value.
    column[i] = (i + Math.min(1 - 1e-9, Math.max(1e-9, random()))) / count;
  }
  for (let i = count - 1; i > 0; i--) {
    const j = Math.floor(random() * (i + 1));
    const kept = column[i]!;
    column[i] = column[j]!;
    column[j] = kept;
  }
  return column;
}
