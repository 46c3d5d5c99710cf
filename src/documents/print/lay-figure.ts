/** Sets a figure down at full size, or smaller if the text is narrower; its words are measured like all others. */
import type { Figure, Shape } from './content.ts';
import { layText, noteTooWide } from './lay-text.ts';
import type { Item } from './page.ts';
import { setLine } from './set-line.ts';
import { addNode, gap, pointsPerMm, type Setting, type Slab } from './slab.ts';
import { wrap } from './wrap.ts';

export function layFigure(
  figure: Figure,
  widthPt: number,
  setting: Setting,
  parent: number | undefined,
): Slab[] {
  const { scene } = figure;
  const scale = Math.min(1, widthPt / (scene.widthMm * pointsPerMm));
  const node = addNode(setting, 'Figure', parent, { alt: scene.alt });
  const left = (widthPt - scene.widthMm * pointsPerMm * scale) / 2;
  const items = scene.shapes.flatMap((shape) => layShape(shape, left, scale, node, setting));
  const smallest = Math.min(
    ...scene.shapes.map((shape) =>
      shape.kind === 'words' ? shape.sizePt * scale : Number.POSITIVE_INFINITY,
    ),
  );
  if (smallest < setting.leastPt - 0.01)
    noteTooWide(
      setting,
      `the figure "${scene.alt.slice(0, 40)}", whose words would be smaller than ${setting.leastPt} pt,`,
      scene.widthMm * pointsPerMm,
      widthPt,
    );
  const picture: Slab = {
    kind: 'slab',
    heightPt: scene.heightMm * pointsPerMm * scale,
    parts: items,
    breakBelow: figure.caption.length === 0,
  };
  if (figure.caption.length === 0) return [picture];
  const caption = addNode(setting, 'Caption', parent);
  return [
    picture,
    gap(0.2 * setting.sizePt, false),
    ...layText(figure.caption, widthPt, setting.sizePt, setting, { node: caption, what: 'the caption' }),
  ];
}

function layShape(shape: Shape, left: number, scale: number, node: number, setting: Setting): Item[] {
  const unit = pointsPerMm * scale;
  const place = (points: readonly (readonly [number, number])[]) =>
    points.map(([x, y]) => [left + x * unit, y * unit] as const);
  const stroke = (mm: number | undefined) => (mm === undefined ? {} : { strokePt: mm * unit });
  const fill = (grey: number | undefined) => (grey === undefined ? {} : { fill: grey });
  switch (shape.kind) {
    case 'line':
      return [
        {
          kind: 'line',
          points: place(shape.points),
          widthPt: shape.widthMm * unit,
          ...(shape.dashMm === undefined ? {} : { dashPt: shape.dashMm.map((mm) => mm * unit) }),
          ...(shape.grey === undefined ? {} : { grey: shape.grey }),
          node,
        },
      ];
    case 'polygon':
      return [
        {
          kind: 'polygon',
          points: place(shape.points),
          ...fill(shape.fill),
          ...stroke(shape.strokeMm),
          node,
        },
      ];
    case 'circle':
      return [
        {
          kind: 'circle',
          x: left + shape.x * unit,
          y: shape.y * unit,
          radiusPt: shape.radiusMm * unit,
          ...fill(shape.fill),
          ...stroke(shape.strokeMm),
          node,
        },
      ];
    case 'words': {
      const text = {
        kind: 'text',
        text: shape.text,
        strong: shape.strong ?? false,
        code: false,
        whole: true,
      } as const;
      const [line] = wrap([text], Number.POSITIVE_INFINITY, shape.sizePt * scale, setting, { node }).lines;
      if (line === undefined) return [];
      const wide = shape.align === 'start' ? 0 : setLine(line, 0, 0, 0, setting.measure);
      const x = left + shape.x * unit - (shape.align === 'center' ? wide / 2 : wide);
      const items: Item[] = [];
      setLine(line, x, shape.y * unit, 0, setting.measure, items);
      return items;
    }
  }
}
