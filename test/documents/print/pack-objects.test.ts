import { beforeAll, expect, it } from 'vitest';
import { openFonts } from '../../../src/documents/print/fonts.ts';
import { layOut } from '../../../src/documents/print/lay-out.ts';
import { measureWith } from '../../../src/documents/print/measure.ts';
import { paint } from '../../../src/documents/print/paint.ts';
import { readContent } from '../../../src/documents/print/read-content.ts';
import { packedObjects } from './packed-objects.ts';
import { fontBytes } from './real-fonts.ts';

const rows = Array.from({ length: 300 }, (_, row) => `<row><cell>row ${row}</cell><cell>two</cell></row>`);
let pdf: Buffer;
beforeAll(async () => {
  const fonts = await openFonts(fontBytes);
  const laid = layOut(
    readContent(
      `<document title="T" language="en" paper="A4"><table><column/><column/>${rows.join('')}</table></document>`,
    ),
    measureWith(fonts),
  );
  pdf = Buffer.from(await paint(laid, { fonts, date: new Date(0) }));
});

/** The table of objects of a file (ISO 32000-1:2008, 7.5.8): entries of one, four and two bytes. */
async function objectTable(): Promise<{ kind: number; first: number; second: number }[]> {
  const { inflateSync } = await import('node:zlib');
  const start = Number(/startxref\n(\d+)\n%%EOF\s*$/.exec(pdf.subarray(-40).toString('latin1'))?.[1]);
  const head = /^\d+ 0 obj\n<<.*\/W \[1 4 2\].*\/Length (\d+) >>\nstream\n/.exec(
    pdf.subarray(start).toString('latin1'),
  );
  if (head === null) throw new Error('No table of objects stands where the file says.');
  const from = start + head[0].length;
  const entries = inflateSync(pdf.subarray(from, from + Number(head[1])));
  return Array.from({ length: entries.length / 7 }, (_, index) => ({
    kind: entries.readUInt8(7 * index),
    first: entries.readUInt32BE(7 * index + 1),
    second: entries.readUInt16BE(7 * index + 5),
  }));
}

it('every object stands where the table of the file says, packed or not', async () => {
  const table = await objectTable();
  const packed = packedObjects(pdf);
  const numbers = [...packed.keys()];
  expect(numbers.length).toBeGreaterThan(900);
  table.forEach(({ kind, first, second }, number) => {
    if (number === 0) return;
    if (kind === 1) {
      const head = `${number} 0 obj`;
      expect(pdf.subarray(first, first + head.length).toString('latin1')).toBe(head);
    } else {
      expect(kind).toBe(2);
      expect(table[first]?.kind).toBe(1);
      expect(packed.has(number)).toBe(true);
      // Objects of one stream follow each other, so that its place is its distance from the first.
      const place = numbers.indexOf(number);
      expect(table[numbers[place - second] ?? 0]).toMatchObject({ first, second: 0 });
    }
  });
});

it('each part of the structure points to its parent, and its parent to it', () => {
  const packed = packedObjects(pdf);
  const parts = [...packed].filter(([, text]) => text.includes('/S/'));
  expect(parts.length).toBeGreaterThan(900);
  let roots = 0;
  for (const [number, text] of parts) {
    const parent = packed.get(Number(/\/P (\d+) 0 R/.exec(text)?.[1]));
    if (parent === undefined) roots += 1;
    else expect(/\/K\[(.*?)\]/.exec(parent)?.[1]).toMatch(new RegExp(`(^| )${number} 0 R`));
  }
  expect(roots).toBe(1);
});
