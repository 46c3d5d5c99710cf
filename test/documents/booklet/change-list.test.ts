import { describe, expect, test } from 'vitest';
import type { Revision } from '../../../src/audit/compare-revisions.ts';
import { changeList } from '../../../src/documents/booklet/change-list.ts';
import { documentSet } from '../../../src/documents/document-set.ts';
import { english } from '../../../src/documents/words.ts';
import { planCheck } from '../../../src/plan/plan-check.ts';
import { planFrom } from '../../audit/worksheet-rows.ts';
import { germanPlan } from '../german-plan.ts';
import { demoPlan, german, press, subjectOf } from '../press.ts';

async function revision(text: string): Promise<Revision> {
  const tested = await planFrom(text);
  return { ...tested, check: planCheck(tested.plan) };
}

/** The first call on another output, one channel gone and one new, a check-in later and one rung with more calls. */
const next = demoPlan
  .replace('revision: 3', 'revision: 4')
  .replace('output: 146.940', 'output: 146.715')
  .replace(/^ {2}9: +\{ name: WX.*\n/m, '  10: { name: NEW, simplex: 146.445 }\n');

describe('the list of changes', async () => {
  const [old, now] = [await revision(demoPlan), await revision(next)];
  const list = changeList(old, now, english);

  test('says of each channel what it was and is', () => {
    expect(list.channels).toEqual([
      { slot: 1, name: 'GAP', what: 'receive 146.940 to 146.715; transmit 146.340 to 146.115' },
      { slot: 9, name: 'WX', what: 'no more' },
      { slot: 10, name: 'NEW', what: 'new' },
    ]);
  });

  test('says who has which radio to enter again, with what is to be keyed in and cleared', () => {
    const handheld = list.radios.find(({ name }) => name === now.plan.radios.get('handheld')?.name);
    expect(handheld?.slots).toEqual([
      { slot: 1, name: 'GAP', what: 'Receive 146.940 MHz to 146.715 MHz' },
      { slot: 10, name: 'NEW', what: 'new' },
      { slot: 9, name: 'WX', what: 'clear' },
    ]);
    const holders = now.consequences.holdersOf('handheld').map((id) => now.plan.members.get(id)?.name);
    expect(handheld?.holders.split(', ')).toEqual(holders);
    expect(handheld?.kept.split(', ')).toContain('2');
  });

  test('says whose old card is dangerous, why, and what on it is still right', () => {
    expect(list.cards.map(({ name }) => name)).toEqual(
      [...old.plan.members.values()].map(({ name }) => name),
    );
    const ward = list.cards.find(({ name }) => name === old.plan.members.get('ward')?.name);
    expect(ward?.dangers).toContain('slot 1 GAP is on another frequency now');
    expect(ward?.dangers).toContain('slot 9 WX is no more');
    expect(ward?.right.split(', ')).not.toContain('1');
    expect(ward?.right.split(', ')).toContain('3');
  });

  test('is in the words of the language', async () => {
    const later = germanPlan
      .replace('145.500', '145.450')
      .replace('at: "19:00"', 'at: "20:00"')
      .replace('revision: 2', 'revision: 3');
    const inGerman = changeList(await revision(germanPlan), await revision(later), german);
    expect(inGerman.channels[0]?.what).toBe('Empfang 145.500 zu 145.450; Senden 145.500 zu 145.450');
    expect(inGerman.others).toEqual([{ thing: 'Runde', name: 'Abendrunde', what: 'Uhrzeit' }]);
    expect(inGerman.cards[0]?.dangers).toBe(
      'Platz 1 TAL liegt auf anderer Frequenz; die Runde Abendrunde ist eine andere',
    );
  });

  test('keeps a figure in one piece, in the groups in which it is read', async () => {
    const fine = demoPlan.replace('simplex: 146.550', 'simplex: 146.5625');
    const { channels } = changeList(await revision(demoPlan), await revision(fine), english);
    expect(channels[0]?.what).toBe('receive 146.550 to 146.562\u00a05; transmit 146.550 to 146.562\u00a05');
  });

  test('of a revision that changed nothing on paper says so', async () => {
    expect(changeList(now, now, english)).toMatchObject({ same: true, channels: [], radios: [], others: [] });
  });
});

test('a booklet has the list only of a revision that was asked for', async () => {
  const subject = await subjectOf(next);
  const page = async (more: object) =>
    new TextDecoder().decode((await documentSet({ ...subject, ...more }, press())).files.get('booklet.html'));
  expect(await page({})).not.toContain('Changes since');
  const old = await revision(demoPlan);
  const since = await page({ since: old });
  expect(since).toContain('<h2>Changes since revision 3</h2>');
  expect(since).toContain(`plan check <strong>${old.check}</strong>`);
  expect(since).toContain('<a href="#changes">Changes since revision 3</a>');
});
