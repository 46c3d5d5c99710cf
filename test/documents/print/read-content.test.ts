import { readFileSync } from 'node:fs';
import { expect, it } from 'vitest';
import { readContent } from '../../../src/documents/print/read-content.ts';

const wrap = (body: string) => `<document title="T" language="en" paper="A4">${body}</document>`;
const scene = { widthMm: 10, heightMm: 10, alt: 'a line', shapes: [] };

const manual = readFileSync(new URL('../../../src/documents/print/README.md', import.meta.url), 'utf8');
const examples = [...manual.matchAll(/```xml\n([\s\S]*?)```/g)].map((match) => match[1] ?? '');

it('every example of the manual is read', () => {
  expect(examples.length).toBeGreaterThan(1);
  for (const example of examples) expect(readContent(example, new Map([['day', scene]])).title).not.toBe('');
});

it('every element of the manual stands in one of its examples, and the other way round', () => {
  const listed = new Set([...manual.matchAll(/^\| `<([a-z-]+)/gm)].map((match) => match[1]));
  const used = new Set(
    examples.flatMap((example) => [...example.matchAll(/<([a-z][a-z-]*)/g)].map((match) => match[1])),
  );
  expect([...listed].sort()).toEqual([...used].sort());
});

it.each([
  ['<p>one<p>two</p></p>', '<p> has no place in <p>'],
  ['<p>one', '<p> is not closed before </document>'],
  ['<p>a & b</p>', '"&" is no reference'],
  ['<p size=small>a</p>', 'attributes are written name="value"'],
  ['<p size="tiny">a</p>', 'size of <p> is "tiny"; it can be normal, small, large, huge.'],
  ['<p colour="red">a</p>', '<p> has no attribute colour; it has size, align, language.'],
  ['<script>a</script>', '<script> has no place in <document>'],
  ['words', 'The text "words" stands in <document>'],
  ['<table><row><cell>a</cell></row></table>', '<table> begins with one <column/>'],
  [
    '<table><column/><column/><row><cell>a</cell></row></table>',
    'Row 1 of <table> fills 1 of its 2 columns.',
  ],
  ['<table><column/><row><cell rows="2">a</cell></row></table>', 'spans more rows than there are'],
  ['<heading level="5">a</heading>', 'level 1 to 4, not 5'],
  ['<figure name="none"/>', 'There is no figure "none".'],
  ['<p><page/></p>', '<page> has no place in <p>'],
  ['<p><mark shape="dot"/></p>', '<mark> needs the attribute says.'],
  ['<space mm="0"/>', 'mm of <space> must be above 0.'],
  ['<p size="small" size="small">a</p>', 'the attribute size twice'],
  [`${'<keep>'.repeat(70)}`, 'more than 64 elements deep'],
])('%s is refused by name', (body, message) => {
  expect(() => readContent(wrap(body))).toThrow(message);
});

it('the line breaks of a template leave one blank between words and none at the ends', () => {
  const content = readContent(wrap('<p>\n  Call <b>\n net</b>  on\n<num>3</num>\n</p>'));
  const block = content.kind === 'document' ? content.blocks[0] : undefined;
  expect(
    block?.kind === 'paragraph' && block.text.map((run) => (run.kind === 'text' ? run.text : '')),
  ).toEqual(['Call ', 'net', ' on ', '3']);
});
