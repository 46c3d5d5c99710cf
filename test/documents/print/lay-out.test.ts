import fc from 'fast-check';
import { expect, it } from 'vitest';
import { layOut, papers } from '../../../src/documents/print/lay-out.ts';
import type { Item, LaidOut, Page, TextItem } from '../../../src/documents/print/page.ts';
import { readContent } from '../../../src/documents/print/read-content.ts';
import { equalWidths } from './equal-widths.ts';

// A4 less margins of 15 mm is 180 mm, 510.24 pt: 102 letters of 5 pt at a size of 10 pt.
const lay = (body: string, attributes = 'size="10"'): LaidOut =>
  layOut(
    readContent(`<document title="T" language="en" paper="A4" ${attributes}>${body}</document>`),
    equalWidths,
  );

const texts = (page: Page | undefined): TextItem[] =>
  (page?.items ?? []).filter((item): item is TextItem => item.kind === 'text');
const words = (page: Page | undefined): string[] => texts(page).map((item) => item.text.trimEnd());
const rows = (count: number, cells = (index: number) => `<cell>row ${index}</cell><cell>b</cell>`) =>
  Array.from({ length: count }, (_, index) => `<row>${cells(index + 1)}</row>`).join('');
const table = (body: string, columns = '<column/><column share="1"/>') =>
  `<table>${columns}<head><row><cell>Head</cell><cell>Two</cell></row></head>${body}</table>`;

it('a line holds as many words as its width, and not one more', () => {
  const page = lay(`<p>${'abcd '.repeat(21)}</p>`).pages[0];
  // Twenty words of four letters with their spaces are 99 letters; the twenty-first would make 104.
  expect(words(page).map((line) => line.split(' ').length)).toEqual([20, 1]);
});

it('whatever the words, no line is wider than its column and no word is lost', () => {
  fc.assert(
    fc.property(fc.array(fc.stringMatching(/^[a-z]{1,12}$/), { minLength: 60, maxLength: 120 }), (list) => {
      const lines = texts(lay(`<p>${list.join(' ')}</p>`).pages[0]);
      for (const line of lines) expect(line.text.trimEnd().length * 5).toBeLessThanOrEqual(510.24);
      expect(lines.flatMap((line) => line.text.trimEnd().split(' '))).toEqual(list);
    }),
  );
});

it('a broken line ends with a space, so that its last word and the next stay apart when read out', () => {
  const [first] = texts(lay(`<p>${'abcd '.repeat(21)}</p>`).pages[0]);
  expect(first?.text.endsWith('abcd ')).toBe(true);
  expect(first?.widthPt).toBeCloseTo(500, 6);
});

it('a word that is too long breaks after a hyphen, and one with a figure in it never breaks', () => {
  const hyphen = lay(`<p>${'a'.repeat(60)}-${'b'.repeat(60)}</p>`);
  expect(words(hyphen.pages[0])).toEqual([`${'a'.repeat(60)}-`, 'b'.repeat(60)]);
  expect(hyphen.overflows).toEqual([]);
  const figure = lay(`<p><num>${'1'.repeat(103)}</num></p>`);
  expect(words(figure.pages[0])).toEqual(['1'.repeat(103)]);
  expect(figure.overflows).toEqual([expect.objectContaining({ neededMm: 181.7, availableMm: 180 })]);
});

it('a paragraph that meets the foot of a page leaves two lines on each side', () => {
  // 267 mm are 756.85 pt: 58 lines of 13 pt.
  const line = `${'abcd '.repeat(20)}`;
  for (let before = 51; before <= 59; before += 1) {
    const laid = lay(`<p>${'x<br/>'.repeat(before - 1)}x</p><p>${line.repeat(4)}</p>`);
    const on = laid.pages.map((page) => words(page).filter((text) => text.startsWith('abcd')).length);
    expect(
      on.every((count) => count === 0 || count >= 2),
      `${before} lines before: ${on.join(' + ')}`,
    ).toBe(true);
    expect(on.reduce((sum, count) => sum + count, 0)).toBe(4);
  }
});

