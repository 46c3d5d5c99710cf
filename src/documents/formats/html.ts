/**
 * Content → one self-contained HTML file: no script, nothing fetched, readable offline and by a screen
 * reader, and printable from a browser. The content policy forbids what the page does not need.
 */
import { createHash } from 'node:crypto';
import type { Block, Cell, Content, Heading, Inline, Row, Table } from '../print/content.ts';
import { escapeMarkup } from '../print/escape-markup.ts';
import { plainText } from '../print/lay-text.ts';
import { markSvg, sceneSvg } from '../print/scene-svg.ts';

/** Widths and shares met on the way, each of which becomes a class of the style sheet. */
interface Page {
  readonly rules: Map<string, string>;
  /** The heading first met at or under each id: what a page number is on paper. */
  readonly titles: ReadonlyMap<string, string>;
}

export function html(content: Content): string {
  const page: Page = {
    rules: new Map(),
    titles: titlesOf(content.kind === 'document' ? content.blocks : []),
  };
  const body =
    content.kind === 'document'
      ? `${running('header', content.head, page)}<main>${ownTitle(content)}${blocks(content.blocks, page)}</main>\n${running('footer', content.foot, page)}`
      : `<main><h1>${escapeMarkup(content.title)}</h1>${content.cards
          .map(
            (card) =>
              `<section class="card"><div>${blocks(card.front, page)}</div><div>${blocks(card.back, page)}</div></section>`,
          )
          .join('\n')}</main>\n`;
  const rules = [...page.rules].map(([name, rule]) => `.${name}{${rule}}`).join('\n');
  const sheet = `${style.replace('PAPER', content.paper === 'A4' ? 'A4' : 'letter')}${pageHead(content)}${rules}`;
  // Of style sheets this very one alone is let in (Content Security Policy Level 3, 2.3.1).
  const hash = createHash('sha256').update(sheet).digest('base64');
  return `<!DOCTYPE html>
<html lang="${escapeMarkup(content.language)}">
<head>
<meta charset="utf-8">
<meta http-equiv="Content-Security-Policy" content="default-src 'none'; style-src 'sha256-${hash}'; base-uri 'none'; form-action 'none'">
<meta name="viewport" content="width=device-width, initial-scale=1">
<title>${escapeMarkup(content.title)}</title>
<style>${sheet}</style>
</head>
<body>
${body}</body>
</html>
`;
}

const style = `
:root{color-scheme:light}
body{margin:0 auto;max-width:52rem;padding:1rem;background:#fff;color:#000;font:100%/1.45 "DejaVu Sans",Verdana,system-ui,sans-serif;font-variant-numeric:tabular-nums slashed-zero}
h1,h2,h3,h4{line-height:1.2;margin:1.2em 0 .4em;break-after:avoid}
p{margin:.4em 0;orphans:2;widows:2}
header,footer{font-size:.9rem}
code{font-family:"DejaVu Sans Mono",ui-monospace,monospace}
code,.whole{white-space:nowrap}
table{border-collapse:collapse;margin:.8em 0;break-inside:auto}
caption{text-align:start;font-weight:bold;break-after:avoid}
th,td{padding:calc(.2em + var(--air,0mm)) .6em .2em;text-align:start;vertical-align:top}
thead{display:table-header-group;border-bottom:2px solid #000}
tr{break-inside:avoid}
.rows tr{border-bottom:1px solid #000}
.all th,.all td{border:1px solid #000}
.full{width:100%}
.plain{font-weight:normal}
.end,.decimal{text-align:end}
.center{text-align:center}
.small{font-size:.9em}
.large{font-size:1.25em}
.huge{font-size:1.6em}
.panel{border:2px solid #000;padding:.3em .8em;margin:.6em 0;break-inside:avoid}
.keep,figure,.card,.columns{break-inside:avoid}
.columns{display:flex;flex-wrap:wrap;gap:1.5rem}
.columns>*{min-width:14rem}
.card{border:1px solid #000;margin:1em 0;display:flex;flex-wrap:wrap}
.card>*{flex:1 1 20rem;padding:.4em .8em}
.blank{display:inline-block;max-width:100%;border-bottom:1px solid #000}
.mark{height:.9em;width:.9em;vertical-align:-.08em}
figure{margin:.8em 0}
figure svg{max-width:100%;height:auto}
.scroll{overflow-x:auto}
hr{border:0;border-top:1px solid #000}
a{color:#000}
@media screen and (max-width:40rem){body{padding:.5rem;overflow-wrap:break-word}th,td{padding-inline:.3em}ol,ul{padding-inline-start:1.4em}}
@media print{.scroll{overflow:visible}body{max-width:none;padding:0;font-size:10pt}.new-page{break-before:page}@page{size:PAPER;margin:15mm;@bottom-right{content:counter(page) " / " counter(pages)}}}
`;

