/** Words and what stands between them: the elements inside a paragraph, a cell or a heading. */
import type { Inline, MarkShape } from './content.ts';
import type { Element } from './parse-markup.ts';
import { allow, choice, empty, positive, required, unknown } from './read-element.ts';

const shapes: readonly MarkShape[] = [
  'dot',
  'ring',
  'square',
  'diamond',
  'triangle',
  'cross',
  'bar',
  'arrow',
];
const inlineNames = ['b', 'code', 'num', 'tick', 'blank', 'mark', 'br', 'page-of'];
export function runningText(element: Element): Inline[] {
  allow(element, []);
  return readInline(element, ['page', 'pages']);
}

interface Look {
  readonly strong: boolean;
  readonly code: boolean;
  readonly whole: boolean;
}

export function text(value: string, look: Look): Inline {
  return { kind: 'text', text: value, ...look };
}

export function readInline(element: Element, also: readonly string[] = []): Inline[] {
  const found: Inline[] = [];
  const walk = (parent: Element, look: Look): void => {
    for (const child of parent.children) {
      if (typeof child === 'string') {
        const words = child.replace(/[ \t\r\n]+/g, ' ');
        if (words !== '') found.push(text(words, look));
        continue;
      }
      if (!inlineNames.includes(child.name) && !also.includes(child.name))
        throw unknown(child, element.name, [...inlineNames, ...also]);
      if (child.name === 'b' || child.name === 'code' || child.name === 'num') {
        allow(child, []);
        walk(child, {
          strong: look.strong || child.name === 'b',
          code: look.code || child.name === 'code',
          whole: look.whole || child.name !== 'b',
        });
        continue;
      }
      empty(child);
      if (child.name === 'blank') {
        allow(child, ['mm']);
        found.push({ kind: 'blank', widthMm: positive(child, 'mm') });
      } else if (child.name === 'mark') {
        allow(child, ['shape', 'says']);
        found.push({ kind: 'mark', shape: choice(child, 'shape', shapes), says: required(child, 'says') });
      } else if (child.name === 'page-of') {
        allow(child, ['id', 'word']);
        const word = child.attributes.get('word');
        found.push({
          kind: 'page-of',
          id: required(child, 'id'),
          ...(word !== undefined && { word }),
        });
      } else {
        allow(child, []);
        found.push({
          kind:
            child.name === 'tick'
              ? 'tick'
              : child.name === 'br'
                ? 'break'
                : child.name === 'page'
                  ? 'page'
                  : 'pages',
        });
      }
    }
  };
  walk(element, { strong: false, code: false, whole: false });
  return trimmed(found);
}

/** Blanks at the two ends and doubled blanks between runs go; they come from the lines of the template. */
function trimmed(inline: readonly Inline[]): Inline[] {
  const kept: Inline[] = [];
  let afterBlank = true;
  for (const item of inline) {
    if (item.kind !== 'text') {
      kept.push(item);
      afterBlank = item.kind === 'break';
      continue;
    }
    const words = afterBlank ? item.text.replace(/^ +/, '') : item.text;
    if (words === '') continue;
    kept.push({ ...item, text: words });
    afterBlank = words.endsWith(' ');
  }
  for (let last = kept.at(-1); last?.kind === 'text' && last.text.endsWith(' '); last = kept.at(-1)) {
    kept.pop();
    const words = last.text.replace(/ +$/, '');
    if (words !== '') kept.push({ ...last, text: words });
  }
  return kept;
}
