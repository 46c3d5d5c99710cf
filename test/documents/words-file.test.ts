import { readFileSync } from 'node:fs';
import { describe, expect, test } from 'vitest';
import { wordsFrom } from '../../src/documents/words.ts';
import { englishList } from '../../src/documents/words-en.ts';
import { englishLayer, wordsFile } from '../../src/documents/words-file.ts';
import { countries, countryByCode } from '../../src/regulations/countries.ts';

const europe = { code: 'eu', ids: ['amateur', 'pmr446', 'cb'] };
const spanish = (text: string, base = englishLayer('es')) =>
  wordsFile(`language: es\n${text}`, 'words.yaml', base, europe);

describe('German', () => {
  const content = readFileSync(new URL('../../templates/de/words.yaml', import.meta.url), 'utf8');
  const { layer } = wordsFile(content, 'words.yaml', englishLayer('de'), europe);
  const german = wordsFrom(layer?.list ?? englishList, layer?.missing);

  test('has every text of the list', () => {
    expect([...(layer?.missing ?? ['all'])]).toEqual([]);
  });

  test('has every sentence that is quoted from the rules of any country, and every name of a service and a class', async () => {
    for (const { code } of countries) {
      const country = await countryByCode(code);
      if (country === undefined) throw new Error(`no ${code}`);
      const { caution } = country;
      expect(german.caution(country)).toEqual({ text: expect.not.stringContaining(caution), language: '' });
      for (const { id, identification, classes } of country.services) {
        expect(layer?.list.services).toHaveProperty(id);
        for (const { id: level } of classes) expect(layer?.list.classes['amateur']).toHaveProperty(level);
        if (identification === undefined) continue;
        const said = german.identify(country, id, identification.how);
        expect(said).toEqual({ text: expect.not.stringContaining(identification.how), language: '' });
      }
      expect(german.exposure.limits(country.exposure, 'known')).not.toBe('known');
    }
  });

  test('says nothing of a country or a service that there is none of', async () => {
    for (const [code, texts] of Object.entries(layer?.list.rules ?? {})) {
      const country = await countryByCode(code);
      const duties = (country?.services ?? []).flatMap(({ id, identification }) =>
        identification === undefined ? [] : id,
      );
      expect(duties, code).toEqual(expect.arrayContaining(Object.keys(texts.identify ?? {})));
    }
  });
});

describe('a word list', () => {
  test('takes the place of the words there are, and the rest stays as it was', () => {
    const { layer, findings } = spanish(
      'from: desde {place}\ncalls: { 1: una vez, other: "{count} veces" }\n',
    );
    expect(findings).toEqual([]);
    const words = wordsFrom(layer?.list ?? englishList);
    expect(words.from('Cerro')).toBe('desde Cerro');
    expect([1, 3].map(words.calls)).toEqual(['una vez', '3 veces']);
    expect(words.untried).toBe('untried');
    expect(layer?.missing.has('from')).toBe(false);
    expect(layer?.missing.has('untried')).toBe(true);
  });

  test('may be written as JSON', () => {
    const { layer } = wordsFile(
      '{ "language": "es", "none": "ninguno" }',
      'words.json',
      englishLayer('es'),
      europe,
    );
    expect(layer?.list.none).toBe('ninguno');
  });

  test('has forms for single numbers and for those that end alike, the longest ending first', () => {
    // Russian: 1, 21, 31 … have one form, 2 to 4, 22 to 24 … another, 11 to 14 and the rest the third (CLDR plural rules, cardinal, ru).
    const endings = [2, 3, 4].map((end) => `ends-${end}: "{count} вызова"`).join(', ');
    const teens = [11, 12, 13, 14].map((end) => `ends-${end}: "{count} вызовов"`).join(', ');
    const { layer } = spanish(
      `calls: { ends-1: "{count} вызов", ${endings}, ${teens}, other: "{count} вызовов" }`,
    );
    const { calls } = wordsFrom(layer?.list ?? englishList);
    expect([1, 2, 5, 11, 12, 21, 24, 111].map(calls)).toEqual([
      '1 вызов',
      '2 вызова',
      '5 вызовов',
      '11 вызовов',
      '12 вызовов',
      '21 вызов',
      '24 вызова',
      '111 вызовов',
    ]);
  });

  test('that names a service of the plan’s own rules file has its duty', () => {
    const { layer } = wordsFile(
      'language: es\nrules: { freedonia: { caution: Cuidado., identify: { amateur: Diga quién es. } } }',
      'words.yaml',
      englishLayer('es'),
      { code: 'freedonia', ids: ['amateur'] },
    );
    expect(layer?.list.rules['freedonia']?.identify?.['amateur']).toBe('Diga quién es.');
  });

  test.each([
    ['untreid: nada', 2, 1, '`untreid` is not a key of a word list.', 'untried'],
    ['heard: { readble: bien }', 2, 10, '`readble` is not a key that `heard` can have.', 'readable'],
    ['from: desde {lugar}', 2, 7, 'There is no `{lugar}` to put into this text; there is {place}.'],
    [
      'from: desde',
      2,
      7,
      '`{place}` is left out of this text, and what it stands for would be missing in print.',
    ],
    ['utc: "{zone}"', 2, 6, 'There is no `{zone}` to put into this text; there is none.'],
    ['days: [lu, ma]', 2, 7, 'Expected a list of 7 texts; found a list.'],
    ['hours: 7', 2, 8, 'Expected a line of text; found the number 7.'],
    ['heard: nada', 2, 8, 'Expected a mapping; found `nada`.'],
    ['calls: { 1: una vez }', 2, 8, 'Expected a form for `other` numbers; found a mapping.'],
    [
      'calls: { one: una vez, other: "{count}" }',
      2,
      10,
      '`one` is not a key that `calls` can have. It can have: other, 1, ends-1.',
    ],
    [
      'guest-card: Tarjeta de visita',
      2,
      13,
      'Expected a short name of small letters, figures and hyphens; found `Tarjeta de visita`.',
    ],
    ['rules: { eu: { cuation: x } }', 2, 16, '`cuation` is not a key that `rules.eu` can have.', 'caution'],
    [
      'rules: { eu: { identify: { amatuer: x } } }',
      2,
      28,
      '`amatuer` is not a key that `rules.eu.identify` can have.',
      'amateur',
    ],
    [
      'rules: { xx: { caution: x } }',
      2,
      10,
      '`xx` is not a key that `rules` can have. It can have: au, ca, eu, gb, nz, us, eu.',
    ],
    ['none: [', 2, 8, undefined],
  ])('says where it is wrong: %s', (line, atLine, column, message, suggestion?: string) => {
    const { layer, findings } = spanish(line);
    expect(layer).toBeUndefined();
    const [finding] = findings;
    expect(finding?.place).toMatchObject({ file: 'words.yaml', line: atLine, column });
    if (message !== undefined) expect(finding?.message).toBe(message);
    expect(finding?.suggestion).toBe(suggestion);
  });

  test('is in the language that the plan asks for, and says so', () => {
    const text = 'none: ninguno\n';
    expect(wordsFile(text, 'words.yaml', englishLayer('es'), europe).findings[0]?.message).toBe(
      'A word list says which language it is in.',
    );
    expect(
      wordsFile(`language: es\n${text}`, 'words.yaml', englishLayer('it'), europe).findings[0]?.message,
    ).toBe('These words are in `es`, and the plan asks for documents in `it`.');
  });
});
