import { describe, expect, test } from 'vitest';
import { compareRevisions, type Revision, type Spelling } from '../../src/audit/compare-revisions.ts';
import { clock, daysText } from '../../src/documents/figures.ts';
import { english } from '../../src/documents/words.ts';
import { entryValue } from '../../src/documents/worksheets.ts';
import { planCheck } from '../../src/plan/plan-check.ts';
import { planFrom } from './worksheet-rows.ts';

const spelling: Spelling = {
  entry: (entry, field) => entryValue(entry, field, english),
  clock: (time) => clock(time, english),
  days: (days) => daysText(days, english),
};

const before = `readback: 1
plan: { title: Compared, revision: 1, effective: 2026-12-01, timezone: America/New_York, rules: us }
radios:
  handheld:
    name: Handheld
    transmits: [144-148]
    receives: [136-174]
    certified: [amateur]
    memories: 1-20
    name-length: 6
    widths: [25, 12.5]
    tones: [ctcss]
    powers: { high: 5 W }
  receiver: { name: Receiver, receives: [136-174], memories: 1-9, entry-order: [receive] }
members:
  ada: { name: Ada, licences: { amateur: { class: general, call: KX4XAA } }, radios: [handheld] }
  ben: { name: Ben, licences: { amateur: { class: general, call: KX4XBB } }, radios: [handheld] }
  cyd: { name: Cyd, radios: [receiver] }
repeaters:
  gap: { name: Gap, output: 146.940, offset: -0.6, tone: 100.0, width: 25 }
channels:
  1: { name: GAP, repeater: gap }
  2: { name: ONE, simplex: 146.550, width: 25 }
  3: { name: TWO, simplex: 146.460, width: 25 }
check-ins:
  eve: { name: Evening, channel: 1, days: every day, at: "19:00", lasts: 10 min, who: all }
fallbacks:
  usual: { name: Usual, who: all, rungs: [ { grade: primary, channel: 1 }, { grade: alternate, channel: 2 } ] }
`;

async function revision(text: string): Promise<Revision> {
  const tested = await planFrom(text);
  return { ...tested, check: planCheck(tested.plan) };
}

async function compared(change: (text: string) => string) {
  const after = change(before);
  expect(after).not.toBe(before);
  return compareRevisions(await revision(before), await revision(after), spelling);
}

describe('two revisions are compared by meaning', () => {
  test('spacing, comments and another order of entries are no change', async () => {
    const found = await compared((text) =>
      text
        .replace('  2: { name: ONE, simplex: 146.550, width: 25 }\n', '')
        .replace(
          '  1: { name: GAP',
          '  2: { width: 25 kHz, simplex: 146.55 MHz,   name: ONE }  # moved\n  1: { name: GAP',
        ),
    );
    expect(found).toMatchObject({ channels: [], members: [], checkIns: [], ladders: [], same: true });
    expect(found.radios.flatMap(({ enter, clear }) => [...enter, ...clear])).toEqual([]);
    expect(found.cards.flatMap(({ dangers }) => dangers)).toEqual([]);
  });

  test('another tone is entered again in each radio that sends it, and makes its cards dangerous', async () => {
    const found = await compared((text) => text.replace('tone: 100.0', 'tone: 103.5'));
    expect(found.channels).toMatchObject([
      { slot: 1, kind: 'changed', meansOther: false, fields: [{ field: 'tone', was: '100.0', is: '103.5' }] },
    ]);
    expect(found.radios).toMatchObject([
      {
        radio: 'handheld',
        enter: [{ slot: 1, fields: [{ field: 'tone', was: '100.0', is: '103.5' }] }],
        kept: [2, 3],
      },
      { radio: 'receiver', enter: [], kept: [1, 2, 3] },
    ]);
    expect(found.cards[0]).toMatchObject({
      member: 'ada',
      validSlots: [2, 3],
      dangers: [{ kind: 'figures-changed' }],
    });
  });

  test('a slot that leads to another frequency means something else on every old card', async () => {
    const found = await compared((text) => text.replace('TWO, simplex: 146.460', 'HUT, simplex: 147.510'));
    expect(found.cards.map(({ dangers }) => dangers.map(({ kind }) => kind))).toEqual([
      ['slot-means-other'],
      ['slot-means-other'],
      ['slot-means-other'],
    ]);
    expect(found.cards[0]?.dangers[0]?.text).toBe('slot 3 was TWO on 146.460; it is now HUT on 147.510');
  });

  test('a channel that is gone is cleared', async () => {
    const found = await compared((text) =>
      text.replace('  3: { name: TWO, simplex: 146.460, width: 25 }\n', ''),
    );
    expect(found.radios.map(({ clear }) => clear.map(({ slot }) => slot))).toEqual([[3], [3]]);
    expect(found.cards[0]?.dangers).toMatchObject([{ kind: 'slot-gone' }]);
  });

  test('a member whose licence is gone may no longer transmit, and theirs is the dangerous card', async () => {
    const found = await compared((text) =>
      text.replace('{ name: Ben, licences: { amateur: { class: general, call: KX4XBB } },', '{ name: Ben,'),
    );
    expect(found.members).toMatchObject([{ id: 'ben', kind: 'changed' }]);
    const kinds = Object.fromEntries(
      found.cards.map(({ member, dangers }) => [member, dangers.map(({ kind }) => kind)]),
    );
    expect(kinds).toEqual({
      ada: [],
      ben: ['listen-only-now', 'listen-only-now', 'listen-only-now'],
      cyd: [],
    });
  });

  test('another first rung changes the first call; another hour the check-in', async () => {
    const found = await compared((text) =>
      text
        .replace('{ grade: primary, channel: 1 }', '{ grade: primary, channel: 2 }')
        .replace('at: "19:00"', 'at: "18:30"'),
    );
    expect(found.cards[0]?.dangers.map(({ kind }) => kind)).toEqual(['first-call', 'ladder', 'check-in']);
    expect(found.checkIns).toMatchObject([{ fields: [{ field: 'at', was: '19:00', is: '18:30' }] }]);
  });

  test('a new member has no old card, and one who left needs none', async () => {
    const found = await compared((text) => text.replace('  ben: { name: Ben', '  dot: { name: Dot'));
    expect(found.members.map(({ id, kind }) => [id, kind])).toEqual([
      ['ben', 'gone'],
      ['dot', 'new'],
    ]);
    expect(found.cards.map(({ member }) => member)).toEqual(['ada', 'cyd']);
  });
});
