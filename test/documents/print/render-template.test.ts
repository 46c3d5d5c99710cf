import { runInThisContext } from 'node:vm';
import { describe, expect, it } from 'vitest';
import { readContent } from '../../../src/documents/print/read-content.ts';
import {
  type PreparedTemplates,
  preparedKey,
  prepareTemplate,
  renderTemplate,
  templateEngine,
} from '../../../src/documents/print/render-template.ts';

const wrap = (body: string) => `<document title="T" language="en" paper="A4">\n${body}\n</document>`;
const render = (body: string, data: unknown, partials: Record<string, string> = {}) =>
  renderTemplate(new Map([['page.hbs', wrap(body)], ...Object.entries(partials)]), 'page.hbs', data);

it('sets what a member wrote as words, never as markup', async () => {
  const name = `Ann <b>"O'Neil"</b> & {{sons}} =\u0001\u202e`;
  const content = readContent(await render('<p>{{name}}</p>', { name }));
  expect(content.kind === 'document' && content.blocks).toEqual([
    {
      kind: 'paragraph',
      size: 'normal',
      align: 'start',
      text: [expect.objectContaining({ text: `Ann <b>"O'Neil"</b> & {{sons}} =` })],
    },
  ]);
});

it.each([
  ['a value', '<p>\n{{nmae}}</p>', 'page.hbs:3: "nmae" not defined.'],
  [
    'a list',
    '{{#each lines}}<p>{{this}}</p>{{/each}}',
    'page.hbs:2: what {{#each}} asks for is not in the data.',
  ],
  [
    'a condition',
    '\n{{#if member.late}}<p>a</p>{{/if}}',
    'page.hbs:3: what {{#if}} asks for is not in the data.',
  ],
])('a field the data lack is an error in %s, with the line of the template', async (_, body, message) => {
  await expect(render(body, { name: 'a', member: {} })).rejects.toThrow(message);
});

it('names the file of the partial in which a field is missing', async () => {
  await expect(render('{{> line}}', { a: 1 }, { 'line.hbs': '\n\n<p>{{b}}</p>' })).rejects.toThrow(
    'line.hbs:3: "b" not defined.',
  );
});

it('names the line of the template of a wrong element, even in a loop of a partial', async () => {
  const markup = await render(
    '<p>x</p>\n{{#each rows}}{{> line}}{{/each}}',
    { rows: ['a\nb', 'c'] },
    { 'line.hbs': '<p>ok {{this}}</p>\n<blink>{{this}}</blink>' },
  );
  expect(() => readContent(markup)).toThrow('line.hbs:2: <blink> has no place in <document>');
});

it.each([
  ['{{{name}}}', 'would print a value unescaped'],
  ['{{&name}}', 'would print a value unescaped'],
  ['{{log name}}', 'unknown helper log'],
  ['{{lookup name 1}}', 'unknown helper lookup'],
  ['{{name.constructor}}', '"constructor" is asked of a text'],
  ['{{toString}}', 'not defined'],
  ['{{constructor}}', 'not defined'],
  ['{{__proto__}}', 'not defined'],
  ['{{> page}}', 'without end'],
  ['{{> gone}}', 'gone'],
  ['{{#if', 'page.hbs:2: Parse error'],
  ['{{#*inline "x"}}{{/inline}}', 'may be used'],
])('a template that writes %s is refused', async (body, message) => {
  await expect(render(body, { name: 'a' })).rejects.toThrow(message);
});

it('says nothing about a field that is there and empty', async () => {
  await expect(
    render('{{#if a}}<p>a</p>{{/if}}{{#each b}}<p>b</p>{{else}}<p>none</p>{{/each}}', { a: null, b: [] }),
  ).resolves.toContain('none');
});

describe('a template that was compiled beforehand', () => {
  const files = new Map([
    ['a.hbs', '<p>{{#each list}}{{> _b}}{{/each}}</p>\n<p>{{last}}</p>'],
    ['_b.hbs', '<b>{{this}}</b>'],
  ]);
  const prepared = async (): Promise<PreparedTemplates> =>
    new Map(
      await Promise.all(
        [...files].map(
          async ([name, source]) =>
            [
              preparedKey(name, source),
              runInThisContext(`(${await prepareTemplate(name, source)})`),
            ] as const,
        ),
      ),
    );

  it('gives what it gives when it is compiled now', async () => {
    const data = { list: ['x', '<'], last: 'end' };
    const [now, ready] = [await templateEngine(files), await templateEngine(files, await prepared())];
    expect(ready('a.hbs', data)).toBe(now('a.hbs', data));
    expect(ready('a.hbs', data)).toContain('&lt;');
  });

  it('names the line of a field that is missing', async () => {
    const render = await templateEngine(files, await prepared());
    expect(() => render('a.hbs', { list: [] })).toThrow('a.hbs:2:');
  });

  it('is compiled anew where its text is another', async () => {
    const own = new Map([...files, ['_b.hbs', '<b>own {{this}}</b>']]);
    const render = await templateEngine(own, await prepared());
    expect(render('a.hbs', { list: ['x'], last: '' })).toContain('own x');
  });

  it('may hold no more than any other', async () => {
    await expect(prepareTemplate('c.hbs', '<p>{{{raw}}}</p>')).rejects.toThrow('c.hbs:1: {{{ }}}');
  });
});
