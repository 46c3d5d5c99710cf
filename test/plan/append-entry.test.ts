import { describe, expect, test } from 'vitest';
import { meaning } from '../../src/plan/add-trial.ts';
import { appendEntry, inserted } from '../../src/plan/append-entry.ts';
import { load } from '../../src/plan/load.ts';

const head = `readback: 1
plan: { title: A, revision: 1, effective: 2026-12-01, timezone: America/New_York, rules: us }   # head
`;
const entry = {
  key: 'zoe',
  value: {
    entries: [
      ['name', 'Zoe: Ash, #1'],
      ['radios', { list: ['handheld'] }],
    ] as const,
  },
};

describe('a member is put at the end of the members, and every other byte stays', () => {
  test.each([
    [
      'a line each, aligned',
      'members:   # all\n    ada:   { name: Ada }     # one\n    ben:   { name: Ben }\n\n# teams\nteams: { all: [ada] }\n',
      '\n    zoe: { name: "Zoe: Ash, #1", radios: [handheld] }\n',
    ],
    [
      'several lines each',
      'members:\n  ada:\n    name: Ada\n    licences:\n      amateur: { class: general }   # one\n# end\n',
      '\n  zoe:\n    name: "Zoe: Ash, #1"\n    radios: [handheld]\n',
    ],
    [
      'in braces on a line',
      'members: { ada: { name: Ada } }\n',
      '{ name: Ada }, zoe: { name: "Zoe: Ash, #1", radios: [handheld] } }\n',
    ],
    [
      'in braces over lines',
      'members: {\n  ada: { name: Ada },   # one\n}\n',
      '  zoe: { name: "Zoe: Ash, #1", radios: [handheld] },\n}\n',
    ],
    ['none yet, in braces', 'members: {}\ncards: {}\n', 'members: {zoe: '],
    [
      'no such section',
      'cards: { size: id-1 }\n',
      '\nmembers:\n  zoe: { name: "Zoe: Ash, #1", radios: [handheld] }\n',
    ],
  ])('%s', (_name, rest, piece) => {
    for (const eol of ['\n', '\r\n']) {
      for (const end of [eol, '']) {
        const text = (head + rest).trimEnd().replaceAll('\n', eol) + end;
        const insertion = appendEntry(text, 'members', entry);
        if (insertion === undefined) throw new Error('nothing was put in');
        const after = inserted(text, insertion);
        expect(after.slice(0, insertion.at) + after.slice(insertion.at + insertion.piece.length)).toBe(text);
        expect(after.replaceAll('\r\n', '\n') + (end === '' ? '\n' : '')).toContain(piece);
        expect(eol === '\n' || !/[^\r]\n/.test(after)).toBe(true);
        const [before, now] = [load(text, 'a').plan, load(after, 'a').plan];
        if (before === undefined || now === undefined) throw new Error('is no plan');
        expect(now.members.get('zoe')).toMatchObject({ name: 'Zoe: Ash, #1', radios: ['handheld'] });
        const others = new Map([...now.members].filter(([id]) => id !== 'zoe'));
        expect(meaning({ ...now, members: others })).toBe(meaning(before));
      }
    }
  });
});
