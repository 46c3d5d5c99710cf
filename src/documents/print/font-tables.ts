/**
 * The tables of a font file (OpenType 1.9, "Font file"): taken out of a file, put together into one, and what the
 * documents read of them themselves.
 */

/** The font's tables by their tags, each a part of the file. */
export function tablesOf(file: Uint8Array): Map<string, Uint8Array> {
  const from = viewOf(file);
  return new Map(
    Array.from({ length: from.getUint16(4) }, (_, index) => {
      const entry = 12 + 16 * index;
      const tag = String.fromCharCode(...file.subarray(entry, entry + 4));
      const offset = from.getUint32(entry + 8);
      return [tag, file.subarray(offset, offset + from.getUint32(entry + 12))];
    }),
  );
}

/** Version of a file whose outlines are TrueType's. */
const trueType = 0x00010000;

/** @param tables sorted by their tags, as a font file has them */
export function fontFile(
  tables: readonly (readonly [tag: string, bytes: Uint8Array])[],
  version = trueType,
): Uint8Array {
  const count = tables.length;
  const directory = 12 + 16 * count;
  const whole = new Uint8Array(tables.reduce((sum, [, bytes]) => sum + aligned(bytes.length), directory));
  const view = viewOf(whole);
  const power = 2 ** Math.floor(Math.log2(count));
  view.setUint32(0, version);
  view.setUint16(4, count);
  view.setUint16(6, power * 16);
  view.setUint16(8, Math.log2(power));
  view.setUint16(10, (count - power) * 16);
  let offset = directory;
  let adjustment = 0;
  tables.forEach(([tag, bytes], index) => {
    const entry = 12 + 16 * index;
    for (let letter = 0; letter < 4; letter += 1) whole[entry + letter] = tag.charCodeAt(letter);
    whole.set(bytes, offset);
    if (tag === 'head') {
      adjustment = offset + 8;
      view.setUint32(adjustment, 0);
    }
    view.setUint32(entry + 4, sumOf(view, offset, aligned(bytes.length)));
    view.setUint32(entry + 8, offset);
    view.setUint32(entry + 12, bytes.length);
    offset += aligned(bytes.length);
  });
  // "Calculating checksums": the sum of the whole file is to be this number.
  if (adjustment > 0) view.setUint32(adjustment, (0xb1b0afba - sumOf(view, 0, whole.length)) >>> 0);
  return whole;
}

/**
 * The advance of each glyph in units of the em, from the tables `hhea` and `hmtx`: glyphs beyond the last that has one
 * of its own advance as that does. fontkit measures the outline of a glyph before it tells how wide it is.
 */
export function advanceReader(file: Uint8Array): (glyph: number) => number {
  const tables = tablesOf(file);
  const [head, metrics] = [tables.get('hhea'), tables.get('hmtx')];
  if (head === undefined || metrics === undefined) throw new Error('The font has no widths.');
  const last = viewOf(head).getUint16(34) - 1;
  const view = viewOf(metrics);
  return (glyph) => view.getUint16(4 * Math.min(glyph, last));
}

export function viewOf(bytes: Uint8Array): DataView {
  return new DataView(bytes.buffer, bytes.byteOffset, bytes.byteLength);
}

export function aligned(length: number): number {
  return (length + 3) & ~3;
}

function sumOf(view: DataView, offset: number, length: number): number {
  let sum = 0;
  for (let at = offset; at < offset + length; at += 4) sum = (sum + view.getUint32(at)) >>> 0;
  return sum;
}
