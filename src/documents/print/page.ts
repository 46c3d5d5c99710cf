/**
 * A page as layout leaves it: items at fixed positions, ready to be drawn. Points (1/72 inch), x to the
 * right and y down from the top left corner; type stands on its baseline. Greys run from 0 (black) to 1.
 */
import type { Flip } from './content.ts';
import type { FontName } from './fonts.ts';

/** What stands at the head or foot of every page (ISO 32000-1, table 330). */
export type Running = 'Header' | 'Footer';

interface Tagged {
  /** Which part of the structure the item belongs to; without one it is an artifact: a rule, a crop mark, a running head. */
  readonly node?: number;
  /** Of an artifact. */
  readonly running?: Running;
}

export interface TextItem extends Tagged {
  readonly kind: 'text';
  readonly x: number;
  readonly y: number;
  readonly text: string;
  readonly font: FontName;
  readonly sizePt: number;
  readonly widthPt: number;
  /** Middles of zeros that get a stroke, from x. */
  readonly zeros: readonly number[];
  /** The text is the number of the page on which this id stands. */
  readonly pageOf?: string;
  /** That number ends where its room ends, so that it can be put in when all pages are filled. */
  readonly flush?: true;
}

export interface LineItem extends Tagged {
  readonly kind: 'line';
  readonly points: readonly (readonly [number, number])[];
  readonly widthPt: number;
  readonly dashPt?: readonly number[];
  readonly grey?: number;
}

export interface PolygonItem extends Tagged {
  readonly kind: 'polygon';
  readonly points: readonly (readonly [number, number])[];
  readonly fill?: number;
  readonly strokePt?: number;
}

export interface CircleItem extends Tagged {
  readonly kind: 'circle';
  readonly x: number;
  readonly y: number;
  readonly radiusPt: number;
  readonly fill?: number;
  readonly strokePt?: number;
}

/** Items of a board of their own, set down with its top left corner at x, y after a turn about its middle (degrees clockwise). */
export interface GroupItem {
  readonly kind: 'group';
  readonly x: number;
  readonly y: number;
  readonly widthPt: number;
  readonly heightPt: number;
  readonly turn: 0 | 90 | 180 | 270;
  readonly items: readonly Item[];
}

export type Item = TextItem | LineItem | PolygonItem | CircleItem | GroupItem;

export interface Page {
  readonly widthPt: number;
  readonly heightPt: number;
  readonly items: readonly Item[];
}

/** A part of the document's structure, in reading order; `parent` points to an earlier one. */
export interface StructureNode {
  readonly role: Role;
  readonly parent: number | undefined;
  readonly alt?: string;
  /** Where it is not that of the document. */
  readonly language?: string;
  readonly scope?: 'Column' | 'Row';
  readonly colSpan?: number;
  readonly rowSpan?: number;
  /** Of a figure: left, top, right, bottom on its page. */
  readonly box?: readonly [number, number, number, number];
}

export type Role =
  | 'Document'
  | 'Sect'
  | 'H1'
  | 'H2'
  | 'H3'
  | 'H4'
  | 'P'
  | 'Span'
  | 'L'
  | 'LI'
  | 'Lbl'
  | 'LBody'
  | 'TOC'
  | 'TOCI'
  | 'Table'
  | 'THead'
  | 'TBody'
  | 'TR'
  | 'TH'
  | 'TD'
  | 'Caption'
  | 'Figure';

/** What did not fit, and what would. */
export interface Overflow {
  /** As in `card ward, back` or `column 3 of the table "Channels"`. */
  readonly what: string;
  readonly neededMm: number;
  readonly availableMm: number;
  /** One sentence: the size that would do, or what to drop. */
  readonly wouldFit: string;
  /** The words it is about, as the plan has them, where it is about some. */
  readonly words?: string;
}

export interface LaidOut {
  readonly title: string;
  readonly language: string;
  readonly pages: readonly Page[];
  readonly structure: readonly StructureNode[];
  readonly outline: readonly { readonly text: string; readonly level: number; readonly page: number }[];
  /** Set if fronts and backs are meant for the two sides of one sheet. */
  readonly flip?: Flip;
  readonly overflows: readonly Overflow[];
  /** Characters no font holds, with the text they stand in. */
  readonly missing: readonly { readonly character: string; readonly text: string }[];
  /** Smallest size of any type on the pages that is not a printer's mark. */
  readonly smallestPt: number;
}

/** The item moved; a new value unless it stays where it is. With `nodes`, its part is that many further on in the structure. */
export function moved(item: Item, dx: number, dy: number, nodes = 0): Item {
  if (dx === 0 && dy === 0 && nodes === 0) return item;
  if (item.kind === 'group')
    return {
      ...item,
      x: item.x + dx,
      y: item.y + dy,
      items: nodes === 0 ? item.items : item.items.map((inner) => moved(inner, 0, 0, nodes)),
    };
  const node = item.node === undefined ? {} : { node: item.node + nodes };
  if (item.kind === 'line' || item.kind === 'polygon')
    return { ...item, points: item.points.map(([x, y]) => [x + dx, y + dy] as const), ...node };
  return { ...item, x: item.x + dx, y: item.y + dy, ...node };
}