/** On paper each sheet bears what the running head says, as far as the browser sets text in margins (CSS Paged Media Level 3, 5). */
function pageHead(content: Content): string {
  if (content.kind !== 'document' || content.head.length === 0 || countsPages(content.head)) return '';
  return `@page{@top-left{content:${cssString(plainText(content.head))};font-size:8pt}}\n`;
}

/** CSS Syntax Level 3, 4.3.7: what ends a string or a style sheet is written as its number. */
function cssString(text: string): string {
  return `"${text.replace(/["\\<>\p{Cc}]/gu, (letter) => `\\${letter.codePointAt(0)?.toString(16)} `)}"`;
}

function countsPages(line: readonly Inline[]): boolean {
  return line.some((item) => item.kind === 'page' || item.kind === 'pages');
}

/** A page without a heading of the first level takes its title for one. */
function ownTitle(content: Content & { kind: 'document' }): string {
  return [...headingsOf(content.blocks)].some((heading) => heading.level === 1)
    ? ''
    : `<h1>${escapeMarkup(content.title)}</h1>`;
}

function running(name: 'header' | 'footer', line: readonly Inline[], page: Page): string {
  // A line that counts pages says nothing on a screen; on paper the browser counts them itself.
  if (line.length === 0 || countsPages(line)) return '';
  return `<${name}><p>${inline(line, page)}</p></${name}>\n`;
}

function blocks(list: readonly Block[], page: Page): string {
  let newPage = false;
  return list
    .map((block) => {
      if (block.kind === 'new-page') {
        newPage = true;
        return '';
      }
      const drawn = blockHtml(block, page);
      const broken = newPage ? `<div class="new-page">${drawn}</div>` : drawn;
      newPage = false;
      return `${broken}\n`;
    })
    .join('');
}

function blockHtml(block: Exclude<Block, { kind: 'new-page' }>, page: Page): string {
  switch (block.kind) {
    case 'heading':
      return `<h${block.level}${idOf(block)}>${inline(block.text, page)}</h${block.level}>`;
    case 'paragraph':
      return `<p${langOf(block)}${classes([block.size === 'normal' ? '' : block.size, block.align === 'start' ? '' : block.align])}>${inline(block.text, page)}</p>`;
    case 'list': {
      const name = block.ordered ? 'ol' : 'ul';
      return `<${name}>${block.items.map((item) => `<li>${onlyWords(item, page)}</li>`).join('')}</${name}>`;
    }
    case 'table':
      return tableHtml(block, page);
    case 'figure':
      return `<figure>${sceneSvg(block.scene)}${block.caption.length === 0 ? '' : `<figcaption>${inline(block.caption, page)}</figcaption>`}</figure>`;
    case 'section':
      return `<section${idOf(block)}${classes([block.newPage ? 'new-page' : ''])}>${blocks(block.blocks, page)}</section>`;
    case 'columns':
      return `<div class="columns">${block.columns
        .map((column, index) => {
          const share = block.shares[index] ?? 1;
          const wide = block.widthsMm[index] ?? 0;
          const width =
            wide > 0
              ? rule(page, 'fixed', wide, `flex:0 0 ${wide}mm`)
              : rule(page, 'share', share, `flex:${share} 1 0`);
          return `<div${classes([width])}>${blocks(column, page)}</div>`;
        })
        .join('')}</div>`;
    case 'keep':
    case 'panel':
      return `<div class="${block.kind}">${blocks(block.blocks, page)}</div>`;
    case 'space':
      return `<div${classes([rule(page, 'space', block.heightMm, `height:${block.heightMm}mm`)])}></div>`;
    case 'contents':
      return `<nav><ul>${block.entries.map(({ id, text }) => `<li><a href="#${escapeMarkup(id)}">${escapeMarkup(text)}</a></li>`).join('')}</ul></nav>`;
    case 'fill':
      return '';
    case 'rule':
      return '<hr>';
  }
}

