import { extractText, getDocumentProxy } from 'unpdf';
import { expect, test } from 'vitest';
import { gatherCards, gatherGeneralCard } from '../../src/documents/cards.ts';
import { documentSet } from '../../src/documents/document-set.ts';
import { english } from '../../src/documents/words.ts';
import { demoPlan, press, subjectOf } from './press.ts';

async function cardsOf(text: string) {
  const { plan, law, consequences, check } = await subjectOf(text);
  return gatherCards(plan, law, consequences, check, english);
}

async function cardOf(text: string, id: string) {
  const card = (await cardsOf(text)).cards.find((one) => one.id === id);
  if (card === undefined) throw new Error(`no card ${id}`);
  return card;
}

test('a card begins with the channel of the first rung of its ladder', async () => {
  expect((await cardOf(demoPlan, 'inez')).first).toMatchObject({ slot: 1, name: 'GAP' });
  expect((await cardOf(demoPlan, 'bram')).first).toMatchObject({ slot: 8, name: 'NEIGHB' });
});

test('a card names those to be reached, and never its own bearer', async () => {
  const ladder = (await cardOf(demoPlan, 'calder')).ladders[0];
  expect(ladder?.reach).toBe('Ward');
});

test('a channel on which the bearer may not transmit is marked listen only, without shift or tone', async () => {
  const { channels, listening } = await cardOf(demoPlan, 'maeve');
  const neighbours = [...channels, ...listening].find(({ slot }) => slot === 8);
  expect(neighbours).toMatchObject({ listenOnly: true, power: 'listen only', shift: '', tone: '' });
});

/** Hollis of the demo without her licence: she holds the handheld and hears the repeater, and calls nowhere. */
const unlicensed = demoPlan.replace(
  'licences: { amateur: { class: technician, call: KX4XHG, expires: 2035-02-27 } }\n    ',
  '',
);

test('whoever may not transmit on their first channel is told to listen there, and calls on no rung', async () => {
  expect((await cardOf(demoPlan, 'hollis')).first).toMatchObject({ slot: 1, listen: false });
  const card = await cardOf(unlicensed, 'hollis');
  expect(card.first).toMatchObject({ slot: 1, listen: true });
  const rungs = card.ladders[0]?.rungs ?? [];
  const radio = rungs.filter(({ channel }) => channel !== null).map(({ act }) => act);
  expect(radio.length).toBeGreaterThan(1);
  for (const act of radio) expect(act).toMatch(/(?:^|, )listen only$/);
  // What is done without a radio stays.
  expect(rungs.some(({ channel, act }) => channel === null && act !== '')).toBe(true);
  expect(card.checkIns.length).toBeGreaterThan(0);
  expect(card.checkIns.every(({ listen }) => listen)).toBe(true);
});

test('the printed card of whoever only listens has the word in place of the arrow', async () => {
  const { files } = await documentSet(await subjectOf(unlicensed), press(), { packs: true });
  const textOf = async (path: string) => {
    const pdf = await getDocumentProxy((files.get(path) ?? new Uint8Array()).slice());
    return (await extractText(pdf, { mergePages: true })).text;
  };
  expect(await textOf('packs/hollis/card.pdf')).toMatch(/Listen:\s+1\s+GAP/);
  expect(await textOf('packs/otis/card.pdf')).not.toContain('Listen:');
});

test('the guest card has the roll calls and the watches for many, not those kept for one member', async () => {
  const watch =
    'check-ins:\n  for-inez: { name: Inez on her way, channel: 3, at: "21:15", days: every day, lasts: 10 min, who: [inez], listen: true }\n';
  const times = async (text: string) => {
    const { plan, law, consequences, check } = await subjectOf(text);
    return gatherGeneralCard(plan, law, consequences, check, english).cards[0]?.checkIns.map(
      ({ when }) => when,
    );
  };
  expect(await times(demoPlan.replace('check-ins:\n', watch))).toEqual(await times(demoPlan));
  expect(await times(demoPlan.replace('check-ins:\n', watch.replace('[inez]', '[inez, otis]')))).toContain(
    '21:15',
  );
});

test('a card says which radio serves a channel, and which call is said on it', async () => {
  // 47 CFR 97.119 and 95.1751: each service has its own call sign and its own duty to say it.
  const ward = await cardOf(demoPlan, 'ward');
  expect(ward.radios).toEqual([
    { mark: 'A', name: 'Dual-band handheld' },
    { mark: 'B', name: 'GMRS handheld' },
  ]);
  expect(ward.calls).toEqual(['KX4XWE on A', 'WZZZ401 on B']);
  expect(ward.channels.map(({ slot, on }) => [slot, on])).toEqual([
    [1, 'A'],
    [2, 'A'],
    [3, 'A'],
    [4, 'A'],
    [7, 'B'],
    [8, 'B'],
  ]);
  expect(ward.first).toMatchObject({ slot: 1, on: 'A' });
  expect(ward.ladders[0]?.rungs.map(({ on }) => on)).toEqual(['A', 'A', '']);
  expect(ward.checkIns.map(({ slot, on }) => [slot, on])).toEqual([
    [1, 'on A'],
    [8, 'on B'],
  ]);
  // Her MURS handheld needs no call sign, and so no call is said on it.
  expect((await cardOf(demoPlan, 'calder')).calls).toEqual(['WZZZ420 on A']);
});