it('a heading is never the last thing on a page', () => {
  for (let before = 50; before < 59; before += 1) {
    const laid = lay(`<p>${'x<br/>'.repeat(before)}x</p><heading>Title</heading><p>one</p>`);
    for (const page of laid.pages) expect(words(page).at(-1)).not.toBe('Title');
  }
});

it('what is to be kept together stands on one page', () => {
  const laid = lay(`<p>${'x<br/>'.repeat(53)}x</p><keep><p>a</p><p>b</p><p>c</p><p>d</p></keep>`);
  expect(words(laid.pages[0]).at(-1)).toBe('x');
  expect(words(laid.pages[1])).toEqual(['a', 'b', 'c', 'd']);
});

it('what is kept together but taller than a page is broken all the same, and nothing is lost', () => {
  const laid = lay(
    `<keep>${Array.from({ length: 90 }, (_, index) => `<p>line ${index}</p>`).join('')}</keep>`,
  );
  expect(laid.pages.flatMap(words)).toEqual(Array.from({ length: 90 }, (_, index) => `line ${index}`));
});

it('a table over several pages shows its head on each and every row once, in order', () => {
  const laid = lay(table(rows(100)));
  expect(laid.pages.length).toBeGreaterThan(1);
  for (const page of laid.pages) expect(words(page).slice(0, 2)).toEqual(['Head', 'Two']);
  const column = laid.pages.flatMap((page) => words(page).filter((text) => text.startsWith('row')));
  expect(column).toEqual(Array.from({ length: 100 }, (_, index) => `row ${index + 1}`));
});

it('the head that is set again is furniture: whoever hears the table read hears it once', () => {
  const laid = lay(table(rows(100)));
  const heads = laid.pages.map((page) => texts(page).find((item) => item.text === 'Head')?.node);
  expect(heads[0]).toBeTypeOf('number');
  expect(heads.slice(1).every((node) => node === undefined)).toBe(true);
});

it('no page ends inside a cell that spans rows', () => {
  const spans = Array.from(
    { length: 60 },
    (_, index) =>
      `<row><cell rows="3">three ${index}</cell><cell>a${index}</cell></row><row><cell>b${index}</cell></row><row><cell>c${index}</cell></row>`,
  );
  for (const page of lay(table(spans.join(''))).pages) {
    const shown = words(page);
    for (const start of shown.filter((text) => text.startsWith('three')))
      expect(shown).toContain(`c${start.slice(6)}`);
  }
});

it('decimal points stand under one another', () => {
  const figures = ['146.940', '52.525', '1296.1', '7', '444.8'];
  const laid = lay(
    `<table><column align="decimal"/>${figures.map((text) => `<row><cell><num>${text}</num></cell></row>`).join('')}</table>`,
  );
  const points = texts(laid.pages[0]).map(
    (item) => item.x + (item.text.includes('.') ? item.text.indexOf('.') : item.text.length) * 5,
  );
  for (const point of points) expect(point).toBeCloseTo(points[0] ?? 0, 6);
});

it('columns of a crowded table give way, but no figure is broken', () => {
  const laid = lay(
    `<table><column/><column/><row><cell>${'word '.repeat(60)}</cell><cell><num>146.940000</num></cell></row></table>`,
  );
  expect(words(laid.pages[0])).toContain('146.940000');
  expect(laid.overflows).toEqual([]);
});

it('a long name in a table is broken after its hyphen, else between letters with one, before the table is too wide', () => {
  const columns = '<column/>'.repeat(4);
  const row = (name: string) =>
    `<row><cell>${name}</cell><cell>${name}</cell><cell>${name}</cell><cell><num>07:30</num></cell></row>`;
  const set = (name: string) => {
    const laid = lay(`<table>${columns}${row(name)}</table>`);
    expect(laid.overflows).toEqual([]);
    const found = words(laid.pages[0]);
    expect(found).toContain('07:30');
    return found.filter((text) => text !== '07:30');
  };
  // 40 letters of 5 pt three times over are wider than 510 pt; 20 and 21 are not.
  const [begin, end] = ['w'.repeat(19), 'f'.repeat(20)];
  expect(set(`${begin}-${end}`)).toEqual([0, 1, 2].flatMap(() => [`${begin}-`, end]));
  const broken = set('s'.repeat(40));
  const [first = ''] = broken;
  expect(first).toMatch(/^s{20,}-$/);
  expect(broken.join('').replaceAll('-', '')).toBe('s'.repeat(120));
});

