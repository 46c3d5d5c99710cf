/**
 * A map of how sure a station is reached, cell by cell: four tones that darken from `solid` to `no`, each with its own texture, over the
 * shading of the hills, so that it reads on a grey printer and without telling colours apart. Cells without data are white with a sparse dot.
 *
 * Letters, places, scale bar and north arrow are laid over it by whoever draws the page: `pixelOf` and `scaleBar` say where and how long. North is up.
 */
import { cellOf, type ElevationGrid, stepsM } from './grid.ts';
import { hillshade } from './hillshade.ts';
import type { Picture } from './png.ts';
import type { Position } from './position.ts';
import { chanceOf, type Verdict, verdictOf } from './verdict.ts';

export interface ReachPictureInput {
  readonly grid: ElevationGrid;
  /** Of a sweep over the same grid. */
  readonly lossDb: Float32Array;
  /** What the path may lose before the margin is gone, dB, and one standard deviation of the prediction. */
  readonly greatestLossDb: number;
  readonly spreadDb: number;
  /** Pixels along each side of a cell: a whole number. Unless given 3, and less where the picture would grow past what a screen or a sheet shows. */
  readonly pixelsPerCell?: number;
}

export interface ReachPicture extends Picture {
  readonly pixelOf: (position: Position) => { readonly x: number; readonly y: number };
  /** A round length that takes about a quarter of the width. */
  readonly scaleBar: { readonly lengthM: number; readonly widthPx: number };
  /** What each tone stands for, for a legend: a small sample of the same texture on level ground. */
  readonly legend: readonly { readonly verdict: Verdict | 'unknown'; readonly sample: Picture }[];
}

type Shade = Verdict | 'unknown';
type Rgb = readonly [number, number, number];

/** Tones from light to dark. Their lightness falls by steps that survive photocopying; the hues stay apart for common kinds of colour blindness. */
const tones: Readonly<Record<Shade, Rgb>> = {
  solid: [250, 240, 190],
  likely: [205, 205, 140],
  doubtful: [130, 165, 165],
  no: [70, 75, 110],
  unknown: [255, 255, 255],
};

/** How the ink of a texture changes a tone: darker on light tones, lighter on the darkest. */
const inks: Readonly<Record<Shade, number>> = { solid: 1, likely: 0.8, doubtful: 0.7, no: 1.6, unknown: 0.6 };

/** Where the ink of each texture falls: none, sparse dots, diagonal lines, crossed lines, single dots. */
const isInked: Readonly<Record<Shade, (x: number, y: number) => boolean>> = {
  solid: () => false,
  likely: (x, y) => x % 6 === (Math.floor(y / 6) % 2) * 3 && y % 6 === 0,
  doubtful: (x, y) => (x + y) % 6 === 0,
  no: (x, y) => (x + y) % 8 === 0 && (x - y + 8000) % 8 === 0,
  unknown: (x, y) => x % 9 === 0 && y % 9 === 0,
};

/** How strongly the hills show: enough to find one's way, too little to pass one tone for another. */
const reliefShare = 0.35;
const levelLight = Math.SQRT1_2;

const usualPixels = 1500;

function usualSize({ columns, rows }: ElevationGrid): number {
  return Math.max(1, Math.min(3, Math.floor(usualPixels / Math.max(columns, rows))));
}

export function reachPicture(input: ReachPictureInput): ReachPicture {
  const { grid, lossDb } = input;
  const size = input.pixelsPerCell ?? usualSize(grid);
  const [widthPx, heightPx] = [grid.columns * size, grid.rows * size];
  const rgb = new Uint8Array(3 * widthPx * heightPx);
  const light = hillshade(grid);
  for (let row = 0; row < grid.rows; row++) {
    for (let column = 0; column < grid.columns; column++) {
      const cell = row * grid.columns + column;
      const loss = lossDb[cell] ?? Number.NaN;
      const shade: Shade = Number.isNaN(loss)
        ? 'unknown'
        : verdictOf(chanceOf(input.greatestLossDb - loss, input.spreadDb));
      const lit = 1 + reliefShare * ((light[cell] ?? levelLight) - levelLight);
      for (let y = row * size; y < (row + 1) * size; y++) {
        for (let x = column * size; x < (column + 1) * size; x++)
          paint(rgb, 3 * (y * widthPx + x), shade, x, y, lit);
      }
    }
  }
  const { eastM } = stepsM(grid, grid.northDeg - (grid.rows / 2) * grid.stepNorthDeg);
  const lengthM = roundLength((widthPx / size) * eastM * 0.25);
  return {
    widthPx,
    heightPx,
    rgb,
    pixelOf(position) {
      const { row, column } = cellOf(grid, position);
      return { x: (column + 0.5) * size, y: (row + 0.5) * size };
    },
    scaleBar: { lengthM, widthPx: (lengthM / eastM) * size },
    legend: (['solid', 'likely', 'doubtful', 'no', 'unknown'] as const).map((verdict) => ({
      verdict,
      sample: sampleOf(verdict),
    })),
  };
}

function paint(rgb: Uint8Array, at: number, shade: Shade, x: number, y: number, lit: number): void {
  const ink = isInked[shade](x, y) ? inks[shade] : 1;
  const relief = Number.isNaN(lit) ? 1 : lit;
  for (const [channel, tone] of tones[shade].entries())
    rgb[at + channel] = Math.max(0, Math.min(255, Math.round(tone * ink * relief)));
}

function sampleOf(shade: Shade): Picture {
  const [widthPx, heightPx] = [36, 24];
  const rgb = new Uint8Array(3 * widthPx * heightPx);
  for (let y = 0; y < heightPx; y++)
    for (let x = 0; x < widthPx; x++) paint(rgb, 3 * (y * widthPx + x), shade, x, y, 1);
  return { widthPx, heightPx, rgb };
}

/** The greatest of 1, 2, 5 times a power of ten that is no longer. */
function roundLength(mostM: number): number {
  const power = 10 ** Math.floor(Math.log10(mostM));
  return (mostM >= 5 * power ? 5 : mostM >= 2 * power ? 2 : 1) * power;
}
