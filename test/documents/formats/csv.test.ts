import fc from 'fast-check';
import { expect, it } from 'vitest';
import { type CsvField, csv } from '../../../src/documents/formats/csv.ts';

const writeCsv = (head: readonly string[], rows: readonly (readonly CsvField[])[]): string =>
  new TextDecoder('utf-8', { ignoreBOM: true }).decode(csv([head, ...rows]));

it('fields are quoted and lines ended as RFC 4180, section 2, says', () => {
  // Section 2, points 1, 2, 5, 6 and 7; the examples of those points.
  expect(writeCsv(['aaa', 'bbb', 'ccc'], [['zzz', 'yyy', 'xxx']])).toBe('aaa,bbb,ccc\r\nzzz,yyy,xxx\r\n');
  expect(
    writeCsv(
      ['a', 'b'],
      [
        ['b \r\nbb', 'c,d'],
        ['b"bb', ' spaces stay '],
      ],
    ),
  ).toBe('a,b\r\n"b \r\nbb","c,d"\r\n"b""bb", spaces stay \r\n');
});

it.each(['=1+1', '+1', '-1', '@SUM(A1)', '\tx', '\rx', '\nx', '\0x'])(
  'a text that a spreadsheet would take for a formula gets an apostrophe: %j',
  (text) => {
    // CWE-1236 and OWASP ASVS 5.0, 1.2.10.
    expect(writeCsv(['t'], [[text]])).toMatch(/^t\r\n"?'/);
  },
);

it('a number stays a number, with its sign and its decimals', () => {
  expect(writeCsv(['shift', 'receive', 'slot'], [[-0.6, { figure: '146.940' }, 3]])).toBe(
    'shift,receive,slot\r\n-0.6,146.940,3\r\n',
  );
  for (const figure of ['=1', '1e9', '1,5', '', 'NaN', '1\n2'])
    expect(() => writeCsv(['x'], [[{ figure }]])).toThrow('no plain decimal number');
  expect(() => writeCsv(['x'], [[Number.NaN]])).toThrow('no plain decimal number');
});

it('a row with a field too few is a fault', () => {
  expect(() => writeCsv(['a', 'b'], [['x']])).toThrow('has 1 fields; the head has 2');
});

it('what is written is read back, whatever the text', () => {
  fc.assert(
    fc.property(
      fc.array(fc.tuple(fc.string({ unit: 'grapheme' }), fc.string()), { maxLength: 5 }),
      (rows) => {
        expect(read(writeCsv(['a', 'b'], rows as CsvField[][])).slice(1)).toEqual(
          rows.map((row) => row.map((text) => (/^[=+\-@\t\r\n\0]/.test(text) ? `'${text}` : text))),
        );
      },
    ),
  );
});

/** A reader of RFC 4180 as plain as can be. */
function read(csv: string): string[][] {
  const rows: string[][] = [[]];
  for (let at = 0; at < csv.length; ) {
    let value = '';
    if (csv[at] === '"') {
      at += 1;
      while (csv[at] !== '"' || csv[at + 1] === '"') {
        value += csv[at];
        at += csv[at] === '"' ? 2 : 1;
      }
      at += 1;
    } else while (csv[at] !== ',' && csv[at] !== '\r') value += csv[at++];
    rows.at(-1)?.push(value);
    if (csv[at] === ',') at += 1;
    else {
      at += 2;
      if (at < csv.length) rows.push([]);
    }
  }
  return rows;
}