it('a long name in a line of text is broken with a hyphen that is no wider than the line, and never before an accent', () => {
  const accented = 'e\u0301'.repeat(80);
  const [first = '', second = ''] = words(lay(`<p>${accented}</p>`).pages[0]);
  expect(first.length).toBeLessThanOrEqual(102);
  expect(first.endsWith('\u0301-')).toBe(true);
  expect(first.slice(0, -1) + second).toBe(accented);
});

it('a small table is not divided, and of a longer one no single row is left on a page', () => {
  // 267 mm are 58 lines of 13 pt; a row is 16 pt high.
  for (let before = 40; before <= 57; before += 1) {
    const lines = `<p>${'x<br/>'.repeat(before - 1)}x</p>`;
    const rowsOn = (count: number) =>
      lay(`${lines}${table(rows(count))}`)
        .pages.map((page) => words(page).filter((text) => text.startsWith('row ')).length)
        .filter((found) => found > 0);
    expect(rowsOn(4), `${before} lines before`).toEqual([4]);
    for (const found of rowsOn(12)) expect(found, `${before} lines before`).toBeGreaterThan(1);
  }
});

it('words before a table, and a heading row with two rows of its group, stand where the table begins', () => {
  for (let before = 40; before <= 57; before += 1) {
    const group = (name: string) =>
      `<row><cell span="2" heading="yes">${name}</cell></row>${rows(5, (index) => `<cell>${name} ${index}</cell><cell>b</cell>`)}`;
    const laid = lay(
      `<p>${'x<br/>'.repeat(before - 1)}x</p><p>Intro</p>${table(group('north') + group('south'))}`,
    );
    const pageOf = (text: string) => laid.pages.findIndex((page) => words(page).includes(text));
    expect(pageOf('Intro'), `${before} lines before`).toBe(pageOf('north 1'));
    for (const name of ['north', 'south']) expect(pageOf(name)).toBe(pageOf(`${name} 2`));
  }
});

it('the word before the number of a page stands on paper, before a number that is known', () => {
  const laid = lay(
    '<p>See (<page-of id="b" word="page"/>)</p><section id="b" new-page="yes"><p>B</p></section>',
  );
  expect(words(laid.pages[0])).toEqual(['See (page\u00a02)']);
  const last = lay(
    '<p>See <page-of id="b" word="page"/></p><section id="b" new-page="yes"><p>B</p></section>',
  );
  expect(
    texts(last.pages[0])
      .map(({ text }) => text)
      .join(''),
  ).toBe('See page\u00a02');
});

it('figures that a table has no room for are reported with the width they need', () => {
  const laid = lay(
    `<table caption="Wide"><column/><column/><row><cell><num>${'1'.repeat(60)}</num></cell><cell><num>${'2'.repeat(60)}</num></cell></row></table>`,
  );
  // 60 figures of 5 pt are 300 pt, 105.8 mm; half of 180 mm less 5 pt on either side is 86.5 mm.
  expect(laid.overflows).toHaveLength(2);
  expect(laid.overflows[0]).toMatchObject({ words: '1'.repeat(60), neededMm: 105.8, availableMm: 86.5 });
});

it('a cell over two columns is as wide as both', () => {
  const laid = lay(
    `<table lines="all"><column mm="30"/><column mm="30"/><row><cell span="2" align="end">ab</cell></row></table>`,
  );
  const [item] = texts(laid.pages[0]);
  // The right edge lies 60 mm from the margin, less half a letter size of room.
  expect((item?.x ?? 0) + 10).toBeCloseTo((15 + 60) * (72 / 25.4) - 5, 6);
});

it('a long cell over several columns widens the one that takes what room is left, not the narrow ones', () => {
  const laid = lay(
    '<table><column/><column share="1"/><row><cell>1</cell><cell>a</cell></row><row><cell span="2">a cell as long as this</cell></row></table>',
  );
  const [first, second] = texts(laid.pages[0]);
  // One letter of 5 pt with 5 pt on either side.
  expect((second?.x ?? 0) - (first?.x ?? 0)).toBeCloseTo(15, 6);
});

