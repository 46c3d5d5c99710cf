/** The small black shapes of the markup. They differ in outline, never in colour, so that a copy still tells them apart. */
import type { MarkShape } from './content.ts';
import type { CircleItem, LineItem, PolygonItem } from './page.ts';

/** The shape about (x, y), within the radius r. */
export function drawMark(
  shape: MarkShape,
  x: number,
  y: number,
  r: number,
): (CircleItem | LineItem | PolygonItem)[] {
  const at = (points: readonly (readonly [number, number])[]): readonly (readonly [number, number])[] =>
    points.map(([dx, dy]) => [x + dx * r, y + dy * r]);
  const thin = 0.28 * r;
  switch (shape) {
    case 'dot':
      return [{ kind: 'circle', x, y, radiusPt: 0.8 * r, fill: 0 }];
    case 'ring':
      return [{ kind: 'circle', x, y, radiusPt: 0.8 * r, strokePt: thin }];
    case 'square':
      return [
        {
          kind: 'polygon',
          points: at([
            [-0.8, -0.8],
            [0.8, -0.8],
            [0.8, 0.8],
            [-0.8, 0.8],
          ]),
          fill: 0,
        },
      ];
    case 'diamond':
      return [
        {
          kind: 'polygon',
          points: at([
            [0, -1],
            [1, 0],
            [0, 1],
            [-1, 0],
          ]),
          fill: 0,
        },
      ];
    case 'triangle':
      return [
        {
          kind: 'polygon',
          points: at([
            [0, -1],
            [1, 0.85],
            [-1, 0.85],
          ]),
          fill: 0,
        },
      ];
    case 'bar':
      return [
        {
          kind: 'polygon',
          points: at([
            [-1, -0.25],
            [1, -0.25],
            [1, 0.25],
            [-1, 0.25],
          ]),
          fill: 0,
        },
      ];
    case 'arrow':
      return [
        {
          kind: 'polygon',
          points: at([
            [-1, -0.2],
            [0.1, -0.2],
            [0.1, -0.8],
            [1, 0],
            [0.1, 0.8],
            [0.1, 0.2],
            [-1, 0.2],
          ]),
          fill: 0,
        },
      ];
    case 'cross':
      return [
        {
          kind: 'line',
          points: at([
            [-0.8, -0.8],
            [0.8, 0.8],
          ]),
          widthPt: thin,
        },
        {
          kind: 'line',
          points: at([
            [-0.8, 0.8],
            [0.8, -0.8],
          ]),
          widthPt: thin,
        },
      ];
  }
}
