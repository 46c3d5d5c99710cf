/** Things that share a key, in the order in which each key was first met. */
export function groupBy<Thing, Key>(
  things: Iterable<Thing>,
  keyOf: (thing: Thing) => Key,
): ReadonlyMap<Key, readonly [Thing, ...Thing[]]> {
  const groups = new Map<Key, [Thing, ...Thing[]]>();
  for (const thing of things) {
    const key = keyOf(thing);
    const group = groups.get(key);
    if (group) group.push(thing);
    else groups.set(key, [thing]);
  }
  return groups;
}
