import { HtmlValidate } from 'html-validate';
import { extractText, getDocumentProxy } from 'unpdf';
import { beforeAll, expect, test } from 'vitest';
import { gatherBooklet } from '../../src/documents/booklet/booklet.ts';
import { documentSet } from '../../src/documents/document-set.ts';
import { english } from '../../src/documents/words.ts';
import { demoPlan, press, subjectOf } from './press.ts';
import { equalWidths } from './print/equal-widths.ts';

let page = '';
let text = '';
let numbers: readonly string[] = [];
let check = '';

beforeAll(async () => {
  const subject = await subjectOf(demoPlan, true);
  check = subject.check;
  const { files, flaws } = await documentSet(subject, press());
  expect(flaws).toEqual([]);
  page = new TextDecoder().decode(files.get('booklet.html'));
  const document = await getDocumentProxy((files.get('booklet.pdf') ?? new Uint8Array()).slice());
  numbers = (await extractText(document, { mergePages: false })).text;
  text = numbers.join('\n');
});

test('the title page bears revision, effective date, plan check and its spelling', () => {
  expect(numbers[0]).toMatch(/revision 3/);
  expect(numbers[0]).toContain('2026-12-01');
  // The word for each letter begins with that letter (ITU Radio Regulations, Appendix 14).
  const spelled = numbers[0]?.split(`Plan check ${check}\n`)[1] ?? '';
  const [first, , third] = spelled.split(' ').map((word) => word[0]);
  expect([first, third]).toEqual([check[0], check[2]]);
});

test('the table of contents names for each part the page on which its heading stands', () => {
  const contents = /Contents\n([\s\S]*)/.exec(numbers[0] ?? '')?.[1] ?? '';
  const entries = [...contents.matchAll(/^(.+?) (\d+)$/gm)].filter(([line]) => !line.startsWith('Page'));
  expect(entries.length).toBeGreaterThan(8);
  for (const [, heading, number] of entries) expect(numbers[Number(number) - 1]).toContain(heading);
});

test('each page bears revision and plan check at its head', () => {
  expect(check).toMatch(/^[A-Z]\d[A-Z]\d$/);
  for (const one of numbers) expect(one).toContain(`revision 3 of 2026-12-01, plan check ${check}`);
});

test('the contents name the parts inside of sections too', () => {
  for (const heading of [
    'The longest silence',
    'Whose turn',
    'Who hangs on what',
    'The ground under the paths',
  ])
    expect(numbers[0]).toMatch(new RegExp(`^${heading} \\d+$`, 'm'));
});

test('a roll-call script stands on one page and says on which the ladder of the missed is', () => {
  const scripts = numbers.flatMap((one) => [
    ...one.matchAll(
      /^1\. Listen first\.[\s\S]*?start the ladder "(.+?)"\.\sSee\spage\s(\d+)[\s\S]*?clear\."/gm,
    ),
  ]);
  expect(scripts).toHaveLength(3);
  for (const [, ladder = '', number] of scripts)
    expect(numbers[Number(number) - 1]).toContain(`${ladder}\nFor `);
  expect(page).toMatch(/<a href="#ladder-[a-z-]+">From the trail<\/a>/);
});

test('the cautions on exposure stand on the page of the distances, before them', () => {
  const one = numbers.find((each) => /^Transmitter MHz/m.test(each)) ?? '';
  expect(one.indexOf('An estimate for the main beam')).toBeGreaterThan(-1);
  expect(one.indexOf('An estimate for the main beam')).toBeLessThan(one.search(/^Transmitter MHz/m));
});

test('the head of the contact log is one line on either paper', async () => {
  for (const sheet of ['letter', 'a4']) {
    const { files } = await documentSet(
      await subjectOf(demoPlan.replace('sheet: letter', `sheet: ${sheet}`)),
      press(),
    );
    const document = await getDocumentProxy((files.get('booklet.pdf') ?? new Uint8Array()).slice());
    const pages = (await extractText(document, { mergePages: false })).text;
    const log = await document.getPage(
      pages.findIndex((each) => /^Contact log$/m.test(each) && !/Contents/.test(each)) + 1,
    );
    const { items } = await log.getTextContent();
    const lineOf = (word: string) =>
      items.flatMap((item) =>
        'str' in item && item.str.includes(word) ? [item.transform[5] as number] : [],
      )[0];
    expect(lineOf('Operator')).toBe(lineOf('Date'));
    // Its blank ends in the margin of 15 mm.
    const end = items.flatMap((item) =>
      'str' in item && item.str.includes('Operator') ? [(item.transform[4] as number) + item.width] : [],
    )[0];
    expect((end ?? 0) + (40 * 72) / 25.4).toBeLessThan((sheet === 'a4' ? 595.3 : 612) - (15 * 72) / 25.4);
  }
});

