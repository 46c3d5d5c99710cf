import { readdirSync, readFileSync } from 'node:fs';
import { extractText, getDocumentProxy } from 'unpdf';
import { describe, expect, test } from 'vitest';
import { compareRevisions, type Revision, type Spelling } from '../../src/audit/compare-revisions.ts';
import { changeSet } from '../../src/documents/change-set.ts';
import { changeWorksheets } from '../../src/documents/change-sheets.ts';
import { clock, daysText } from '../../src/documents/figures.ts';
import { english } from '../../src/documents/words.ts';
import { keyedValue } from '../../src/documents/worksheets.ts';
import { planCheck } from '../../src/plan/plan-check.ts';
import { planFrom } from '../audit/worksheet-rows.ts';
import { fontBytes } from './print/real-fonts.ts';

const spelling: Spelling = {
  entry: (entry, field) => keyedValue(entry, field, english),
  clock: (time) => clock(time, english),
  days: (days) => daysText(days, english),
};

const demo = readFileSync(new URL('../../plans/hickory-gap.yaml', import.meta.url), 'utf8');
const templates = new Map(
  readdirSync(new URL('../../templates', import.meta.url))
    .filter((name) => name.endsWith('.hbs'))
    .map((name) => [name, readFileSync(new URL(`../../templates/${name}`, import.meta.url), 'utf8')]),
);

async function revision(text: string): Promise<Revision> {
  const tested = await planFrom(text);
  return { ...tested, check: planCheck(tested.plan) };
}

const moved = (text: string) => text.replace('output: 146.940', 'output: 146.715');

/** Every simplex channel and repeater elsewhere, and a dozen more: too much for a small card. */
const allMoved = (text: string) =>
  moved(text)
    .replace('simplex: 146.550', 'simplex: 146.445')
    .replace('simplex: 446.100', 'simplex: 446.175')
    .replace('output: 444.325', 'output: 444.350')
    .replace('output: 462.625', 'output: 462.675')
    .replace(
      'channels:\n',
      `channels:\n${Array.from({ length: 12 }, (_, at) => `  ${40 + at}: { name: NEW ${at}, simplex: 146.${400 + 15 * at} }\n`).join('')}`,
    );

describe('what a group is handed when a plan moves on', () => {
  test('the worksheet shows what the radio holds now beside what it is to hold, and only the slots that change', async () => {
    const [old, now] = [await revision(demo), await revision(moved(demo))];
    const sheets = changeWorksheets(old, now, compareRevisions(old, now, spelling), english);
    const handheld = sheets.find(({ id }) => id === 'handheld');
    expect(sheets.map(({ id }) => id)).not.toContain('gmrs-handheld');
    expect(handheld?.slots.map(({ slot }) => slot)).toEqual([1]);
    expect(handheld?.slots[0]?.entries.filter(({ differs }) => differs)).toEqual([
      { field: 'Receive', was: '146.940 MHz', is: '146.715 MHz', differs: true },
    ]);
    expect(handheld?.kept).toContain(2);
  });

  test('the change card keeps the size of the cards while it can, and takes the next size that holds it when it cannot', async () => {
    const old = await revision(demo);
    // The note at the foot of the sheet says which size was taken.
    const card = (templates.get('change-card.hbs') ?? '').replace('<note>', '<note>Size {{card}}. ');
    const press = {
      fonts: fontBytes,
      words: english,
      templates: new Map([...templates, ['change-card.hbs', card]]),
    };
    const sizes: (string | undefined)[] = [];
    for (const change of [moved, allMoved]) {
      const now = await revision(change(demo));
      const comparison = compareRevisions(old, now, spelling);
      const { files, flaws } = await changeSet(old, now, comparison, press);
      expect(flaws).toEqual([]);
      const pdf = await getDocumentProxy(Uint8Array.from(files.get('change-card.pdf') ?? []));
      const { text } = await extractText(pdf, { mergePages: true });
      for (const { slot } of comparison.channels) expect(text).toContain(String(slot));
      sizes.push(/Size ([a-z0-9-]+)\./.exec(text)?.[1]);
    }
    expect(sizes[0]).toBe('id-1');
    expect(['a7', 'index', 'a6']).toContain(sizes[1]);
  }, 60_000);
});
