import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { addTrial, meaning } from '../../src/plan/add-trial.ts';
import { inserted } from '../../src/plan/append-entry.ts';
import { load } from '../../src/plan/load.ts';
import type { Trial } from '../../src/plan/model.ts';

const trial: Trial = {
  date: '2026-11-21',
  from: 'hill',
  to: 'gap',
  channel: 1,
  member: 'ada',
  heard: 'readable',
  report: '5 by 7',
};

const head = `# A plan with comments   that must stay.
readback: 1

plan: { title: "Group: one", revision: 1, effective: 2026-12-01, timezone: America/New_York, rules: us }   # head
members:
    ada:   { name: Ada Example }     # aligned by hand
places:
    hill:   { name: Hill,  at: "36.6258, -84.2725" }
repeaters:
    gap: { name: Gap, output: 146.940, offset: -0.6 }
`;

/** The text is kept on both sides of the piece, and the plan means the same with one trial more. */
function expectAdded(text: string, added: Trial): string {
  const insertion = addTrial(text, added);
  if (insertion === undefined) throw new Error(`not added to:\n${text}`);
  const after = inserted(text, insertion);
  expect(after.slice(0, insertion.at) + after.slice(insertion.at + insertion.piece.length)).toBe(text);
  const [before, now] = [load(text, 'a').plan, load(after, 'a').plan];
  if (before === undefined || now === undefined) throw new Error('does not load');
  expect(meaning(now)).toBe(meaning({ ...before, trials: [...before.trials, added] }));
  return after;
}

describe('a trial is written in the style of the ones before it', () => {
  test.each([
    [
      'no trials yet',
      head,
      `${head}\ntrials:\n  - { date: 2026-11-21, from: hill, to: gap, channel: 1, member: ada, heard: readable, report: 5 by 7 }\n`,
    ],
    [
      'one trial on a line, with a comment after it and a section after that',
      `${head}trials:   # so far\n- { date: 2026-11-14, from: hill, to: gap, heard: weak }   # windy\n\n# last\ncards: { size: id-1 }\n`,
      `${head}trials:   # so far\n- { date: 2026-11-14, from: hill, to: gap, heard: weak }   # windy\n- { date: 2026-11-21, from: hill, to: gap, channel: 1, member: ada, heard: readable, report: 5 by 7 }\n\n# last\ncards: { size: id-1 }\n`,
    ],
    [
      'a trial over several lines',
      `${head}trials:\n   - date: 2026-11-14\n     from: hill\n     to: gap\n     heard: weak # windy\n   # more to come\n`,
      `${head}trials:\n   - date: 2026-11-14\n     from: hill\n     to: gap\n     heard: weak # windy\n   - date: 2026-11-21\n     from: hill\n     to: gap\n     channel: 1\n     member: ada\n     heard: readable\n     report: 5 by 7\n   # more to come\n`,
    ],
    [
      'an empty list',
      `${head}trials: [] # none\n`,
      `${head}trials: [{ date: 2026-11-21, from: hill, to: gap, channel: 1, member: ada, heard: readable, report: 5 by 7 }] # none\n`,
    ],
  ])('%s', (_name, text, wanted) => {
    expect(expectAdded(text, trial)).toBe(wanted);
  });

  test.each([
    ['no line end at the end', `${head}trials:\n  - { date: 2026-11-14, from: hill, to: gap, heard: weak }`],
    ['no line end and no trials', head.trimEnd()],
    [
      'a list in brackets over several lines, ending in a comma',
      `${head}trials: [\n  { date: 2026-11-14, from: hill, to: gap, heard: weak }, # one\n]\n`,
    ],
    [
      'the same without the comma',
      `${head}trials: [\n  { date: 2026-11-14, from: hill, to: gap, heard: weak } # one, two\n]\n`,
    ],
    ['a document with an end', `---\n${head}...\n`],
    [
      'a report over several lines',
      `${head}trials:\n  - date: 2026-11-14\n    from: hill\n    to: gap\n    heard: weak\n    report: "one\n      two"\ncards: {}\n`,
    ],
    [
      'everything in braces',
      `{ readback: 1, plan: { title: A, revision: 1, effective: 2026-12-01, timezone: America/New_York, rules: us } }\n`,
    ],
    [
      'a report as a block of text',
      `${head}trials:\n  - date: 2026-11-14\n    from: hill\n    to: gap\n    heard: weak\n    report: >-\n      one\n      two\ncards: {}\n`,
    ],
    [
      'a report as a block of text at the end',
      `${head}trials:\n  - date: 2026-11-14\n    from: hill\n    to: gap\n    heard: weak\n    report: >-\n      one\n`,
    ],
    [
      'a trial by alias',
      `${head}trials:\n  - &first { date: 2026-11-14, from: hill, to: gap, heard: weak }\n  - *first\n`,
    ],
  ])('%s', (_name, text) => {
    expectAdded(text, trial);
    expectAdded(text.replaceAll('\n', '\r\n'), trial);
  });

  test('a list that is only an alias is left alone', () => {
    const text = `${head}trials: &t [{ date: 2026-11-14, from: hill, to: gap, heard: weak }]\n`;
    expect(addTrial(text.replace('trials: &t', 'teams: {}\ntrials: *x'), trial)).toBeUndefined();
  });
});

