import { execFileSync, spawnSync } from 'node:child_process';
import { mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';

/** Whether pages can be rasterised here. In CI a missing program is a failure, not a reason to look away. */
export const canRasterise = spawnSync('pdftoppm', ['-v']).error === undefined;
if (!canRasterise && process.env['CI'] !== undefined)
  throw new Error('pdftoppm is missing: apt-get install poppler-utils');

export interface Raster {
  readonly width: number;
  readonly height: number;
  /** Grey of a pixel, 0 black to 255 white. */
  at(x: number, y: number): number;
}

/** A page of a PDF as greys; `perPoint` pixels to the point. */
export function rasterise(pdf: Uint8Array, page: number, perPoint: number): Raster {
  const folder = mkdtempSync(join(tmpdir(), 'readback-'));
  try {
    writeFileSync(join(folder, 'in.pdf'), pdf);
    execFileSync(
      'pdftoppm',
      [
        '-gray',
        '-r',
        String(72 * perPoint),
        '-f',
        String(page),
        '-l',
        String(page),
        '-singlefile',
        'in.pdf',
        'out',
      ],
      { cwd: folder },
    );
    const file = readFileSync(join(folder, 'out.pgm'));
    const head = /^P5\s+(\d+)\s+(\d+)\s+255\s/.exec(file.subarray(0, 40).toString('latin1'));
    if (head === null) throw new Error('pdftoppm wrote no PGM.');
    const [width, height] = [Number(head[1]), Number(head[2])];
    return {
      width,
      height,
      at: (x, y) =>
        x < 0 || y < 0 || x >= width || y >= height ? 255 : (file[head[0].length + y * width + x] ?? 255),
    };
  } finally {
    rmSync(folder, { recursive: true });
  }
}

/** Dark pixels (darker than half) in a box given in points. */
export function inkIn(
  raster: Raster,
  perPoint: number,
  box: { readonly left: number; readonly top: number; readonly right: number; readonly bottom: number },
): number {
  let count = 0;
  for (let y = Math.floor(box.top * perPoint); y < box.bottom * perPoint; y += 1)
    for (let x = Math.floor(box.left * perPoint); x < box.right * perPoint; x += 1)
      if (raster.at(x, y) < 128) count += 1;
  return count;
}
