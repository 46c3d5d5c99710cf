/**
 * A TrueType font cut down to some of its glyphs, which keep their numbers: the outlines of all others are left
 * empty, and what lies behind the last one is cut off. So the same text is the same glyphs in every document.
 *
 * OpenType 1.9: "Font file", tables `glyf`, `loca`, `hmtx`, `hhea`, `maxp`, `head`. The tables kept are those that
 * ISO 32000-1:2008, 9.9, asks of a TrueType font program in a CIDFont.
 */
import { aligned, fontFile, tablesOf, viewOf } from './font-tables.ts';

const keptTables = ['cvt ', 'fpgm', 'glyf', 'head', 'hhea', 'hmtx', 'loca', 'maxp', 'prep'];

/** Flags of a part of a composite glyph (table `glyf`, "Composite glyph description"). */
const composite = { words: 0x1, scale: 0x8, more: 0x20, twoScales: 0x40, matrix: 0x80 };

/** @param font the plain font file, with outlines in a `glyf` table */
export function subsetFont(font: Uint8Array, glyphs: Iterable<number>): Uint8Array {
  const tables = tablesOf(font);
  const table = (tag: string): Uint8Array => {
    const found = tables.get(tag);
    if (found === undefined) throw new Error(`The font has no table ${tag}.`);
    return found;
  };
  const glyf = table('glyf');
  const starts = glyphStarts(table('loca'), viewOf(table('head')).getInt16(50) !== 0);
  const kept = withParts(glyphs, glyf, starts);
  const count = Math.max(...kept) + 1;

  const loca = new DataView(new ArrayBuffer(4 * (count + 1)));
  const outlines: Uint8Array[] = [];
  let length = 0;
  for (let glyph = 0; glyph < count; glyph += 1) {
    loca.setUint32(4 * glyph, length);
    if (!kept.has(glyph)) continue;
    const outline = glyf.subarray(starts[glyph], starts[glyph + 1]);
    outlines.push(outline);
    length += aligned(outline.length);
  }
  loca.setUint32(4 * count, length);

  // Copies: the file is used again.
  const head = Uint8Array.from(table('head'));
  viewOf(head).setInt16(50, 1);
  const maxp = Uint8Array.from(table('maxp'));
  viewOf(maxp).setUint16(4, count);
  const hhea = Uint8Array.from(table('hhea'));
  const metrics = Math.min(viewOf(hhea).getUint16(34), count);
  viewOf(hhea).setUint16(34, metrics);
  const changed = new Map<string, Uint8Array>([
    ['glyf', padded(outlines, length)],
    ['head', head],
    ['hhea', hhea],
    ['hmtx', table('hmtx').subarray(0, 4 * metrics + 2 * (count - metrics))],
    ['loca', new Uint8Array(loca.buffer)],
    ['maxp', maxp],
  ]);
  return fontFile(
    keptTables.flatMap((tag): [string, Uint8Array][] => {
      const found = changed.get(tag) ?? tables.get(tag);
      return found === undefined ? [] : [[tag, found]];
    }),
  );
}

/** Where the outline of each glyph begins in `glyf`, and where the last one ends. */
function glyphStarts(loca: Uint8Array, isLong: boolean): number[] {
  const view = viewOf(loca);
  return Array.from({ length: loca.length / (isLong ? 4 : 2) }, (_, index) =>
    isLong ? view.getUint32(4 * index) : 2 * view.getUint16(2 * index),
  );
}

/** The glyphs, the one for missing characters, and all that they are composed of. */
function withParts(glyphs: Iterable<number>, glyf: Uint8Array, starts: readonly number[]): Set<number> {
  // A set is walked in the order of what was put in, also while it grows.
  const kept = new Set([0, ...glyphs]);
  for (const glyph of kept) {
    const start = starts[glyph] ?? 0;
    const end = starts[glyph + 1] ?? start;
    if (end === start) continue;
    const view = new DataView(glyf.buffer, glyf.byteOffset + start, end - start);
    if (view.getInt16(0) >= 0) continue;
    for (let at = 10, more = true; more; ) {
      const flags = view.getUint16(at);
      kept.add(view.getUint16(at + 2));
      const scale =
        flags & composite.scale ? 2 : flags & composite.twoScales ? 4 : flags & composite.matrix ? 8 : 0;
      at += (flags & composite.words ? 8 : 6) + scale;
      more = (flags & composite.more) !== 0;
    }
  }
  return kept;
}

function padded(pieces: readonly Uint8Array[], length: number): Uint8Array {
  const whole = new Uint8Array(length);
  let at = 0;
  for (const piece of pieces) {
    whole.set(piece, at);
    at += aligned(piece.length);
  }
  return whole;
}
