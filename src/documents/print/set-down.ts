/** What slabs hold → items at their places: the last step of laying out, made once all is decided. */
import type { Align } from './content.ts';
import type { Measure } from './measure.ts';
import { type Item, moved } from './page.ts';
import { type Line, setLine } from './set-line.ts';

/** A line of words in its room, the baseline y below the room's top. */
export interface Words {
  readonly kind: 'words';
  readonly line: Line;
  readonly roomPt: number;
  readonly align: Align;
  readonly y: number;
}

/** Parts that stand dx further to the right and dy lower. */
export interface Shifted {
  readonly kind: 'shifted';
  readonly parts: readonly Part[];
  readonly dx: number;
  readonly dy: number;
  /** Their places in the structure are that many further on. */
  readonly nodes?: number;
  /** Set again on a later page they are furniture: whoever hears the page read has heard them already. */
  readonly again?: true;
}

export type Part = Item | Words | Shifted;

export function shifted(parts: readonly Part[], dx: number, dy: number): Shifted {
  return { kind: 'shifted', parts, dx, dy };
}

/** Puts the items of the parts into a list, moved by x and y, their places in the structure `nodes` further on. */
export function setDown(
  parts: readonly Part[],
  x: number,
  y: number,
  nodes: number,
  measure: Measure,
  into: Item[],
): void {
  for (const part of parts) {
    if (part.kind === 'shifted') {
      const items = part.again === true ? [] : into;
      setDown(part.parts, x + part.dx, y + part.dy, nodes + (part.nodes ?? 0), measure, items);
      if (part.again === true) for (const item of items) into.push(withoutNode(item));
    } else if (part.kind === 'words') {
      const { line, roomPt, align } = part;
      const spare = align === 'start' ? 0 : roomPt - setLine(line, 0, 0, 0, measure);
      setLine(line, x + (align === 'center' ? spare / 2 : spare), y + part.y, nodes, measure, into);
    } else into.push(moved(part, x, y, nodes));
  }
}

function withoutNode(item: Item): Item {
  if (item.kind === 'group' || item.node === undefined) return item;
  const { node: _, ...rest } = item;
  return rest;
}
