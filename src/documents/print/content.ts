/**
 * What a document is made of: a small fixed set of elements as plain data. Templates place words into
 * these; the printed page ({@link ./lay-out.ts}, {@link ./paint.ts}) and the HTML page are made from the
 * same tree. Lengths are millimetres, type sizes points; nothing here knows what a plan is.
 */

export type PaperName = 'A4' | 'Letter';
export type Align = 'start' | 'center' | 'end';
export type MarkShape = 'dot' | 'ring' | 'square' | 'diamond' | 'triangle' | 'cross' | 'bar' | 'arrow';

/** A stretch of text in one style. `code` sets letters of equal width; `whole` is never broken over two lines. */
export interface TextRun {
  readonly kind: 'text';
  readonly text: string;
  readonly strong: boolean;
  readonly code: boolean;
  readonly whole: boolean;
}

export type Inline =
  | TextRun
  /** An empty box to tick by hand. */
  | { readonly kind: 'tick' }
  /** A line to write on, as wide as stated. */
  | { readonly kind: 'blank'; readonly widthMm: number }
  /** A small black shape. `says` is its meaning in words, read aloud and kept in the HTML page. */
  | { readonly kind: 'mark'; readonly shape: MarkShape; readonly says: string }
  | { readonly kind: 'break' }
  /** The number of this page, or of all pages; only a running head or foot may hold them. */
  | { readonly kind: 'page' }
  | { readonly kind: 'pages' }
  /** The number of the page on which the element with this id stands. */
  | {
      readonly kind: 'page-of';
      readonly id: string;
      /** Stands before the number, on paper alone: `page`. */
      readonly word?: string;
      /** It ends its line, flush right: put in late, it moves nothing. */
      readonly flush?: true;
    };

export interface Heading {
  readonly kind: 'heading';
  readonly level: 1 | 2 | 3 | 4;
  readonly text: readonly Inline[];
  readonly id?: string;
}

export interface Paragraph {
  readonly kind: 'paragraph';
  /** Where it is not that of the document. */
  readonly language?: string;
  readonly text: readonly Inline[];
  readonly size: TextSize;
  readonly align: Align;
}

/** `small` is 0.9 of the text size but never below the least size of the document; `large` 1.25, `huge` 1.6. */
export type TextSize = 'small' | 'normal' | 'large' | 'huge';

export interface List {
  readonly kind: 'list';
  readonly ordered: boolean;
  readonly items: readonly (readonly Block[])[];
}

export interface Column {
  /** `decimal` lines the decimal points of one-line cells up. */
  readonly align: Align | 'decimal';
  /** Share of the room left over, 0 to stay as wide as the widest cell. */
  readonly share: number;
  /** A fixed width, for columns that are written in by hand. */
  readonly widthMm?: number;
}

export interface Cell {
  /** Where it is not that of the document. */
  readonly language?: string;
  readonly text: readonly Inline[];
  readonly span: number;
  readonly rows: number;
  /** True if the cell names its row or column. */
  readonly heading: boolean;
  /** A heading that is set like other words, where bold means something else. */
  readonly plain?: true;
  readonly align?: Align;
}

export interface Row {
  readonly cells: readonly Cell[];
  /** Least height, for rows that are written in by hand. */
  readonly heightMm?: number;
  /** Air above, so that rows stand in groups the eye can hold. */
  readonly airMm?: number;
}

export interface Table {
  readonly kind: 'table';
  readonly caption: readonly Inline[];
  readonly columns: readonly Column[];
  /** Rows repeated at the top of each page the table runs over. */
  readonly head: readonly Row[];
  readonly body: readonly Row[];
  /** Lines between all cells, between rows only, or none. */
  readonly lines: 'all' | 'rows' | 'none';
  readonly size: TextSize;
  /** A list of contents, which is a table to the eye alone. */
  readonly contents?: true;
}

/** A drawing in its own coordinates: x to the right, y down, in millimetres at full size. Black, white and greys only. */
export type Shape =
  | {
      readonly kind: 'line';
      readonly points: readonly Point[];
      readonly widthMm: number;
      readonly dashMm?: readonly number[];
      readonly grey?: number;
    }
  | {
      readonly kind: 'polygon';
      readonly points: readonly Point[];
      readonly fill?: number;
      readonly strokeMm?: number;
    }
  | {
      readonly kind: 'circle';
      readonly x: number;
      readonly y: number;
      readonly radiusMm: number;
      readonly fill?: number;
      readonly strokeMm?: number;
    }
  | {
      readonly kind: 'words';
      readonly x: number;
      readonly y: number;
      readonly text: string;
      readonly sizePt: number;
      readonly align: Align;
      readonly strong?: boolean;
    };

export type Point = readonly [number, number];

/** Shapes on a board of stated size, and what they show in words, for whoever cannot see them. */
export interface Scene {
  readonly widthMm: number;
  readonly heightMm: number;
  readonly alt: string;
  readonly shapes: readonly Shape[];
}

export interface Figure {
  readonly kind: 'figure';
  readonly scene: Scene;
  readonly caption: readonly Inline[];
}

export type Block =
  | Heading
  | Paragraph
  | List
  | Table
  | Figure
  | {
      readonly kind: 'section';
      readonly id?: string;
      readonly newPage: boolean;
      readonly blocks: readonly Block[];
    }
  /** Blocks side by side, each in its own column, kept on one page. */
  | {
      readonly kind: 'columns';
      readonly shares: readonly number[];
      /** Fixed widths in millimetres, 0 for a column that has a share instead. */
      readonly widthsMm: readonly number[];
      readonly columns: readonly (readonly Block[])[];
    }
  /** Blocks that stay on one page if a page can hold them. */
  | { readonly kind: 'keep'; readonly blocks: readonly Block[] }
  /** Blocks in a frame: what must be seen first. */
  | { readonly kind: 'panel'; readonly blocks: readonly Block[] }
  | { readonly kind: 'space'; readonly heightMm: number }
  /** What room a side of a card has left: it pushes what follows down to the foot. */
  | { readonly kind: 'fill' }
  | { readonly kind: 'rule' }
  /** Every section with an id and a heading, and the page it begins on. */
  | { readonly kind: 'contents'; readonly entries: readonly { readonly id: string; readonly text: string }[] }
  | { readonly kind: 'new-page' };

interface Named {
  readonly title: string;
  /** BCP 47, as in `en` or `de`. */
  readonly language: string;
  readonly paper: PaperName;
}

/** Sheets of running text. */
export interface PagedDocument extends Named {
  readonly kind: 'document';
  readonly sizePt: number;
  readonly head: readonly Inline[];
  readonly foot: readonly Inline[];
  readonly blocks: readonly Block[];
}

export type CardSize = 'id-1' | 'index' | 'a7' | 'a6' | 'fold';
export type Flip = 'long-edge' | 'short-edge';

export interface Card {
  /** A short name printed beside both sides, so that a wrong back is seen before the cut. */
  readonly id: string;
  readonly front: readonly Block[];
  readonly back: readonly Block[];
}

/** Cards, several to a sheet. The text of each side is set as large as fits between `fromPt` and `toPt`. */
export interface CardDocument extends Named {
  readonly kind: 'cards';
  readonly cardSize: CardSize;
  readonly flip: Flip;
  readonly fromPt: number;
  readonly toPt: number;
  /** Said once at the foot of each sheet, outside the cards: how to print and cut. */
  readonly note: readonly Inline[];
  readonly cards: readonly Card[];
}

export type Content = PagedDocument | CardDocument;