function onlyWords(item: readonly Block[], page: Page): string {
  const [only] = item;
  return item.length === 1 && only?.kind === 'paragraph' && only.size === 'normal'
    ? inline(only.text, page)
    : blocks(item, page);
}

/** A table of fewer columns than this has room on any screen, or breaks its words. */
const fewestToScroll = 4;

function tableHtml(table: Table, page: Page): string {
  const caption = table.caption.length === 0 ? '' : `<caption>${inline(table.caption, page)}</caption>`;
  const head = table.head.length === 0 ? '' : `<thead>${rowsHtml(table, table.head, 'col', page)}</thead>`;
  const isWide = table.columns.some(({ share }) => share > 0);
  const drawn = `<table${classes([table.lines === 'none' ? '' : table.lines, table.size === 'normal' ? '' : table.size, isWide ? 'full' : ''])}>${caption}${columnsHtml(table, page)}${head}<tbody>${rowsHtml(table, table.body, 'row', page)}</tbody></table>`;
  if (table.columns.length < fewestToScroll) return drawn;
  // On a narrow screen a wide table is moved within its frame, by the keyboard too, and not the page with it.
  const [first] = table.head;
  const name = [table.caption, ...(first?.cells ?? []).map(({ text }) => text)]
    .map(plainText)
    .filter(Boolean);
  const label = name.length === 0 ? '' : ` role="group" aria-label="${escapeMarkup(name.join(', '))}"`;
  return `<div class="scroll" tabindex="0"${label}>${drawn}</div>`;
}

/** Columns to write in have no words that would give them a width: it is said for them. */
function columnsHtml({ columns }: Table, page: Page): string {
  const whole = columns.reduce((sum, { share }) => sum + share, 0);
  const isShared = columns.every(({ share }) => share > 0);
  if (whole === 0 && columns.every(({ widthMm }) => widthMm === undefined)) return '';
  // Beside columns of words those with a share take half of the page, so that the words are not squeezed.
  const percent = isShared ? 100 : 50;
  const width = ({ widthMm, share }: Table['columns'][number]): string => {
    if (widthMm !== undefined) return rule(page, 'wide', widthMm, `width:${widthMm}mm`);
    const part = whole === 0 ? 0 : Math.round((percent * share) / whole);
    return part === 0 ? '' : rule(page, 'part', part, `width:${part}%`);
  };
  return `<colgroup>${columns.map((column) => `<col${classes([width(column)])}>`).join('')}</colgroup>`;
}

function rowsHtml(table: Table, rows: readonly Row[], scope: 'col' | 'row', page: Page): string {
  /** How many more rows each column is filled from above. */
  const filled = table.columns.map(() => 0);
  return rows
    .map((row) => {
      let column = 0;
      const cells = row.cells.map((cell) => {
        while ((filled[column] ?? 0) > 0) column += 1;
        const drawn = cellHtml(cell, cell.align ?? table.columns[column]?.align ?? 'start', scope, page);
        for (let at = column; at < column + cell.span; at += 1) filled[at] = cell.rows;
        column += cell.span;
        return drawn;
      });
      filled.forEach((left, index) => {
        filled[index] = Math.max(0, left - 1);
      });
      const height =
        row.heightMm === undefined ? '' : rule(page, 'high', row.heightMm, `height:${row.heightMm}mm`);
      const air = row.airMm === undefined ? '' : rule(page, 'air', row.airMm, `--air:${row.airMm}mm`);
      return `<tr${classes([height, air])}>${cells.join('')}</tr>`;
    })
    .join('\n');
}

