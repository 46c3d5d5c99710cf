import { describe, expect, test } from 'vitest';
import { Refusal } from '../../src/findings/refusal.ts';
import { importTable } from '../../src/plan/import-table.ts';
import { load } from '../../src/plan/load.ts';
import { readMapping } from '../../src/plan/read-mapping.ts';
import { starterPlan } from '../../src/plan/starter-plan.ts';
import { flowText } from '../../src/plan/yaml-text.ts';

const plan = load(starterPlan, 'starter.yaml').plan;
const channelColumns = new Map(
  ['slot', 'name', 'receive', 'transmit', 'offset', 'tone', 'listen'].map((field) => [field, field]),
);

function channels(row: string, columns = channelColumns): string[] {
  const { entries, problems } = importTable(
    'channels',
    `${[...columns.keys()].join(',')}\n${row}\n`,
    columns,
    undefined,
  );
  return [
    ...entries.map(({ key, value }) => `${key} ${flowText(value)}`),
    ...problems.map(({ message }) => message),
  ];
}

describe('a table of channels', () => {
  test.each([
    ['5,A,146.55,146.55,,,', '5 { name: A, simplex: 146.550 }'],
    ['5,A,146.94,146.34,,100,', '5 { name: A, receive: 146.940, transmit: 146.340, tone: 100.0 }'],
    ['5,A,146.94,,-0.6,D023N,', '5 { name: A, receive: 146.940, transmit: 146.340, tone: D023N }'],
    ['5,A,146.94,,+600 kHz,,', '5 { name: A, receive: 146.940, transmit: 147.540 }'],
    ['5,A,146.55,,,,', '5 { name: A, simplex: 146.550 }'],
    ['5,A,162.55,,,,x', '5 { name: A, listen: 162.550 }'],
    ['5,A,162.55,listen only,,,', '5 { name: A, listen: 162.550 }'],
  ])('%s', (row, entry) => {
    expect(channels(row)).toEqual([entry]);
  });

  test.each([
    ['x,A,146.55,,,,', 'slot number'],
    ['5,,146.55,,,,', 'no name'],
    ['5,A,146.94,,0.6,,', 'no direction'],
    ['5,A,146.9x,,,,', 'frequency'],
    ['5,A,146.55,,,023,', 'D023N'],
  ])('%s is a complaint, not a guess', (row, words) => {
    expect(channels(row)).toEqual([expect.stringContaining(words)]);
  });

  test('without a column for transmitting nothing is made of a frequency', () => {
    const columns = new Map(['slot', 'name', 'receive'].map((field) => [field, field]));
    expect(channels('5,A,146.55', columns)).toEqual([
      expect.stringContaining('no column says what is transmitted on'),
    ]);
  });
});

describe('a roster', () => {
  const columns = new Map([
    ['Who', 'name'],
    ['Call', 'amateur call'],
    ['Until', 'amateur expires'],
    ['Set', 'radios'],
    ['Tel', 'contact phone'],
  ]);
  const roster = (rows: string) =>
    importTable('roster', `Who,Call,Until,Set,Tel,Shoes\n${rows}\n`, columns, plan);

  test('becomes members, with ids from their names where none are given', () => {
    const { entries, madeIds, unmatched, problems } = roster(
      'Zoë Ash,kx4xzz,2030-01-31,Dual-band handheld,555-0100,40\nSam Reed,,,,,',
    );
    expect(problems).toEqual([]);
    expect(entries.map(({ key, value }) => `${key} ${flowText(value)}`)).toEqual([
      'zoe { name: "Zoë Ash", licences: { amateur: { call: KX4XZZ, expires: 2030-01-31 } }, radios: [handheld], contact: { phone: 555-0100 } }',
      'sam-reed { name: Sam Reed }',
    ]);
    expect(madeIds).toEqual(['zoe', 'sam-reed']);
    expect(unmatched).toEqual(['Shoes']);
  });

  test.each([
    ['Ann,KX4XAN,1/2/2030,,,', 'year-month-day'],
    ['Ann,,,handhelt,,', 'did you mean handheld'],
    [',KX4XAN,,,,', 'no name'],
  ])('%s is a complaint with its line', (row, words) => {
    expect(roster(row).problems).toMatchObject([{ line: 2, message: expect.stringContaining(words) }]);
  });

  test.each([
    ['Whom: name', 'does not have'],
    ['Who: nam', 'no field'],
    ['- x', 'no mapping'],
    ['Who: name\nCall: name', 'both'],
  ])('the mapping %j is refused', (text, words) => {
    expect(() => readMapping(text, 'm.yaml', 'roster', ['Who', 'Call'])).toThrow(Refusal);
    expect(() => readMapping(text, 'm.yaml', 'roster', ['Who', 'Call'])).toThrow(words);
  });
});

// ICAO Doc 9303, part 3, section 6 (from memory): how a passport spells a letter with a stroke.
test.each([
  ['Łucja Nowak', 'lucja'],
  ['Søren Dahl', 'soeren'],
  ['Þóra Jóns', 'thora'],
  ['Zoë Groß', 'zoe'],
])('%s gets the id %s', (name, id) => {
  const { entries } = importTable('roster', `name\n${name}\n`, new Map([['name', 'name']]), plan);
  expect(entries.map(({ key }) => key)).toEqual([id]);
});
