/** Where each figure lies on its page: PDF/UA-1 asks for the box of every figure (ISO 14289-1:2014, 7.3). */
import type { GroupItem, Item, Page, StructureNode } from './page.ts';

type Box = readonly [left: number, top: number, right: number, bottom: number];

/** The structure with a box, from the top left of the page, on each figure that is drawn. */
export function withFigureBoxes(
  structure: readonly StructureNode[],
  pages: readonly Page[],
): readonly StructureNode[] {
  if (!structure.some((node) => node.role === 'Figure')) return structure;
  const boxes = new Map<number, Box>();
  const note = (item: Item, place: (box: Box) => Box): void => {
    if (item.kind === 'group') {
      for (const inner of item.items) note(inner, (box) => place(turned(item, box)));
      return;
    }
    if (item.node === undefined || structure[item.node]?.role !== 'Figure') return;
    const box = place(boxOf(item));
    const known = boxes.get(item.node);
    boxes.set(item.node, known === undefined ? box : union(known, box));
  };
  for (const page of pages) for (const item of page.items) note(item, (box) => box);
  return structure.map((node, index) => {
    const box = boxes.get(index);
    return box === undefined ? node : { ...node, box };
  });
}

function boxOf(item: Exclude<Item, GroupItem>): Box {
  if (item.kind === 'text')
    return [item.x, item.y - item.sizePt, item.x + item.widthPt, item.y + 0.25 * item.sizePt];
  if (item.kind === 'circle')
    return [item.x - item.radiusPt, item.y - item.radiusPt, item.x + item.radiusPt, item.y + item.radiusPt];
  const [xs, ys] = [item.points.map(([x]) => x), item.points.map(([, y]) => y)];
  return [Math.min(...xs), Math.min(...ys), Math.max(...xs), Math.max(...ys)];
}

/** A box of a group's board as it lies on the page, after the turn about the board's middle. */
function turned(group: GroupItem, [left, top, right, bottom]: Box): Box {
  const [cos, sin] = ({ 0: [1, 0], 90: [0, 1], 180: [-1, 0], 270: [0, -1] } as const)[group.turn];
  const at = (x: number, y: number): readonly [number, number] => {
    const [dx, dy] = [x - group.widthPt / 2, y - group.heightPt / 2];
    return [
      group.x + group.widthPt / 2 + cos * dx - sin * dy,
      group.y + group.heightPt / 2 + sin * dx + cos * dy,
    ];
  };
  const [[x1, y1], [x2, y2]] = [at(left, top), at(right, bottom)];
  return [Math.min(x1, x2), Math.min(y1, y2), Math.max(x1, x2), Math.max(y1, y2)];
}

function union(a: Box, b: Box): Box {
  return [Math.min(a[0], b[0]), Math.min(a[1], b[1]), Math.max(a[2], b[2]), Math.max(a[3], b[3])];
}
