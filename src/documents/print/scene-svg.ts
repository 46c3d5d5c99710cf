/** Figures and marks as SVG inside an HTML page; the same shapes that the printed page shows. */
import type { MarkShape, Point, Scene, Shape } from './content.ts';
import { drawMark } from './draw-mark.ts';
import { escapeMarkup } from './escape-markup.ts';

export function sceneSvg(scene: Scene): string {
  const { widthMm, heightMm, alt } = scene;
  const shapes = scene.shapes.map(shapeSvg).join('');
  return `<svg role="img" aria-label="${escapeMarkup(alt)}" width="${n(widthMm)}mm" height="${n(heightMm)}mm" viewBox="0 0 ${n(widthMm)} ${n(heightMm)}">${shapes}</svg>`;
}

export function markSvg(shape: MarkShape, says: string): string {
  const drawn = drawMark(shape, 5, 5, 4.5).map((item) => {
    if (item.kind === 'line')
      return `<polyline points="${pointList(item.points)}" fill="none" stroke="#000" stroke-width="${n(item.widthPt)}"/>`;
    const look = `fill="${item.fill === undefined ? 'none' : '#000'}"${item.strokePt === undefined ? '' : ` stroke="#000" stroke-width="${n(item.strokePt)}"`}`;
    return item.kind === 'circle'
      ? `<circle cx="${n(item.x)}" cy="${n(item.y)}" r="${n(item.radiusPt)}" ${look}/>`
      : `<polygon points="${pointList(item.points)}" ${look}/>`;
  });
  return `<svg class="mark" role="img" aria-label="${escapeMarkup(says)}" viewBox="0 0 10 10">${drawn.join('')}</svg>`;
}

function shapeSvg(shape: Shape): string {
  switch (shape.kind) {
    case 'line': {
      const dash = shape.dashMm === undefined ? '' : ` stroke-dasharray="${shape.dashMm.map(n).join(' ')}"`;
      return `<polyline points="${pointList(shape.points)}" fill="none" stroke="${grey(shape.grey ?? 0)}" stroke-width="${n(shape.widthMm)}"${dash}/>`;
    }
    case 'polygon':
      return `<polygon points="${pointList(shape.points)}" ${fillAndStroke(shape)}/>`;
    case 'circle':
      return `<circle cx="${n(shape.x)}" cy="${n(shape.y)}" r="${n(shape.radiusMm)}" ${fillAndStroke(shape)}/>`;
    case 'words': {
      const anchor = { start: 'start', center: 'middle', end: 'end' }[shape.align];
      const weight = shape.strong === true ? ' font-weight="bold"' : '';
      return `<text x="${n(shape.x)}" y="${n(shape.y)}" font-size="${n((shape.sizePt * 25.4) / 72)}" text-anchor="${anchor}"${weight}>${escapeMarkup(shape.text)}</text>`;
    }
  }
}

function fillAndStroke(shape: { readonly fill?: number; readonly strokeMm?: number }): string {
  const fill = shape.fill === undefined ? 'none' : grey(shape.fill);
  // A polygon with neither fill nor stroke width is outlined, as on the printed page.
  const widthMm = shape.strokeMm ?? (shape.fill === undefined ? 0.35 : undefined);
  return `fill="${fill}"${widthMm === undefined ? '' : ` stroke="#000" stroke-width="${n(widthMm)}"`}`;
}

function pointList(points: readonly Point[]): string {
  return points.map(([x, y]) => `${n(x)},${n(y)}`).join(' ');
}

function grey(value: number): string {
  const level = Math.round(Math.min(1, Math.max(0, value)) * 255)
    .toString(16)
    .padStart(2, '0');
  return `#${level}${level}${level}`;
}

function n(value: number): string {
  return String(Math.round(value * 1000) / 1000);
}