test('a repeater without a call sign has no stray mark after its name', async () => {
  const html = new TextDecoder().decode(
    (await documentSet(await subjectOf(demoPlan.replace(/^ *call: W4XGP\n/m, '')), press())).files.get(
      'booklet.html',
    ),
  );
  expect(html).toContain('Gap repeater</strong>; time-out');
});

test('where most members are meant the others are named', async () => {
  const { data } = await gatherBooklet(await subjectOf(demoPlan), english, equalWidths);
  const all = data.members.length;
  const texts = [...data.outages, ...data.doubleOutages].flatMap(({ members, rungs }) => [members, rungs]);
  for (const text of texts) expect(text.split(', ').length).toBeLessThan(all - 3);
  expect(texts.filter((text) => text.startsWith('everybody but ')).length).toBeGreaterThan(0);
});

test('the roll-call script states the duty to identify of the service of its channel', () => {
  // 47 CFR 97.119(a): at the end of each communication and at least every 10 minutes; 95.1751(a): every 15 minutes.
  expect(text).toMatch(/Identify\.[^.]*at least every 10 minutes/);
  expect(text).toMatch(/Identify\.[^.]*at least every 15 minutes/);
});

test('a service without a duty to identify has none in its script', async () => {
  // 47 CFR 95.2751 and following ask no identification of MURS stations.
  const { data } = await gatherBooklet(await subjectOf(demoPlan), english, equalWidths);
  expect(data.rollCalls.find(({ slot }) => slot === 11)?.identify).toBe('');
});

test('a roll call gives the call sign of its own service alone, and in a service without call signs says names', async () => {
  // 47 CFR 97.119(a): the amateur call sign; 95.1751: that of the GMRS station; 95.2701 and following know none for MURS.
  const { data } = await gatherBooklet(await subjectOf(demoPlan), english, equalWidths);
  const on = (slot: number) => {
    const found = data.rollCalls.find((each) => each.slot === slot);
    if (found === undefined) throw new Error(`no roll call on ${slot}`);
    return { ...found, ward: found.roll.find(({ name }) => name === 'Ward Ellison') };
  };
  expect(on(1)).toMatchObject({ signs: true, ward: { call: 'KX4XWE', silent: false } });
  expect(on(8)).toMatchObject({ signs: true, ward: { call: 'WZZZ401', silent: false } });
  const murs = on(11);
  expect(murs.signs).toBe(false);
  expect(murs.roll.map(({ call }) => call).join('')).toBe('');
  expect(`${murs.open} ${murs.close}`).toMatch(/This is \[your name\].*This is \[your name\]/);
});

test('a surname of 36 letters without a hyphen keeps no booklet from being printed', async () => {
  const surname = 'Wolfeschlegelsteinhausenbergerdorffs';
  expect(surname).toHaveLength(36);
  const plan = demoPlan
    .replaceAll('Ward Ellison', `Ward ${surname}`)
    .replaceAll('Inez Varela', `Inez ${surname}`);
  const { flaws } = await documentSet(await subjectOf(plan, true), press());
  expect(flaws.filter(({ at }) => at[0] !== 'members')).toEqual([]);
});

test('whoever may not transmit on the channel of a roll call is not waited for', async () => {
  const { data } = await gatherBooklet(
    await subjectOf(demoPlan.replace('expires: 2034-07-11', 'expires: 2020-01-01')),
    english,
    equalWidths,
  );
  const row = data.rollCalls.find(({ slot }) => slot === 1)?.roll.find(({ name }) => name.startsWith('Inez'));
  expect(row).toMatchObject({ call: '', silent: true });
});

test('net control is not asked to call herself: her row is marked, and ticked by others where they take turns', async () => {
  const one = demoPlan.replace(/control: \[[^\]]*\]/g, 'control: [ward]').replace(/^ *turn: .*\n/gm, '');
  const rollOf = async (plan: string) => {
    const { data } = await gatherBooklet(await subjectOf(plan), english, equalWidths);
    return data.rollCalls.flatMap(({ roll }) => roll.filter(({ control, turn }) => control || turn));
  };
  const alone = await rollOf(one);
  expect(alone.length).toBeGreaterThan(0);
  for (const row of alone) expect(row).toMatchObject({ name: 'Ward Ellison', control: true, turn: false });
  expect((await rollOf(demoPlan)).some(({ turn, control }) => turn && !control)).toBe(true);
});

