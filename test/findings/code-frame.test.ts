import fc from 'fast-check';
import stringWidth from 'string-width';
import { expect, test } from 'vitest';
import { codeFrame } from '../../src/findings/code-frame.ts';
import { SourceText } from '../../src/findings/source-text.ts';

function drawn(text: string, needle: string, width = 80): string {
  const source = new SourceText('x.yaml', text);
  const at = text.indexOf(needle);
  const frame = codeFrame(source, source.placeAt(at, at + needle.length), width, stringWidth);
  return `${frame.line}\n${frame.margin}${frame.carets}`;
}

test('the carets stand under the words meant', () => {
  expect(drawn('repeaters:\n  gap: { offset: -0.5 }\n', '-0.5')).toBe(
    ['    2 |   gap: { offset: -0.5 }', '      |                  ^^^^'].join('\n'),
  );
});

test('wide letters, accents and tabs before the caret do not push it aside', () => {
  for (const before of ['Łódź: ', '無線: ', 'e\u0301: ', '📻: ', '\t', 'a\tb: ', '👩‍🚒: ']) {
    const [line = '', carets = ''] = drawn(`${before}WRONG`, 'WRONG').split('\n');
    expect(stringWidth(carets.slice(0, carets.indexOf('^'))), before).toBe(
      stringWidth(line.slice(0, line.indexOf('WRONG'))),
    );
    expect(carets.trimEnd().endsWith('^^^^^')).toBe(true);
  }
});

test('a control character in the line is shown, never sent to the terminal', () => {
  expect(drawn('name: \u001b[2J!x', '!x')).toBe('    1 | name: ␛[2J!x\n      |           ^^');
});

test('a long line is cut on both sides of the caret, and says so', () => {
  const [line = '', carets = ''] = drawn(`${'a'.repeat(500)}WRONG${'b'.repeat(500)}`, 'WRONG').split('\n');
  expect(line).toMatch(/^ {4}1 \| …a+WRONGb+…$/);
  expect(line.length).toBe(80);
  expect(carets.indexOf('^')).toBe(line.indexOf('WRONG'));
});

test('the end of a long line is shown without room wasted behind it', () => {
  const [line = ''] = drawn(`${'a'.repeat(500)}WRONG`, 'WRONG').split('\n');
  expect(line).toMatch(/^ {4}1 \| …a{60,}WRONG$/);
});

test('a place at the end of a line, or beyond the text, still has one caret', () => {
  const source = new SourceText('x', 'ab\n');
  const frame = codeFrame(source, source.placeAt(2), 80, stringWidth);
  expect(`${frame.line}\n${frame.margin}${frame.carets}`).toBe('    1 | ab\n      |   ^');
  expect(codeFrame(source, source.placeAt(99), 80, stringWidth)).toEqual({
    line: '    2 |',
    margin: '      | ',
    carets: '^',
  });
});

test('a place over several lines is underlined to the end of its first', () => {
  const source = new SourceText('x', 'gap:\n  offset: 1\n');
  expect(codeFrame(source, source.placeAt(0, 16), 80, stringWidth).carets).toBe('^^^^');
});

test('a line of megabytes is drawn at once', () => {
  const text = 'x'.repeat(20_000_000);
  const source = new SourceText('x', text);
  const started = performance.now();
  codeFrame(source, source.placeAt(10_000_000, 20_000_000), 80, stringWidth);
  // Segmenting the whole line takes many seconds; half of one leaves room for a busy machine.
  expect(performance.now() - started).toBeLessThan(500);
});

test('no frame is wider than asked, whatever the line', () => {
  const unit = fc.constantFrom('a', ' ', '\t', '無', 'e\u0301', '📻', '\u001b', '\u202e', '👩‍🚒', '\ud83d');
  fc.assert(
    fc.property(
      fc.string({ unit, maxLength: 200 }),
      fc.nat(400),
      fc.nat(40),
      fc.integer({ min: 40, max: 100 }),
      (text, from, length, width) => {
        const source = new SourceText('x', text);
        const frame = codeFrame(source, source.placeAt(from, from + length), width, stringWidth);
        expect(stringWidth(frame.line)).toBeLessThanOrEqual(width);
        expect(stringWidth(frame.margin + frame.carets)).toBeLessThanOrEqual(width);
        expect(frame.line).not.toMatch(/\p{Cc}/u);
      },
    ),
  );
});
