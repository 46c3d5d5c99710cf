import fc from 'fast-check';
import { expect, test } from 'vitest';
import { placeText } from '../../src/findings/finding.ts';
import { SourceText } from '../../src/findings/source-text.ts';

const source = new SourceText('plans/x.yaml', 'plan:\r\n  title: Łódź 📻\n\nend');

test('lines and columns count from one, columns in UTF-16 units', () => {
  const text = source.text;
  expect(source.placeAt(text.indexOf('title'), text.indexOf('title') + 5)).toEqual({
    file: 'plans/x.yaml',
    line: 2,
    column: 3,
    endLine: 2,
    endColumn: 8,
  });
  // The radio takes two UTF-16 units.
  expect(source.placeAt(text.indexOf('📻') + 2)).toMatchObject({ line: 2, column: 17 });
  expect(placeText(source.placeAt(text.indexOf('end')))).toBe('plans/x.yaml:4:1');
});

test('a line comes without its ending, whether LF or CRLF', () => {
  expect([0, 1, 2, 3, 4, 5].map((line) => source.lineAt(line))).toEqual([
    '',
    'plan:',
    '  title: Łódź 📻',
    '',
    'end',
    '',
  ]);
});

test('an offset beyond the text is drawn back to its end', () => {
  expect(source.placeAt(9999)).toMatchObject({ line: 4, column: 4 });
  expect(source.placeAt(-5)).toMatchObject({ line: 1, column: 1 });
  expect(new SourceText('-', '').placeAt(3)).toMatchObject({ line: 1, column: 1 });
});

test('every offset has one place, and the place leads back to it', () => {
  fc.assert(
    fc.property(
      fc.string({ unit: fc.constantFrom('a', '\n', '\r', '\t', 'é') }),
      fc.nat(40),
      (text, offset) => {
        const at = Math.min(offset, text.length);
        const place = new SourceText('x', text).placeAt(at);
        const before = text
          .split('\n')
          .slice(0, place.line - 1)
          .reduce((sum, line) => sum + line.length + 1, 0);
        expect(before + place.column - 1).toBe(at);
      },
    ),
  );
});
