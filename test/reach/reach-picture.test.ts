import { inflateSync } from 'node:zlib';
import { describe, expect, it } from 'vitest';
import { type ElevationGrid, positionOf } from '../../src/reach/grid.ts';
import { hillshade } from '../../src/reach/hillshade.ts';
import { writePng } from '../../src/reach/png.ts';
import { reachPicture } from '../../src/reach/reach-picture.ts';

const size = 60;
function grid(height: (row: number, column: number) => number): ElevationGrid {
  const heightsM = Float32Array.from({ length: size * size }, (_, index) =>
    height(Math.floor(index / size), index % size),
  );
  return {
    name: 'made',
    rows: size,
    columns: size,
    northDeg: 0.025,
    westDeg: 0,
    stepNorthDeg: 1 / 1200,
    stepEastDeg: 1 / 1200,
    heightsM,
  };
}

describe('the shading of hills', () => {
  it('lights slopes that face north-west and darkens those that face south-east', () => {
    const at = 30 * size + 30;
    const level = hillshade(grid(() => 100))[at] ?? 0;
    // Level ground under light at 45 degrees: sin 45.
    expect(level).toBeCloseTo(Math.SQRT1_2, 6);
    // A slope of 45 degrees straight towards the light shows its full brightness (Horn 1981).
    const stepM = 111_195 / 1200;
    const facing = hillshade(grid((row, column) => (row + column) * stepM * Math.SQRT1_2))[at] ?? 0;
    expect(facing).toBeCloseTo(1, 3);
    expect(hillshade(grid((row, column) => 5000 - (row + column) * 20))[at]).toBeLessThan(level);
  });
});

describe('the picture of a reach', () => {
  const flat = grid(() => 100);
  // Four bands of margin, +20, +7, -2, -30 dB with a spread of 8: solid, likely, doubtful, no; then a band without data.
  const lossDb = Float32Array.from(
    { length: size * size },
    (_, index) => [80, 93, 102, 130, Number.NaN][Math.floor((index % size) / 12)] ?? Number.NaN,
  );
  const picture = reachPicture({ grid: flat, lossDb, greatestLossDb: 100, spreadDb: 8 });
  const luminance = (x: number, y: number) => {
    const at = 3 * (y * picture.widthPx + x);
    const [red = 0, green = 0, blue = 0] = picture.rgb.subarray(at, at + 3);
    // ITU-R BT.709 weights.
    return 0.2126 * red + 0.7152 * green + 0.0722 * blue;
  };
  const band = (index: number) => {
    const values: number[] = [];
    for (let y = 60; y < 120; y++)
      for (let x = index * 36; x < (index + 1) * 36; x++) values.push(luminance(x, y));
    return values;
  };
  const mean = (values: readonly number[]) => values.reduce((sum, value) => sum + value, 0) / values.length;

  it('darkens by clear steps from solid to no, without colour', () => {
    const levels = [0, 1, 2, 3].map((index) => mean(band(index)));
    for (const [index, level] of levels.entries())
      if (index > 0) expect((levels[index - 1] ?? 0) - level).toBeGreaterThan(25);
    expect(mean(band(4))).toBeGreaterThan(levels[0] ?? 0);
  });

  it('tells its tones apart by texture too', () => {
    const inked = [0, 1, 2, 3, 4].map((index) => {
      const values = band(index);
      const usual = [...values].sort((a, b) => a - b)[values.length >> 1] ?? 0;
      return Math.round((100 * values.filter((value) => Math.abs(value - usual) > 5).length) / values.length);
    });
    expect(inked[0]).toBe(0);
    expect(new Set(inked).size).toBeGreaterThanOrEqual(4);
  });

  it('says where a place is and how long a kilometre', () => {
    expect(picture.pixelOf(positionOf(flat, 10, 20))).toEqual({ x: 61.5, y: 31.5 });
    // 60 cells of 92.66 m are 5.56 km; a quarter of it rounds down to 1 km, 32.4 pixels at 3 to a cell.
    expect(picture.scaleBar.lengthM).toBe(1000);
    expect(picture.scaleBar.widthPx).toBeCloseTo((3 * 1000) / (111_195 / 1200), 6);
    expect(picture.legend.map(({ verdict }) => verdict)).toEqual([
      'solid',
      'likely',
      'doubtful',
      'no',
      'unknown',
    ]);
  });

  it('becomes a PNG file that holds the same pixels, the same bytes each time', () => {
    const bytes = writePng(picture);
    expect(writePng(picture)).toEqual(bytes);
    const view = new DataView(bytes.buffer);
    expect([...bytes.subarray(0, 8)]).toEqual([0x89, 0x50, 0x4e, 0x47, 0x0d, 0x0a, 0x1a, 0x0a]);
    expect([view.getUint32(16), view.getUint32(20)]).toEqual([180, 180]);
    // IEND has no content, so that its CRC is the same in every PNG file: AE 42 60 82.
    expect([...bytes.subarray(-4)]).toEqual([0xae, 0x42, 0x60, 0x82]);
    const length = view.getUint32(33);
    const rows = inflateSync(bytes.subarray(41, 41 + length));
    expect(rows.length).toBe(180 * (1 + 3 * 180));
    expect([...rows.subarray(1, 541)]).toEqual([...picture.rgb.subarray(0, 540)]);
  });
});
