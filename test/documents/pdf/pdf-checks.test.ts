import { readFileSync } from 'node:fs';
import { beforeAll, describe, expect, test } from 'vitest';
import { compareRevisions } from '../../../src/audit/compare-revisions.ts';
import { changeSet } from '../../../src/documents/change-set.ts';
import { spellingIn } from '../../../src/documents/change-sheets.ts';
import { documentSet } from '../../../src/documents/document-set.ts';
import { planCheck } from '../../../src/plan/plan-check.ts';
import { planFrom } from '../../audit/worksheet-rows.ts';
import { demoPlan, press, subjectOf } from '../press.ts';
import { pdfChecks } from './pdf-checks.ts';
import { canPreflight, preflight } from './preflight.ts';
import { canReadPdf, drawnOn, type Pdf, pagesOf, readPdf } from './read-pdf.ts';

const written = new Map<string, Uint8Array>();
const files = new Map<string, Pdf>();

beforeAll(async () => {
  const german = readFileSync(new URL('../../../plans/lauterkar-hut.yaml', import.meta.url), 'utf8');
  for (const [name, text, language] of [
    ['demo', demoPlan, 'en'],
    ['german', german, 'de'],
  ] as const) {
    const since = { ...(await planFrom(text)), check: planCheck((await planFrom(text)).plan) };
    const subject = await subjectOf(
      text.replace('output: 146.940', 'output: 146.715').replace('simplex: 145.3500', 'simplex: 145.3625'),
      true,
    );
    const set = await documentSet({ ...subject, since }, press(language), { testSheet: true });
    const { words } = press(language);
    const changes = await changeSet(
      since,
      subject,
      compareRevisions(since, subject, spellingIn(words)),
      press(language),
    );
    for (const [path, bytes] of [
      ...set.files,
      ...[...changes.files].map(([at, each]) => [`changes/${at}`, each] as const),
    ])
      if (path.endsWith('.pdf')) written.set(`${name}/${path}`, bytes);
  }
  if (canReadPdf) for (const [name, bytes] of written) files.set(name, readPdf(bytes));
}, 60_000);

describe.runIf(canReadPdf)('every PDF', () => {
  test('is there to be checked: cards, worksheets, channel list, booklet, test sheet and what changed', () => {
    const kinds = ['cards', 'guest-card', 'worksheets/handheld', 'channel-list', 'booklet', 'printer-test'];
    for (const kind of [...kinds, 'changes/change-card', 'changes/worksheets/handheld'])
      for (const plan of ['demo', 'german']) expect([...files.keys()]).toContain(`${plan}/${kind}.pdf`);
  });

  test('the sheets of running text say on every page which words are its head and its foot', () => {
    const sheets = [...files].filter(([name]) => /booklet|channel-list|worksheets/.test(name));
    expect(sheets.length).toBeGreaterThan(8);
    for (const [name, pdf] of sheets)
      for (const page of pagesOf(pdf)) {
        const kinds = drawnOn(pdf, page).markings.flatMap(({ marking }) => marking.subtype ?? []);
        expect([name, ...new Set(kinds)].sort()).toEqual([name, 'Footer', 'Header'].sort());
      }
  });

  test.each(pdfChecks)('$clause: $says', ({ flaws }) => {
    const found = [...files].flatMap(([name, pdf]) => flaws(pdf).map((flaw) => `${name}: ${flaw}`));
    expect(found).toEqual([]);
  });

  test.each(pdfChecks)('$clause is noticed where it is broken', ({ flaws, spoil }) => {
    const pdf = structuredClone(files.get('demo/booklet.pdf'));
    if (pdf === undefined) throw new Error('no booklet');
    spoil(pdf);
    expect(flaws(pdf)).not.toEqual([]);
  });
});

describe.runIf(canPreflight)('a validator of PDF/A', () => {
  test('finds nothing in any PDF', () => {
    expect(written.size).toBeGreaterThan(20);
    expect(preflight(written)).toEqual([]);
  }, 60_000);

  test('finds a property of PDF/UA that the file does not describe', () => {
    const sound = written.get('demo/channel-list.pdf') ?? new Uint8Array();
    const spoilt = Buffer.from(sound)
      .toString('latin1')
      .replace(
        '<pdfaSchema:namespaceURI>http://www.aiim.org/pdfua',
        '<pdfaSchema:namespaceURI>http://www.aiim.org/pdfub',
      );
    const [flaw] = preflight(new Map([['spoilt', Buffer.from(spoilt, 'latin1')]]));
    expect(flaw).toMatch(/^spoilt: 7\.3 .*pdfua/);
  });
});
