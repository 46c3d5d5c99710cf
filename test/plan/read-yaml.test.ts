import { describe, expect, test } from 'vitest';
import { readYaml } from '../../src/plan/read-yaml.ts';
import { everyKey } from './every-key.ts';
import { onlySaid, places, said, slip } from './slip.ts';

describe('what YAML would quietly turn into something else', () => {
  // YAML 1.2.2, 10.3.2 (core schema): 023 is the integer 23, 0x1F is 31, 1e3 is 1000, +3 is 3, .inf no number of a plan's.
  test.each(['023', '0x1F', '0o17', '1e3', '+3', '.inf', '.nan', '99999999999999999999'])(
    '%s keeps its own spelling',
    (written) => {
      expect(readYaml(`a: ${written}`).root).toEqual({ a: written });
    },
  );

  test.each([
    ['146.940', 146.94],
    ['-0.6', -0.6],
    ['0', 0],
  ])('%s is the number it looks like', (written, number) => {
    expect(readYaml(`a: ${written}`).root).toEqual({ a: number });
  });

  test('no, yes, on and off are words, as YAML 1.2 has them', () => {
    expect(readYaml('[no, yes, on, off, true, ~]').root).toEqual(['no', 'yes', 'on', 'off', true, null]);
  });

  test('a digital code without its letters is refused with the reason', () => {
    const { message, suggestion, marked } = onlySaid(slip('output-tone: D023I', 'output-tone: 023'));
    expect(message).toMatch(/YAML reads a bare 023 as the number 23/);
    expect(suggestion).toBe('D023N');
    expect(marked).toBe('023');
  });

  test.each([
    ['0x1F', 'Expected a whole number that goes up at each issue of the cards; found `0x1F`.'],
    ['1e3', 'Expected a whole number that goes up at each issue of the cards; found `1e3`.'],
    ['012', 'Expected a whole number that goes up at each issue of the cards; found `012`.'],
    ['1_2', 'Expected a whole number that goes up at each issue of the cards; found `1_2`.'],
  ])('revision %s is no count', (written, message) => {
    expect(onlySaid(slip('revision: 12', `revision: ${written}`))).toMatchObject({
      message,
      marked: written,
    });
  });

  test.each([
    ['7.30', '"07:30"'],
    ['0730', '"07:30"'],
    ['730', '"07:30"'],
    ['7h30', '"07:30"'],
  ])('a time written %s is answered with how to write it', (written, suggestion) => {
    expect(onlySaid(slip('at: "07:30"', `at: ${written}`))).toMatchObject({ suggestion, marked: written });
  });

  test('a length of time written 1:30 could be minutes or hours, and is not guessed', () => {
    const { message, marked } = onlySaid(slip('lasts: 15 min', 'lasts: 1:30'));
    expect(message).toMatch(/"1:30" could be minutes or hours/);
    expect(marked).toBe('1:30');
  });

  test.each([
    ['no', 'false'],
    ['Yes', 'true'],
    ['off', 'false'],
  ])('%s for a true or false is a word, and answered with what it meant', (written, meant) => {
    expect(onlySaid(slip('coordinated: true', `coordinated: ${written}`))).toMatchObject({
      message: `Expected true or false (other words are text to YAML); found \`${written}\`.`,
      suggestion: meant,
    });
  });

  test('a line that turns on YAML 1.1, where no is false and 010 is 8, is refused', () => {
    expect(onlySaid(`%YAML 1.1\n---\n${everyKey}`)).toMatchObject({ rule: 'plan/not-yaml', marked: '%YAML' });
    expect(said(`%YAML 1.2\n---\n${everyKey}`)).toEqual([]);
  });
});

describe('keys', () => {
  test('one written twice is found at its second place', () => {
    expect(places('a: 1\nb:\n  c: 1\n  c: 2\n')).toEqual(expect.arrayContaining(['4:3']));
    expect(onlySaid(slip('  revision: 12', '  revision: 12\n  revision: 13'))).toMatchObject({
      rule: 'plan/duplicate-key',
      marked: 'revision',
    });
  });

  test('slot 1 and slot "1" are one slot', () => {
    expect(onlySaid(slip('  3:  {', '  "1": {'))).toMatchObject({
      rule: 'plan/duplicate-key',
      message: '`1` stands twice here; the second would hide the first.',
      marked: '"1"',
    });
  });

  test.each([
    ['01', '1'],
    ['0x1', '1'],
    ['1.0', '1'],
    ['-1', '-1'],
  ])('slot %s is not written as one', (written, plain) => {
    expect(onlySaid(slip('  7:  {', `  ${written}: {`))).toMatchObject({
      rule: 'plan/bad-key',
      message: `\`${written}\` is not a slot number, such as 1.`,
      ...(plain === written ? {} : { suggestion: plain }),
    });
  });

  test('__proto__ is no key, and nothing is changed by it', () => {
    expect(onlySaid(slip('  ben: {', '  __proto__: {'))).toMatchObject({ rule: 'plan/bad-key' });
    expect(onlySaid(slip('door: Green gate', '__proto__: Green gate'))).toMatchObject({
      rule: 'plan/bad-key',
    });
    expect(({} as { name?: string }).name).toBeUndefined();
  });

  test('a list or a mapping is no key', () => {
    expect(onlySaid(`? [a, b]\n: 1\n${everyKey}`).rule).toBe('plan/bad-key');
  });
});

