/**
 * A typeface in a file: the glyphs that its texts use, how wide they are, and which character each stands for
 * (ISO 32000-1:2008, 9.7 "Composite fonts" and 9.10.3 "ToUnicode CMaps"). Codes are glyph numbers, so the glyphs of a
 * text are the same in every file.
 */
import { deflateSync } from 'node:zlib';
import type { OpenFont } from './fonts.ts';
import type { Inside, Reference } from './inside-pdfkit.ts';
import { subsetFont } from './subset-font.ts';

/** Writes the objects of a font; `used` is the character of each glyph shown. Six capitals before the name mark a subset. */
export function embedFont(
  document: Inside,
  font: OpenFont,
  used: ReadonlyMap<number, number>,
  index: number,
): Reference {
  const { source } = font;
  const glyphs = [...used.keys()].toSorted((a, b) => a - b);
  const stream = (data: object, bytes: Uint8Array): Reference => {
    const reference = document.ref({ ...data, Filter: 'FlateDecode' });
    reference.end(deflateSync(bytes));
    return reference;
  };
  const written = (data: object): Reference => {
    const reference = document.ref(data);
    reference.end();
    return reference;
  };
  const program = subsetFont(font.file, glyphs);
  const name = `READA${String.fromCharCode(65 + index)}+${source.postscriptName.replaceAll(' ', '_')}`;
  const thousandths = (units: number): number => (units * 1000) / source.unitsPerEm;
  const { minX, minY, maxX, maxY } = source.bbox;
  const descriptor = written({
    Type: 'FontDescriptor',
    FontName: name,
    Flags: flagsOf(source.post.isFixedPitch !== 0),
    FontBBox: [minX, minY, maxX, maxY].map(thousandths),
    ItalicAngle: source.italicAngle,
    Ascent: font.ascent * 1000,
    Descent: -font.descent * 1000,
    CapHeight: font.capHeight * 1000,
    XHeight: font.xHeight * 1000,
    StemV: 0,
    FontFile2: stream({ Length1: program.length }, program),
  });
  const descendant = written({
    Type: 'Font',
    Subtype: 'CIDFontType2',
    BaseFont: name,
    // Boxed texts are strings to pdfkit, plain ones names.
    CIDSystemInfo: { Registry: new String('Adobe'), Ordering: new String('Identity'), Supplement: 0 },
    FontDescriptor: descriptor,
    CIDToGIDMap: 'Identity',
    W: widthsOf(font, used, glyphs),
  });
  return written({
    Type: 'Font',
    Subtype: 'Type0',
    BaseFont: name,
    Encoding: 'Identity-H',
    DescendantFonts: [descendant],
    ToUnicode: stream({}, Buffer.from(toUnicode(used, glyphs), 'latin1')),
  });
}

/** Symbolic, because its codes are of no standard encoding, and of one width if it is (table 123). */
function flagsOf(isFixedPitch: boolean): number {
  return 4 + (isFixedPitch ? 1 : 0);
}

/** Runs of neighbouring glyphs, each with its first number and its widths (9.7.4.3). */
function widthsOf(
  font: OpenFont,
  used: ReadonlyMap<number, number>,
  glyphs: readonly number[],
): (number | number[])[] {
  const runs: (number | number[])[] = [];
  let run: number[] = [];
  glyphs.forEach((glyph, index) => {
    if (index === 0 || glyphs[index - 1] !== glyph - 1) {
      run = [];
      runs.push(glyph, run);
    }
    run.push(font.glyph(used.get(glyph) ?? 0).advance * 1000);
  });
  return runs;
}

const mostInBlock = 100;

function toUnicode(used: ReadonlyMap<number, number>, glyphs: readonly number[]): string {
  const blocks: string[] = [];
  for (let from = 0; from < glyphs.length; from += mostInBlock) {
    const lines = glyphs
      .slice(from, from + mostInBlock)
      .map((glyph) => `<${hex(glyph)}> <${utf16(used.get(glyph) ?? 0xfffd)}>`);
    blocks.push(`${lines.length} beginbfchar\n${lines.join('\n')}\nendbfchar`);
  }
  return `/CIDInit /ProcSet findresource begin
12 dict begin
begincmap
/CIDSystemInfo << /Registry (Adobe) /Ordering (UCS) /Supplement 0 >> def
/CMapName /Adobe-Identity-UCS def
/CMapType 2 def
1 begincodespacerange
<0000> <ffff>
endcodespacerange
${blocks.join('\n')}
endcmap
CMapName currentdict /CMap defineresource pop
end
end
`;
}

function hex(code: number): string {
  return code.toString(16).padStart(4, '0');
}

function utf16(codePoint: number): string {
  const text = String.fromCodePoint(codePoint);
  return Array.from({ length: text.length }, (_, index) => hex(text.charCodeAt(index))).join('');
}
