/**
 * Page → the operators that draw it (ISO 32000-1:2008, 8 and 9). Items are drawn where they stand; what belongs to
 * a part of the structure is marked with a number, by which {@link ./tag-structure.ts} finds it (14.7.4).
 */
import { thousandths as n } from './operands.ts';
import type {
  CircleItem,
  GroupItem,
  Item,
  LineItem,
  Page,
  PolygonItem,
  Running,
  StructureNode,
  TextItem,
} from './page.ts';
import type { ShownFonts } from './show-text.ts';

export interface DrawnPage {
  readonly operators: string;
  /** The part of the structure that each marked stretch belongs to, by its number on the page. */
  readonly owners: readonly number[];
}

interface Pen {
  readonly structure: readonly StructureNode[];
  readonly fonts: ShownFonts;
  readonly owners: number[];
  operators: string;
  /** What is being drawn belongs to: a part of the structure, an artifact, or nothing yet. */
  open: number | 'artifact' | Running | undefined;
  /** Font and size last chosen. */
  chosen: string;
}

export function drawPage(page: Page, structure: readonly StructureNode[], fonts: ShownFonts): DrawnPage {
  const pen: Pen = {
    structure,
    fonts,
    owners: [],
    // The page's y runs down.
    operators: `1 0 0 -1 0 ${n(page.heightPt)} cm\n`,
    open: undefined,
    chosen: '',
  };
  for (const item of page.items) drawItem(pen, item);
  close(pen);
  return { operators: pen.operators, owners: pen.owners };
}

function close(pen: Pen): void {
  if (pen.open !== undefined) pen.operators += 'EMC\n';
  pen.open = undefined;
}

function belongTo(pen: Pen, { node, running }: Exclude<Item, GroupItem>): void {
  const wanted = node ?? running ?? 'artifact';
  if (pen.open === wanted) return;
  close(pen);
  if (wanted === 'artifact') pen.operators += '/Artifact<</Type/Layout>>BDC\n';
  else if (wanted === 'Header' || wanted === 'Footer')
    // Without its subtype nobody knows which of the two it is (ISO 14289-1, 7.8).
    pen.operators += `/Artifact<</Type/Pagination/Subtype/${wanted}>>BDC\n`;
  else {
    pen.operators += `/${pen.structure[wanted]?.role ?? 'P'}<</MCID ${pen.owners.length}>>BDC\n`;
    pen.owners.push(wanted);
  }
  pen.open = wanted;
}

function drawItem(pen: Pen, item: Item): void {
  if (item.kind === 'group') {
    drawGroup(pen, item);
    return;
  }
  belongTo(pen, item);
  switch (item.kind) {
    case 'text':
      drawText(pen, item);
      break;
    case 'line':
      pen.operators += drawLine(item);
      break;
    case 'polygon':
      pen.operators += drawPolygon(item);
      break;
    case 'circle':
      pen.operators += drawCircle(item);
      break;
  }
}

function drawGroup(pen: Pen, group: GroupItem): void {
  close(pen);
  const [cos, sin] = ({ 0: [1, 0], 90: [0, 1], 180: [-1, 0], 270: [0, -1] } as const)[group.turn];
  const [halfWidth, halfHeight] = [group.widthPt / 2, group.heightPt / 2];
  const e = group.x + halfWidth - cos * halfWidth + sin * halfHeight;
  const f = group.y + halfHeight - sin * halfWidth - cos * halfHeight;
  pen.operators += `q ${cos} ${sin} ${-sin} ${cos} ${n(e)} ${n(f)} cm\n`;
  for (const item of group.items) drawItem(pen, item);
  close(pen);
  pen.operators += 'Q\n';
  // Q brings back what was chosen before q.
  pen.chosen = '';
}

function drawText(pen: Pen, item: TextItem): void {
  const chosen = `/${pen.fonts.nameOf(item.font)} ${n(item.sizePt)} Tf `;
  const shown = pen.fonts.show(item.text, item.font);
  // The letters' own matrix turns them upright again.
  pen.operators += `BT ${chosen === pen.chosen ? '' : chosen}1 0 0 -1 ${n(item.x)} ${n(item.y)} Tm ${shown} ET\n`;
  pen.chosen = chosen;
  if (item.zeros.length > 0) pen.operators += zeroStrokes(item);
}

/** A stroke inside each zero, clear of its outline, so that it is neither an O nor an Ø. */
function zeroStrokes({ x, y, sizePt, zeros }: TextItem): string {
  const [low, high] = [n(y - 0.25 * sizePt), n(y - 0.5 * sizePt)];
  const aside = 0.075 * sizePt;
  let strokes = `${n(0.062 * sizePt)} w`;
  for (const middle of zeros)
    strokes += ` ${n(x + middle - aside)} ${low} m ${n(x + middle + aside)} ${high} l`;
  return `${strokes} S\n`;
}

function path(points: readonly (readonly [number, number])[]): string {
  return points.map(([x, y], index) => `${n(x)} ${n(y)} ${index === 0 ? 'm' : 'l'}`).join(' ');
}

function drawLine(item: LineItem): string {
  const dash =
    item.dashPt === undefined ? ['', ''] : [`[${item.dashPt.map((pt) => n(pt)).join(' ')}] 0 d `, ' [] 0 d'];
  const grey = greyed(item.grey, 'G');
  return `${grey[0]}${dash[0]}${n(item.widthPt)} w ${path(item.points)} S${dash[1]}${grey[1]}\n`;
}

function drawPolygon(item: PolygonItem): string {
  return fillAndStroke(`${path(item.points)} h`, item);
}

/** Four Bézier curves; 0.5523 puts them within 0.03 % of the circle. */
function drawCircle(item: CircleItem): string {
  const { x, y, radiusPt: r } = item;
  const k = 0.5523 * r;
  const curve = (...values: number[]): string => `${values.map(n).join(' ')} c`;
  const outline = [
    `${n(x + r)} ${n(y)} m`,
    curve(x + r, y + k, x + k, y + r, x, y + r),
    curve(x - k, y + r, x - r, y + k, x - r, y),
    curve(x - r, y - k, x - k, y - r, x, y - r),
    curve(x + k, y - r, x + r, y - k, x + r, y),
  ].join(' ');
  return fillAndStroke(`${outline} h`, item);
}

/** The grey set before and taken back behind; black needs neither. */
function greyed(grey: number | undefined, operator: string): readonly [before: string, behind: string] {
  return grey === undefined || grey === 0 ? ['', ''] : [`${n(grey)} ${operator} `, ` 0 ${operator}`];
}

function fillAndStroke(
  outline: string,
  item: { readonly fill?: number; readonly strokePt?: number },
): string {
  const fill = greyed(item.fill, 'g');
  const width = item.strokePt === undefined ? '' : `${n(item.strokePt)} w `;
  const operator = item.fill === undefined ? 'S' : item.strokePt === undefined ? 'f' : 'B';
  return `${fill[0]}${width}${outline} ${operator}${fill[1]}\n`;
}
