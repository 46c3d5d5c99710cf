/**
 * What the printing benchmark times: one process that makes a thousand personal cards, or a booklet of two
 * hundred pages, from a plan; and what it is measured against needs to begin with.
 *
 *   main.js build|html|texts cards|booklet OUT
 *
 * It is compiled as the program is, and begins as `readback build` does. `texts` writes every text of every page with its place, for a bare script that only draws.
 */
import { readdirSync, readFileSync, writeFileSync } from 'node:fs';
import { createRequire } from 'node:module';
import { preparedTemplates } from '../../src/cli/read-press.ts';
import { gatherBooklet } from '../../src/documents/booklet/booklet.ts';
import { gatherCards } from '../../src/documents/cards.ts';
import { html } from '../../src/documents/formats/html.ts';
import type { Content } from '../../src/documents/print/content.ts';
import { type FontName, fontFiles, openFonts } from '../../src/documents/print/fonts.ts';
import { layOut } from '../../src/documents/print/lay-out.ts';
import { type Measure, measureWith } from '../../src/documents/print/measure.ts';
import type { Item } from '../../src/documents/print/page.ts';
import { paint } from '../../src/documents/print/paint.ts';
import { readContent } from '../../src/documents/print/read-content.ts';
import { templateEngine } from '../../src/documents/print/render-template.ts';
import { english as words } from '../../src/documents/words.ts';
import { examine } from '../../src/pipeline.ts';
import type { Member } from '../../src/plan/model.ts';

async function main(task = '', what = '', out = ''): Promise<void> {
  const { resolve } = createRequire(`${process.cwd()}/package.json`);
  const bytes = (name: FontName) => () => readFileSync(resolve(fontFiles[name]));
  const fonts = await openFonts({
    regular: bytes('regular'),
    bold: bytes('bold'),
    mono: bytes('mono'),
    'mono-bold': bytes('mono-bold'),
    fallback: bytes('fallback'),
    'fallback-bold': bytes('fallback-bold'),
  });
  const measure = measureWith(fonts);
  const content = await contentOf(what, measure);
  if (task === 'html') {
    writeFileSync(out, html(content));
    return;
  }
  const laid = layOut(content, measure);
  if (task === 'texts')
    writeFileSync(out, JSON.stringify(laid.pages.map(({ items }) => items.flatMap(textsOf))));
  else {
    writeFileSync(out, await paint(laid, { fonts, date: new Date('2026-12-01T00:00:00Z') }));
    process.stdout.write(`${laid.pages.length}\n`);
  }
}

async function contentOf(what: string, measure: Measure): Promise<Content> {
  const templates = new Map(
    readdirSync('templates')
      .filter((name) => name.endsWith('.hbs'))
      .map((name) => [name, readFileSync(`templates/${name}`, 'utf8')]),
  );
  const render = await templateEngine(templates, preparedTemplates().prepared);
  const { whole, findings } = await examine(readFileSync('plans/hickory-gap.yaml', 'utf8'), 'plan.yaml', {
    today: '2026-12-01',
    read: async (path) => readFileSync(`plans/${path}`),
    withPaths: what === 'booklet',
  });
  if (whole === undefined) throw new Error('the demo cannot be read');
  const { plan, law, consequences, check } = whole;
  if (what === 'cards') {
    const members = [...plan.members.values()];
    // A thousand people with names of their own; the ids stay, because what they may do hangs on them.
    const thousand = Array.from({ length: 1000 }, (_, index): Member => {
      const member = members[index % members.length];
      if (member === undefined) throw new Error('the demo has no members');
      return { ...member, name: `${member.name} ${index}` };
    });
    return readContent(render('cards.hbs', gatherCards(plan, law, consequences, check, words, thousand)));
  }
  const { data, figures } = await gatherBooklet({ ...whole, findings }, words, measure);
  const once = readContent(render('booklet.hbs', data), figures);
  if (once.kind !== 'document') throw new Error('the booklet is a document');
  return { ...once, blocks: Array.from({ length: 11 }, () => once.blocks).flat() };
}

function textsOf(item: Item): readonly object[] {
  if (item.kind === 'group')
    return item.items.flatMap((inner) =>
      inner.kind === 'text' ? [{ ...plain(inner), x: inner.x + item.x, y: inner.y + item.y }] : [],
    );
  return item.kind === 'text' ? [plain(item)] : [];
}

function plain({ x, y, text, font, sizePt }: Extract<Item, { kind: 'text' }>) {
  return { x, y, text, font, sizePt };
}

main(...process.argv.slice(2)).catch((error: unknown) => {
  process.stderr.write(`${String(error)}\n`);
  process.exitCode = 2;
});