test('the distance table and the paths stand beside their cautions', () => {
  expect(text).toContain('only a trial proves a path');
  expect(text).toMatch(/An estimate for the main beam/);
  expect(text).toContain('Local rules and licensed practice come first.');
});

test('of a plan without ground the booklet has no section of paths', async () => {
  const { files } = await documentSet(await subjectOf(demoPlan, false), press());
  const plain = new TextDecoder().decode(files.get('booklet.html'));
  expect(plain).not.toContain('id="paths"');
  expect(page).toContain('id="paths"');
});

test('the smallest plan makes a booklet with the forms and without what it has no data for', async () => {
  const least = `readback: 1
plan: { title: Least, revision: 1, effective: 2026-12-01, timezone: UTC, rules: us }
`;
  const { files, flaws } = await documentSet(await subjectOf(least), press());
  expect(flaws).toEqual([]);
  const html = new TextDecoder().decode(files.get('booklet.html'));
  for (const id of ['members', 'channels', 'repeaters', 'check-ins', 'ladders', 'outages', 'exposure'])
    expect(html).not.toContain(`id="${id}"`);
  expect(html).toContain('id="message"');
});

test('each picture of the ground stays in its frame and rises with the bulge of the earth', async () => {
  const { figures } = await gatherBooklet(await subjectOf(demoPlan, true), english, equalWidths);
  const profiles = [...figures].filter(([name]) => name.startsWith('profile-'));
  expect(profiles.length).toBeGreaterThan(10);
  for (const [, scene] of profiles)
    for (const shape of scene.shapes)
      if (shape.kind === 'line' || shape.kind === 'polygon')
        for (const [x, y] of shape.points) {
          expect(x).toBeGreaterThanOrEqual(0);
          expect(x).toBeLessThanOrEqual(scene.widthMm);
          expect(y).toBeGreaterThanOrEqual(-0.5);
          expect(y).toBeLessThanOrEqual(scene.heightMm);
        }
});

test('the page is valid HTML, self-contained and under a strict content policy', async () => {
  const report = await new HtmlValidate({ extends: ['html-validate:standard'] }).validateString(page);
  expect(
    report.results.flatMap(({ messages }) =>
      messages.map(({ ruleId, message, line }) => `${line} ${ruleId}: ${message}`),
    ),
  ).toEqual([]);
  expect(page).toContain("default-src 'none'");
  expect(page).not.toMatch(/<script|https?:\/\/|<link|@import| on[a-z]+=| style=/);
});

test('same plan, same bytes', async () => {
  const [one, other] = await Promise.all([
    documentSet(await subjectOf(demoPlan), press()),
    documentSet(await subjectOf(demoPlan), press()),
  ]);
  for (const [path, bytes] of one.files)
    expect(Buffer.compare(bytes, other.files.get(path) ?? new Uint8Array()), path).toBe(0);
});

test('a plan of eighty channels and a hundred members still makes booklet and guest cards', async () => {
  const channels = Array.from(
    { length: 70 },
    (_, index) =>
      `  ${30 + index}:  { name: CH ${30 + index}, simplex: ${(146.4 + (index % 30) * 0.005).toFixed(3)}, width: 25 }`,
  );
  const members = Array.from({ length: 100 }, (_, index) => `  extra-${index}: { name: E${index} Extra }`);
  const text = demoPlan
    .replace('check-ins:\n', `${channels.join('\n')}\n\ncheck-ins:\n`)
    .replace(
      'teams:\n',
      `${members.join('\n')}\n\nteams:\n  everybody: [${members.map((_, index) => `extra-${index}`).join(', ')}]\n`,
    )
    .replace('    who: [juno]', '    who: [juno, everybody]');
  const { files, flaws } = await documentSet(await subjectOf(text), press());
  // Cards of bank-card size cannot hold so many channels; nothing else is in the way.
  expect(flaws.filter(({ at }) => at[0] !== 'members')).toEqual([]);
  const html = new TextDecoder().decode(files.get('booklet.html'));
  expect(html).toContain('CH 99');
  expect(html).not.toContain('Which stations and channels members hang on');
});