/** Layouts as people and editors leave them. */
const layout = fc.record({
  eol: fc.constantFrom('\n', '\r\n'),
  indent: fc.integer({ min: 0, max: 6 }),
  style: fc.constantFrom('none', 'flow items', 'block items', 'brackets', 'brackets over lines', 'empty'),
  count: fc.integer({ min: 1, max: 4 }),
  comment: fc.constantFrom('', ' # note', '   # a, b: {c} [d] "e'),
  own: fc.constantFrom('', '# own line', '  # indented'),
  blank: fc.integer({ min: 0, max: 2 }),
  trailingComma: fc.boolean(),
  after: fc.constantFrom('', 'cards: { size: id-1 }', 'teams:\n  all: [ada]   # one\n# end'),
  finalLineEnd: fc.boolean(),
  marker: fc.constantFrom('', '---\n', '%YAML 1.2\n---\n'),
  quote: fc.constantFrom('weak', '"weak"', "'weak'"),
});

type Layout = typeof layout extends fc.Arbitrary<infer Shape> ? Shape : never;

function written(shape: Layout): string {
  const pad = ' '.repeat(shape.indent);
  const item = (day: number) => `{ date: 2026-10-${10 + day},   from: hill, to: gap, heard: ${shape.quote} }`;
  const days = Array.from({ length: shape.count }, (_, day) => day);
  const blanks = '\n'.repeat(shape.blank);
  const own = shape.own === '' ? '' : `${shape.own}\n`;
  const list = {
    none: '',
    'flow items': `trials:${shape.comment}\n${days.map((day) => `${pad}-  ${item(day)}${shape.comment}\n${own}`).join('')}`,
    'block items': `trials:\n${days.map((day) => `${pad}- date: 2026-10-${10 + day}${shape.comment}\n${own}${pad}  from: hill\n${pad}  to: gap\n${pad}  heard: ${shape.quote}${shape.comment}\n`).join(blanks)}`,
    brackets: `trials: [${days.map(item).join(',  ')}${shape.trailingComma ? ',' : ''}]${shape.comment}\n`,
    'brackets over lines': `trials: [${shape.comment}\n${days.map((day) => `${pad} ${item(day)}`).join(`,${shape.comment}\n`)}${shape.trailingComma ? ',' : ''}${shape.comment}\n  ]\n`,
    empty: `trials: [ ]${shape.comment}\n`,
  }[shape.style];
  const whole = `${shape.marker}${head}${list}${own}${blanks}${shape.after}`;
  return (shape.finalLineEnd ? `${whole}\n` : whole.trimEnd()).replaceAll('\n', shape.eol);
}

const anyTrial: fc.Arbitrary<Trial> = fc
  .record({
    date: fc.constantFrom('2026-11-21', '2026-01-02'),
    from: fc.constant('hill'),
    to: fc.constantFrom('gap', 'ada'),
    channel: fc.option(fc.integer({ min: 0, max: 9999 }), { nil: undefined }),
    heard: fc.constantFrom('readable' as const, 'nothing' as const),
    report: fc.option(
      fc
        .oneof(
          fc.string({ minLength: 1, unit: 'grapheme' }),
          fc.constantFrom('5 by 7', '59', 'no', 'a: b', '# x', '- y', '"q"', "it's", '1:30', '{', '*a'),
        )
        .filter((text) => text.trim() !== '' && text === text.trim()),
      { nil: undefined },
    ),
  })
  .map(({ channel, report, ...rest }) => ({
    ...rest,
    ...(channel !== undefined && { channel }),
    ...(report !== undefined && { report }),
  }));

test('whatever the layout, all bytes outside the new trial stay, and the plan means the same with one trial more', () => {
  let added = 0;
  fc.assert(
    fc.property(layout, anyTrial, (shape, each) => {
      const text = written(shape);
      if (load(text, 'a').plan === undefined) return;
      // Text that the language itself refuses in a report is no trial.
      if (
        load(
          `${head}trials: [{ date: 2026-01-01, from: hill, to: gap, heard: weak, report: ${JSON.stringify(each.report ?? 'x')} }]`,
          'a',
        ).plan?.trials[0]?.report !== (each.report ?? 'x')
      )
        return;
      expectAdded(text, each);
      added += 1;
    }),
    { numRuns: 500 },
  );
  expect(added).toBeGreaterThan(350);
});
