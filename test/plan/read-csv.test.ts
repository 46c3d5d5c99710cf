import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { csv } from '../../src/documents/formats/csv.ts';
import { readCsv } from '../../src/plan/read-csv.ts';

const cells = (text: string) => readCsv(text).map((row) => row.cells);

describe('CSV as RFC 4180 and spreadsheets write it', () => {
  // RFC 4180 (October 2005), section 2, the examples of its numbered points.
  test.each([
    [
      'aaa,bbb,ccc\r\nzzz,yyy,xxx\r\n',
      [
        ['aaa', 'bbb', 'ccc'],
        ['zzz', 'yyy', 'xxx'],
      ],
    ],
    [
      'aaa,bbb,ccc\r\nzzz,yyy,xxx',
      [
        ['aaa', 'bbb', 'ccc'],
        ['zzz', 'yyy', 'xxx'],
      ],
    ],
    [
      '"aaa","b\r\nbb","ccc"\r\nzzz,yyy,xxx',
      [
        ['aaa', 'b\r\nbb', 'ccc'],
        ['zzz', 'yyy', 'xxx'],
      ],
    ],
    ['"aaa","b""bb","ccc"', [['aaa', 'b"bb', 'ccc']]],
  ])('%j', (text, rows) => {
    expect(cells(text)).toEqual(rows);
  });

  test('semicolons, tabs, a byte-order mark, blank lines; each row knows its line', () => {
    expect(cells('\uFEFFa;b\n1,5;2\n')).toEqual([
      ['a', 'b'],
      ['1,5', '2'],
    ]);
    expect(cells('a\tb\n1\t2')).toEqual([
      ['a', 'b'],
      ['1', '2'],
    ]);
    expect(readCsv('a,b\n\n"x\ny",2\n3,4').map(({ line }) => line)).toEqual([1, 3, 5]);
  });

  test('what the program writes it reads back', () => {
    const text = fc
      .string({ unit: 'grapheme' })
      .map((word) => word.replace(/\r/g, '').trim())
      .filter((word) => word !== '' && !/^[=+\-@\t\n\0']/.test(word));
    fc.assert(
      fc.property(fc.array(fc.tuple(text, text), { minLength: 1 }), (rows) => {
        expect(
          cells(new TextDecoder('utf-8', { ignoreBOM: true }).decode(csv([['a', 'b'], ...rows]))).slice(1),
        ).toEqual(rows);
      }),
    );
  });
});