describe('slips of writing are said once, where they were made', () => {
  test('a tab', () => {
    expect(onlySaid(slip('  title: Every key', '\ttitle: Every key'))).toMatchObject({
      rule: 'plan/not-yaml',
      message: 'This line is indented with a tab; YAML takes only spaces.',
      suggestion: 'two spaces for each level',
    });
    expect(places(slip('  title: Every key', '\ttitle: Every key'))).toEqual(['5:1']);
  });

  test('a colon inside text that has no quotes', () => {
    const message = 'A second colon on one line: text that holds a colon and a space needs quotes.';
    expect(onlySaid(slip('title: Every key', 'title: Every: key')).message).toBe(message);
    expect(onlySaid(slip('use: First call', 'use: First: call')).message).toBe(message);
  });

  test('a colon with no space after it', () => {
    const found = onlySaid(slip('  revision: 12', '  revision:12'));
    expect(found.message).toMatch(/^A colon without a space/);
    expect(found).toMatchObject({ suggestion: 'revision: 12', marked: 'revision:12' });
  });

  test('a line set too far in', () => {
    const found = onlySaid(slip('  revision: 12', '    revision: 12'));
    expect(found.message).toMatch(/indented deeper than the one above it/);
    expect(found.marked).toBe('revision: 12');
  });

  test('a number sign that hides the bracket of its entry', () => {
    const found = onlySaid(slip('name: Slate Ford,', 'name: Ford #2,'));
    expect(found.message).toMatch(/^A number sign after a space begins a comment, which hides the bracket/);
    expect(found.marked).toMatch(/^#2,.*\}$/);
  });

  test('a line set too far out', () => {
    expect(onlySaid(slip('  revision: 12', ' revision: 12')).message).toMatch(/indented differently/);
    expect(places(slip('  revision: 12', ' revision: 12'))).toEqual(['6:1']);
  });

  test('a comma inside text in braces', () => {
    expect(onlySaid(slip('use: First call', 'use: First call, always')).message).toMatch(
      /^`always` is (read as|not) a key/,
    );
    expect(onlySaid(slip('use: First call', 'use: First call, for all')).message).toMatch(
      /inside \{ \} a comma ends the text/,
    );
  });

  test('a bracket or a quote left open', () => {
    expect(onlySaid(slip('notes: [First line, Second line]', 'notes: [First line, Second line')).rule).toBe(
      'plan/not-yaml',
    );
    expect(said(slip('at: "07:30"', 'at: "07:30')).map(({ rule }) => rule)).toContain('plan/not-yaml');
  });

  test('text that begins with a star or an exclamation mark', () => {
    expect(onlySaid(slip('title: Every key', 'title: *Every key')).message).toMatch(
      /begins with `\*` needs quotes/,
    );
    expect(onlySaid(slip('title: Every key', 'title: *Every')).message).toMatch(
      /begins with `\*` needs quotes/,
    );
    expect(onlySaid(slip('title: Every key', 'title: !Every key')).message).toMatch(
      /begins with `!` needs quotes/,
    );
  });

  test('two slips far apart are both said', () => {
    const text = slip('  title: Every key', '\ttitle: Every key').replace(
      'use: First call',
      'use: First: call',
    );
    expect(said(text)).toHaveLength(2);
  });
});

describe('what a file may be made of', () => {
  test('CRLF line ends change nothing, and columns stay right', () => {
    expect(said(everyKey.replaceAll('\n', '\r\n'))).toEqual([]);
    const wrong = slip('revision: 12', 'revision: twelve').replaceAll('\n', '\r\n');
    expect(places(wrong)).toEqual(['6:13']);
    expect(onlySaid(wrong).marked).toBe('twelve');
  });

  test('line ends of carriage returns alone are met with words', () => {
    expect(onlySaid(everyKey.replaceAll('\n', '\r')).message).toMatch(/^A carriage return stands here/);
    // Hidden after a comment, it would take the next line out of the plan.
    expect(places(slip('# Every', 'x: 1 #\r Every'))).toEqual(['1:7']);
  });

  test.each([
    ['nothing', ''],
    ['empty lines', '\n\n  \n'],
    ['comments', '# a plan\n# to come\n'],
    ['a null', '~\n'],
  ])('a file of %s is empty', (_, text) => {
    expect(onlySaid(text)).toMatchObject({
      rule: 'plan/missing-entry',
      message: 'The file is empty; a plan begins with `readback: 1`.',
    });
    expect(places(text)).toEqual(['1:1']);
  });

  test.each(['hello', '- a\n- b', '42'])('%j is no plan', (text) => {
    expect(onlySaid(text).message).toMatch(/^Expected a plan: a mapping that begins with readback: 1/);
  });

  test('a second document is refused where it begins', () => {
    const lines = everyKey.split('\n').length;
    expect(places(`${everyKey}---\nreadback: 1\n`)).toEqual([`${lines}:1`]);
    expect(said(`---\n${everyKey}...\n`)).toEqual([]);
  });

  test('tags of another meaning are refused, tags that say what is so are not', () => {
    for (const tag of ['!!binary', '!!timestamp', '!place'])
      expect(onlySaid(slip('title: Every key', `title: ${tag} aGVsbG8=`)).message).toMatch(
        /^A `!` begins a YAML tag/,
      );
    expect(onlySaid(slip('radios: [handheld, plain]', 'radios: !!set { handheld }')).rule).toBe(
      'plan/not-yaml',
    );
    expect(said(slip('title: Every key', 'title: !!str Every key'))).toEqual([]);
  });
});

describe('anchors and aliases', () => {
  const anchored = slip(
    'antenna: { gain: 3 dBd, height: 12 m }',
    'antenna: &mast { gain: 3 dBd, height: 12 m }',
  );

  test('what an anchor names may be used again', () => {
    const text = anchored.replace('antenna: { gain: 3 dBd }', 'antenna: *mast');
    expect(said(text)).toEqual([]);
    expect(readYaml('a: &x 1\nb: *x\nc: &x 2\nd: *x').root).toEqual({ a: 1, b: 1, c: 2, d: 2 });
  });

  test('what is wrong inside an anchor is said once, where it is written', () => {
    const text = anchored
      .replace('antenna: { gain: 3 dBd }', 'antenna: *mast')
      .replace('&mast { gain: 3 dBd', '&mast { gain: 3 dBq');
    expect(onlySaid(text).marked).toBe('3 dBq');
  });

  test('an alias inside what it names has no end', () => {
    for (const text of ['a: &a [*a]', 'a: &a { b: { c: *a } }', 'readback: 1\nplan: &p\n  x: *p'])
      expect(onlySaid(text).message).toMatch(/stands inside what it refers to/);
  });

  test('an alias before its anchor names nothing', () => {
    expect(onlySaid('a: *x\nb: &x 1').message).toMatch(/there is no such anchor before it/);
  });

  test('a few lines of aliases that expand to billions of entries are refused', () => {
    let text = `a: &a [${Array(10).fill('x').join(',')}]\n`;
    for (const [inner, outer] of ['ab', 'bc', 'cd', 'de', 'ef', 'fg', 'gh', 'hi'].map((pair) =>
      pair.split(''),
    ))
      text += `${outer}: &${outer} [${Array(10).fill(`*${inner}`).join(',')}]\n`;
    expect(onlySaid(text).rule).toBe('plan/too-many-aliases');
  });

  test('hundreds of thousands of aliases are refused in the time it takes to read them', () => {
    expect(onlySaid(`a: &a x\nb: [${'*a,'.repeat(200_000)}]`).rule).toBe('plan/too-many-aliases');
  }, 15_000);
});

describe('nesting', () => {
  test.each([
    ['brackets', '['.repeat(1_000_000)],
    ['braces', '{a: '.repeat(500_000)],
    ['brackets and braces', '[{a: '.repeat(500_000)],
    ['list marks on one line', '- '.repeat(500_000)],
    ['question marks on one line', '? '.repeat(500_000)],
    [
      'lines each deeper than the last',
      Array.from({ length: 2000 }, (_, depth) => `${' '.repeat(depth)}a:`).join('\n'),
    ],
  ])(
    '%s without end are refused at once',
    (_, text) => {
      expect(onlySaid(text)).toMatchObject({
        rule: 'plan/too-deep',
        message: 'Brackets or indentation are nested more than 64 levels deep here.',
      });
    },
    5_000,
  );

  test('brackets inside quoted or block text nest nothing', () => {
    const brackets = '['.repeat(100);
    expect(readYaml(`a: "${brackets}"\nb: |\n  ${brackets}\nc: x${brackets}\n`).problems).toEqual([]);
  });

  test('a long list nests nothing', () => {
    expect(readYaml(`${'- a\n'.repeat(1000)}`).problems).toEqual([]);
    expect(readYaml(`[${'[a], '.repeat(1000)}]`).problems).toEqual([]);
  });
});

test('twenty thousand wrong entries are answered in the time it takes to read them', () => {
  const text = `readback: 1\nmembers:\n${Array.from({ length: 20_000 }, (_, index) => `  k${index}: 1`).join('\n')}`;
  expect(said(text)).toHaveLength(20_001);
}, 10_000);

test('a number sign that cuts a text off is said; a comment is a comment', () => {
  const { problems } = readYaml('title: Net #1\nname: Gap # the repeater\nslot: 3 #3\nuse: "Net #1"\n');
  expect(problems.map(({ kind, suggestion }) => [kind, suggestion])).toEqual([['cut-text', '"Net #1"']]);
});
