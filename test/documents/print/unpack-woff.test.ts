import { expect, it } from 'vitest';
import { unpackWoff } from '../../../src/documents/print/unpack-woff.ts';
import { fontBytes } from './real-fonts.ts';

it('the tables of an unpacked font have the checksums its directory states', () => {
  // OpenType 1.9, "Calculating checksums": the sum of the table's 32-bit words; head is summed without its own total.
  const sfnt = unpackWoff(fontBytes.regular());
  const view = new DataView(sfnt.buffer, sfnt.byteOffset, sfnt.byteLength);
  const count = view.getUint16(4);
  expect(count).toBeGreaterThan(8);
  for (let index = 0; index < count; index += 1) {
    const entry = 12 + 16 * index;
    const tag = String.fromCharCode(...sfnt.subarray(entry, entry + 4));
    const offset = view.getUint32(entry + 8);
    let sum = 0;
    for (let at = 0; at < view.getUint32(entry + 12); at += 4)
      if (tag !== 'head' || at !== 8) sum = (sum + view.getUint32(offset + at)) >>> 0;
    expect(sum, tag).toBe(view.getUint32(entry + 4));
  }
});

it('a font that is no WOFF is left as it is', () => {
  const plain = fontBytes.fallback();
  expect(unpackWoff(plain)).toBe(plain);
});