function cellHtml(cell: Cell, align: string, scope: 'col' | 'row', page: Page): string {
  const name = cell.heading ? 'th' : 'td';
  const spans = `${cell.span > 1 ? ` colspan="${cell.span}"` : ''}${cell.rows > 1 ? ` rowspan="${cell.rows}"` : ''}`;
  const group =
    scope === 'col' && cell.span > 1 ? 'colgroup' : scope === 'row' && cell.rows > 1 ? 'rowgroup' : scope;
  return `<${name}${cell.heading ? ` scope="${group}"` : ''}${spans}${langOf(cell)}${classes([align === 'start' ? '' : align, cell.plain === true ? 'plain' : ''])}>${inline(cell.text, page)}</${name}>`;
}

function inline(list: readonly Inline[], page: Page): string {
  return list
    .map((item) => {
      switch (item.kind) {
        case 'text': {
          const words = escapeMarkup(item.text);
          const set = item.code
            ? `<code>${words}</code>`
            : item.whole
              ? `<span class="whole">${words}</span>`
              : words;
          return item.strong ? `<strong>${set}</strong>` : set;
        }
        case 'tick':
          return '☐';
        case 'blank':
          return `<span class="blank ${rule(page, 'wide', item.widthMm, `width:${item.widthMm}mm`)}"></span>`;
        case 'mark':
          return markSvg(item.shape, item.says);
        case 'break':
          return '<br>';
        case 'page-of':
          return `<a href="#${escapeMarkup(item.id)}">${escapeMarkup(page.titles.get(item.id) ?? item.id)}</a>`;
        default:
          return '';
      }
    })
    .join('');
}

function rule(page: Page, name: string, value: number, declaration: string): string {
  const key = `${name}-${String(value).replace('.', '_')}`;
  page.rules.set(key, declaration);
  return key;
}

function classes(names: readonly string[]): string {
  const used = names.filter((name) => name !== '');
  return used.length === 0 ? '' : ` class="${used.join(' ')}"`;
}

function idOf(block: { readonly id?: string }): string {
  return block.id === undefined ? '' : ` id="${escapeMarkup(block.id)}"`;
}

function langOf({ language }: { readonly language?: string }): string {
  return language === undefined ? '' : ` lang="${escapeMarkup(language)}"`;
}

function* headingsOf(list: readonly Block[]): Generator<Heading> {
  for (const block of list) {
    if (block.kind === 'heading') yield block;
    else if (block.kind === 'section' || block.kind === 'keep' || block.kind === 'panel')
      yield* headingsOf(block.blocks);
    else if (block.kind === 'columns') for (const column of block.columns) yield* headingsOf(column);
  }
}

function titlesOf(list: readonly Block[], titles = new Map<string, string>()): Map<string, string> {
  const name = (id: string | undefined, heading: Heading | undefined): void => {
    if (id !== undefined && heading !== undefined && !titles.has(id))
      titles.set(id, heading.text.map((item) => (item.kind === 'text' ? item.text : '')).join(''));
  };
  for (const block of list) {
    if (block.kind === 'heading') name(block.id, block);
    else if (block.kind === 'section') {
      name(block.id, headingsOf(block.blocks).next().value ?? undefined);
      titlesOf(block.blocks, titles);
    } else if (block.kind === 'keep' || block.kind === 'panel') titlesOf(block.blocks, titles);
    else if (block.kind === 'columns') for (const column of block.columns) titlesOf(column, titles);
  }
  return titles;
}
