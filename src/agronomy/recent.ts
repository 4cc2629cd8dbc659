/**
 * A thing by its key: as it was made before, else made now. The ones used last are kept, never all dropped at once, so
 * that what is in use stays one and the same thing.
 *
 * @param most kept at most
 */
export function recent<T>(things: Map<string, T>, key: string, most: number, make: () => T): T {
  const found = things.get(key) ?? make();
  // The place in the map is that of the last use.
  things.delete(key);
  things.set(key, found);
  const [oldest] = things.keys();
  if (things.size > most && oldest !== undefined) things.delete(oldest);
  return found;
}
