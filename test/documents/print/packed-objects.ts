import { inflateSync } from 'node:zlib';

/**
 * The objects that lie in the object streams of a file, by their numbers (ISO 32000-1:2008, 7.5.7): the stream begins
 * with N pairs of a number and an offset from First.
 */
export function packedObjects(pdf: Uint8Array): ReadonlyMap<number, string> {
  const bytes = Buffer.from(pdf);
  const text = bytes.toString('latin1');
  const found = new Map<number, string>();
  for (const { index, 0: head } of text.matchAll(/<<[^<>]*\/Type \/ObjStm[^<>]*>>\s*stream\n/g)) {
    const figure = (key: string): number => Number(new RegExp(`/${key} (\\d+)`).exec(head)?.[1]);
    const start = index + head.length;
    const plain = inflateSync(bytes.subarray(start, start + figure('Length'))).toString('latin1');
    const first = figure('First');
    const pairs = plain.slice(0, first).trim().split(/\s+/).map(Number);
    if (pairs.length !== 2 * figure('N')) throw new Error('The stream does not hold what it says.');
    for (let pair = 0; pair < pairs.length; pair += 2) {
      const end = pairs[pair + 3];
      found.set(
        pairs[pair] ?? 0,
        plain.slice(first + (pairs[pair + 1] ?? 0), end === undefined ? undefined : first + end).trim(),
      );
    }
  }
  return found;
}