it('a running head that is too long for a line goes on in the next, above the rule and the text', () => {
  const short = lay('<running-head>head</running-head><p>text</p>').pages[0];
  // Thirty words of four letters with their spaces are 150 letters of 4.25 pt; a line holds 120.
  const long = lay(`<running-head>${'abcd '.repeat(29)}<b>last</b></running-head><p>text</p>`).pages[0];
  const read = texts(long).filter(({ running }) => running === 'Header');
  expect(
    read
      .map(({ text }) => text)
      .join('')
      .trim()
      .split(' '),
  ).toHaveLength(30);
  expect(read.at(-1)?.text).toBe('last');
  const yOf = (page: Page | undefined, text: string) =>
    texts(page).find((item) => item.text === text)?.y ?? 0;
  expect(yOf(long, 'text') - yOf(short, 'text')).toBeCloseTo(8.5 * 1.2, 6);
  const rule = long?.items.find((item) => item.kind === 'line');
  const ruleY = rule?.kind === 'line' ? (rule.points[0]?.[1] ?? 0) : 0;
  expect(ruleY).toBeGreaterThan(yOf(long, 'last'));
  expect(ruleY).toBeLessThan(yOf(long, 'text'));
});

it('the running foot counts the pages, and a reference names the page of its part', () => {
  const laid = lay(
    `<running-foot>Page <page/> of <pages/></running-foot><p>see <page-of id="b"/>!</p><section id="b" new-page="yes"><p>here</p></section>`,
  );
  expect(laid.pages.map((page) => words(page).at(-1))).toEqual(['Page 1 of 2', 'Page 2 of 2']);
  expect(words(laid.pages[0]).slice(0, 2)).toEqual(['see 2!', 'Page 1 of 2']);
});

it('a reference to a part that is nowhere shows a dash', () => {
  expect(words(lay('<p>see <page-of id="gone"/></p>').pages[0])).toEqual(['see', '–']);
});

it('columns side by side begin at one height and share the width as stated', () => {
  const [left, right] = texts(
    lay('<columns><column share="2"><p>left</p></column><column><p>right</p></column></columns>').pages[0],
  );
  expect(left?.y).toBe(right?.y);
  // 510.24 less a gutter of 15 is 495.24; two thirds of it and the gutter lie to the left.
  expect((right?.x ?? 0) - (left?.x ?? 0)).toBeCloseTo((495.236 * 2) / 3 + 15, 2);
});

it('what no page can hold is reported', () => {
  const laid = lay(`<panel><p>${'x<br/>'.repeat(70)}x</p></panel>`);
  expect(laid.overflows[0]?.what).toContain('cannot be divided');
});

it('a character no font has is reported with the text it stands in', () => {
  expect(lay('<p>Call \u{1f984} now</p>').missing).toEqual([{ character: '\u{1f984}', text: '\u{1f984}' }]);
});

it('every item of the pages lies on its paper', () => {
  const laid = lay(
    `<running-head>head</running-head><heading level="1">A</heading>${table(rows(80))}<list ordered="yes"><item>one <tick/> <blank mm="50"/></item></list><panel><p size="huge">Big</p></panel>`,
  );
  for (const page of laid.pages)
    for (const [x, y] of page.items.flatMap(corners)) {
      expect(x >= 0 && x <= papers.A4.widthPt && y >= 0 && y <= papers.A4.heightPt).toBe(true);
    }
});

function corners(item: Item): readonly (readonly [number, number])[] {
  if (item.kind === 'text')
    return [
      [item.x, item.y - item.sizePt],
      [item.x + item.widthPt, item.y + item.sizePt / 4],
    ];
  if (item.kind === 'line' || item.kind === 'polygon') return item.points;
  if (item.kind === 'circle')
    return [
      [item.x - item.radiusPt, item.y - item.radiusPt],
      [item.x + item.radiusPt, item.y + item.radiusPt],
    ];
  return [];
}