test('where any radio will do, a rung names none', async () => {
  const tomas = await cardOf(demoPlan, 'tomas');
  expect(tomas.channels.map(({ slot, on }) => [slot, on])).toEqual([
    [1, 'AB'],
    [2, 'AB'],
    [3, 'AB'],
    [4, 'AB'],
    [19, 'A'],
  ]);
  expect(tomas.ladders[0]?.rungs.every(({ on }) => on === '')).toBe(true);
  expect(tomas.calls).toEqual(['KX4XTR']);
  // With one radio, or two that do the same, there is nothing to tell apart.
  expect(await cardOf(demoPlan, 'otis')).toMatchObject({ radios: [], calls: ['KX4XOB'] });
});

test('of two call signs each stands with its service where no radio tells them apart', async () => {
  const text = demoPlan.replace(
    'class: technician, call: KX4XOB, expires: 2032-10-30 } }',
    'class: technician, call: KX4XOB, expires: 2032-10-30 }, gmrs: { call: WZZZ409 } }',
  );
  expect((await cardOf(text, 'otis')).calls).toEqual(['amateur KX4XOB', 'GMRS WZZZ409']);
});

test('a card has the name that its bearer reads on the display', async () => {
  const text = demoPlan.replace('{ name: SIMP 1, ', '{ name: LONGNAME4, ');
  const hollis = await cardOf(text, 'hollis');
  const onDisplay = hollis.channels.find(({ slot }) => slot === 3)?.name;
  const { plan, consequences } = await subjectOf(text);
  const handheld = plan.radios.get('handheld');
  if (handheld === undefined) throw new Error('the plan has no handheld');
  expect(onDisplay).toBe(consequences.shownNames(handheld).get(3)?.shown);
  expect(onDisplay?.length).toBeLessThanOrEqual(7);
  expect(hollis.ladders[0]?.rungs[2]?.channel?.name).toBe(onDisplay);
  expect(hollis.checkIns.find(({ slot }) => slot === 3)?.channel).toBe(onDisplay);
  // A car radio shows one letter less, so both forms stand on the card of somebody with both.
  const tomas = (await cardOf(text, 'tomas')).channels.find(({ slot }) => slot === 3)?.name;
  expect(tomas?.split('/').map((name) => name.length <= 7)).toEqual([true, true]);
});

async function printed(text: string, path: string): Promise<readonly string[]> {
  const { files, flaws } = await documentSet(await subjectOf(text), press(), { packs: true });
  expect(flaws).toEqual([]);
  const pdf = await getDocumentProxy((files.get(path) ?? new Uint8Array()).slice());
  return (await extractText(pdf, { mergePages: false })).text;
}

test('what is for life at risk stands on the front, and on the back of a card whose front is full', async () => {
  const note = 'Life at risk? Any channel, any words.';
  const [front = '', back = ''] = await printed(demoPlan, 'packs/inez/card.pdf');
  expect([front.includes(note), back.includes(note)]).toEqual([true, false]);
  // Two more rungs than the front of a bank card has lines for, with the note.
  const rung = '- { grade: contingency, channel: 3, from: lookout, calls: 3, within: 45 min }';
  const full = demoPlan.replace(
    rung,
    `${rung}\n      - { grade: contingency, channel: 4, calls: 3, within: 45 min }`,
  );
  const [fullFront = '', fullBack = ''] = await printed(full, 'packs/inez/card.pdf');
  expect([fullFront.includes(note), fullBack.includes(note)]).toEqual([false, true]);
  // The others of the sheet keep it in front.
  const [otherFront = ''] = await printed(full, 'packs/bram/card.pdf');
  expect(otherFront).toContain(note);
});

test('a spacing that every channel has is said once, and one that differs beside its channel', async () => {
  const a6 = demoPlan.replace('size: id-1', 'size: a6');
  const inez = await cardOf(a6, 'inez');
  expect(inez.spacing).toBe('');
  expect(inez.channels.find(({ slot }) => slot === 11)?.more).toMatch(/12\.5\u00a0kHz$/);
  const otis = await cardOf(
    a6
      .replace('standard: MURS 3', 'listen: 151.940, width: 25')
      .replace('listen: 162.550', 'listen: 162.550, width: 25'),
    'otis',
  );
  expect(otis.spacing).toBe('25\u00a0kHz');
  expect(otis.channels.every(({ more }) => !more.includes('kHz'))).toBe(true);
});

test('the guest card says of each channel its service, and where no licence is asked for', async () => {
  const { plan, law, consequences, check } = await subjectOf(demoPlan);
  const [card] = gatherGeneralCard(plan, law, consequences, check, english).cards;
  // 47 CFR 95.2705 (MURS: no individual licence) and 95.1705 (GMRS: an individual licence).
  const services = new Map(card?.channels.map(({ slot, power }) => [slot, power]));
  expect([services.get(1), services.get(8), services.get(11)]).toEqual([
    'amateur',
    'GMRS',
    'MURS, no licence',
  ]);
});

test('the note on a sheet of folded cards says where to fold, and nothing of a second side', async () => {
  const [sheet = ''] = await printed(demoPlan.replace('size: id-1', 'size: fold'), 'cards.pdf');
  expect(sheet).toMatch(/fold at\s+the dotted ones/);
  expect(sheet).not.toContain('both sides');
  expect((await printed(demoPlan, 'cards.pdf'))[0]).toMatch(/Print both sides/);
});

test('a card with room says what its signs mean; on a bank card the sheet alone says it', async () => {
  for (const [size, says] of [
    ['id-1', false],
    ['fold', false],
    ['a7', true],
    ['index', true],
    ['a6', true],
  ] as const) {
    const card = await cardOf(demoPlan.replace('size: id-1', `size: ${size}`), 'inez');
    expect(card.signs, size).toBe(says);
  }
});

test('rows of channels stand in groups of three to five', async () => {
  const text = demoPlan.replace('size: id-1', 'size: a6');
  for (const { channels } of (await cardsOf(text)).cards) {
    const starts = channels.flatMap(({ air }, index) => (air ? [index] : []));
    const sizes = [0, ...starts].map((from, index) => (starts[index] ?? channels.length) - from);
    if (channels.length >= 6) expect(sizes.every((size) => size >= 3 && size <= 5)).toBe(true);
  }
});

test('a large card shows what was heard on a rung from where its bearer may be, or that nobody tried', async () => {
  const rungs = (await cardOf(demoPlan.replace('size: id-1', 'size: a6'), 'inez')).ladders[0]?.rungs;
  expect(rungs?.[0]?.tried).toBe(
    'tried 15 Nov: North Trailhead readable, Creek Shelter broken, Bald Lookout readable',
  );
  expect(rungs?.[1]?.act).toBe('3\u00a0calls; untried');
  expect(rungs?.[3]?.tried).toBe('');
});

test('the general card holds no name and no call sign of any member', async () => {
  const { plan, law, consequences, check } = await subjectOf(demoPlan);
  const text = JSON.stringify(gatherGeneralCard(plan, law, consequences, check, english).cards);
  for (const member of plan.members.values()) {
    expect(text).not.toContain(member.name);
    for (const { call } of member.licences.values()) if (call) expect(text).not.toContain(call);
  }
});

test('a frequency finer than a kilohertz is read in groups of three', async () => {
  const text = demoPlan.replace('simplex: 146.550', 'simplex: 146.562500');
  const channel = (await cardOf(text, 'inez')).channels.find(({ slot }) => slot === 3);
  expect(channel?.receive).toBe('146.562 5');
});

const manyChannels = Array.from(
  { length: 22 },
  (_, index) =>
    `  ${30 + index}:  { name: CH ${30 + index}, simplex: ${(146.4 + index * 0.005).toFixed(3)}, width: 25 }`,
).join('\n');

test('thirty channels do not fit a bank card, and the flaw names the size that holds them', async () => {
  const text = demoPlan.replace('check-ins:\n', `${manyChannels}\n\ncheck-ins:\n`);
  const { flaws } = await documentSet(await subjectOf(text), press());
  const own = flaws.find(({ at }) => at.join('.') === 'members.inez');
  expect(own?.kind).toBe('does-not-fit');
  expect(own?.suggestion).toMatch(/A card of size a6 holds it/);
  const larger = await documentSet(await subjectOf(text.replace('size: id-1', 'size: a6')), press());
  expect(larger.flaws).toEqual([]);
});

test('a member without a ladder, a check-in or a channel still gets a card', async () => {
  const text = demoPlan.replace('teams:\n', '  nobody:\n    name: Nobody At All\n\nteams:\n');
  const { flaws } = await documentSet(await subjectOf(text), press());
  expect(flaws).toEqual([]);
  expect(await cardOf(text, 'nobody')).toMatchObject({ first: null, ladders: [], channels: [] });
});

test('a very long name is set in full or reported, never cut', async () => {
  const text = demoPlan.replace('Inez Varela', 'Inez Maximiliana Wolfeschlegelsteinhausen de la Varela');
  const { flaws } = await documentSet(await subjectOf(text.replace('size: id-1', 'size: a7')), press());
  expect(flaws).toEqual([]);
});
