import { deflateSync } from 'node:zlib';
import { fromArrayBuffer } from 'geotiff';
import { describe, expect, it } from 'vitest';
import { Refusal } from '../../src/findings/refusal.ts';
import { heightAt } from '../../src/reach/grid.ts';
import { readGeotiff } from '../../src/reach/read-geotiff.ts';
import { writeGeotiff } from '../../src/reach/write-geotiff.ts';
import { hillsBytes, readHills } from './terrain.fixture.ts';

const small = {
  columns: 4,
  rows: 3,
  northDeg: 37,
  westDeg: -85,
  stepNorthDeg: 1 / 1200,
  stepEastDeg: 1 / 1200,
  samples: Int16Array.from([100, 101, 102, 103, 110, 111, -32768, 113, 120, 121, 122, 123]),
  voidValue: -32768,
};

/** A copy of a file with the value of one directory entry changed. */
function withTag(bytes: Uint8Array, tag: number, value: number): Uint8Array {
  const copy = new Uint8Array(bytes);
  const view = new DataView(copy.buffer);
  const at = view.getUint32(4, true);
  for (let index = 0; index < view.getUint16(at, true); index++) {
    const entry = at + 2 + 12 * index;
    if (view.getUint16(entry, true) !== tag) continue;
    if (view.getUint16(entry + 2, true) === 3) view.setUint16(entry + 8, value, true);
    else view.setUint32(entry + 8, value, true);
  }
  return copy;
}

/** The message and remedy of a refused file. */
async function refusal(bytes: Uint8Array): Promise<string> {
  try {
    await readGeotiff(bytes, 'map.tif');
  } catch (fault) {
    if (fault instanceof Refusal) return `${fault.message} ${fault.remedy ?? ''}`;
    throw fault;
  }
  return 'read without complaint';
}

describe('elevation grids from GeoTIFF', () => {
  it('reads the real grid: its size, place and range as published with it', async () => {
    const grid = await readHills();
    // USGS NED extract as packaged: 344 rows, 403 columns, 3 arc seconds, west edge -84.41375, north edge 36.73291667, 236 to 1076 m.
    expect([grid.rows, grid.columns]).toEqual([344, 403]);
    expect(grid.westDeg - grid.stepEastDeg / 2).toBeCloseTo(-84.41375, 8);
    expect(grid.northDeg + grid.stepNorthDeg / 2).toBeCloseTo(36.73291667, 7);
    expect(grid.stepNorthDeg).toBeCloseTo(1 / 1200, 12);
    expect(Array.from(grid.heightsM).reduce((low, height) => Math.min(low, height))).toBe(236);
    expect(Array.from(grid.heightsM).reduce((high, height) => Math.max(high, height))).toBe(1076);
  });

  it('reads the same heights as the geotiff package, sample for sample', async () => {
    const image = await (await fromArrayBuffer(hillsBytes.slice().buffer)).getImage();
    const [band] = await image.readRasters();
    const grid = await readHills();
    expect(Array.from(grid.heightsM)).toEqual(Array.from(band as ArrayLike<number>));
  });

  it('gives the heights that GDAL gives on whole arc seconds', async () => {
    const grid = await readHills();
    // gdallocationinfo on a one-degree SRTM tile that GDAL 3.6.2 made of this file; bilinear, to the metre.
    for (const [latitudeDeg, longitudeDeg, height] of [
      [36.7, -84.3, 474],
      [36.6, -84.25, 513],
      [36.5, -84.1, 363],
    ] as const) {
      const found = heightAt(grid, { latitudeDeg, longitudeDeg });
      expect(Math.abs((found ?? 0) - height)).toBeLessThan(0.5);
    }
  });

  it('reads back what it writes, plain or packed, whole or fractional', async () => {
    for (const isPlain of [true, false]) {
      const grid = await readGeotiff(writeGeotiff({ ...small, isPlain }), 'a.tif');
      expect(grid).toMatchObject({ columns: 4, rows: 3, northDeg: 37, westDeg: -85 });
      expect(grid.heightsM).toEqual(small.samples);
      // As a file is read by Node: a buffer that is a view into another.
      const view = Buffer.concat([Buffer.alloc(8), writeGeotiff({ ...small, isPlain })]).subarray(8);
      expect((await readGeotiff(view, 'a.tif')).heightsM).toEqual(small.samples);
      const samples = Float32Array.from(small.samples, (height) =>
        height < -1000 ? Number.NaN : height + 0.25,
      );
      const fractional = await readGeotiff(
        writeGeotiff({ ...small, samples, voidValue: Number.NaN, isPlain }),
        'b.tif',
      );
      expect(fractional.heightsM).toEqual(samples);
    }
  });

  it('writes what another reader reads, and the same bytes each time', async () => {
    const bytes = writeGeotiff({ ...small, description: 'heights' });
    expect(writeGeotiff({ ...small, description: 'heights' })).toEqual(bytes);
    const image = await (await fromArrayBuffer(bytes.slice().buffer)).getImage();
    expect(image.getGeoKeys()).toMatchObject({
      GTModelTypeGeoKey: 2,
      GTRasterTypeGeoKey: 2,
      GeographicTypeGeoKey: 4326,
    });
    expect(image.getOrigin().slice(0, 2)).toEqual([-85, 37]);
    expect(image.getGDALNoData()).toBe(-32768);
    const [band] = await image.readRasters();
    expect(Array.from(band as ArrayLike<number>)).toEqual(Array.from(small.samples));
  });

  it('takes a file of cell areas to have its samples half a step inside', async () => {
    // OGC GeoTIFF 1.1: GTRasterType 1 = areas, tie point on the corner; 2 = points, tie point on the sample.
    const points = writeGeotiff(small);
    const keysAt = findWords(points, [1025, 0, 1, 2]);
    const areas = new Uint8Array(points);
    new DataView(areas.buffer).setUint16(keysAt + 6, 1, true);
    const [asPoints, asAreas] = [await readGeotiff(points, 'p.tif'), await readGeotiff(areas, 'a.tif')];
    expect(asAreas.northDeg).toBeCloseTo(asPoints.northDeg - small.stepNorthDeg / 2, 12);
    expect(asAreas.westDeg).toBeCloseTo(asPoints.westDeg + small.stepEastDeg / 2, 12);
  });

  it('refuses what it cannot trust, naming what is wrong', async () => {
    const good = writeGeotiff(small);
    expect(await refusal(good)).toBe('read without complaint');
    expect(await refusal(new Uint8Array(0))).toMatch(/no TIFF/);
    expect(await refusal(new TextEncoder().encode('<html>not found</html>'))).toMatch(/no TIFF/);
    expect(await refusal(good.subarray(0, 60))).toMatch(/cut short/);
    expect(await refusal(good.subarray(0, good.length - 6))).toMatch(/cut short|unpack/);
    expect(await refusal(withTag(good, 256, 60_000))).toMatch(/strip or tile/);
    expect(await refusal(withTag(withTag(good, 256, 60_000), 257, 60_000))).toMatch(
      /up to 40000000 are read.*Cut it down/,
    );
    expect(await refusal(withTag(good, 277, 3))).toMatch(/picture/);
    expect(await refusal(withTag(good, 258, 12))).toMatch(/12 bits/);
    expect(await refusal(withTag(good, 259, 7))).toMatch(/could not be unpacked/);
    expect(await refusal(withTag(good, 33_550, 0))).toMatch(/steps|ends before/);
    const projected = new Uint8Array(good);
    new DataView(projected.buffer).setUint16(findWords(good, [1024, 0, 1, 2]) + 6, 1, true);
    expect(await refusal(projected)).toMatch(/map projection.*EPSG:4326/);
    const otherDatum = new Uint8Array(good);
    new DataView(otherDatum.buffer).setUint16(findWords(good, [2048, 0, 1, 4326]) + 6, 4267, true);
    expect(await refusal(otherDatum)).toMatch(/EPSG:4267/);
  });

  it('does not unpack a bomb: a small file whose strip would fill the memory', async () => {
    const bomb = deflateSync(new Uint8Array(64 * 1024 * 1024));
    const good = writeGeotiff(small);
    const stuffed = new Uint8Array(good.length + bomb.length);
    stuffed.set(good);
    stuffed.set(bomb, good.length);
    expect(await refusal(withTag(withTag(stuffed, 273, good.length), 279, bomb.length))).toMatch(
      /does not unpack/,
    );
  });

  it('ends every damaged file in a grid or a refusal, never in a fault', async () => {
    const good = writeGeotiff(small);
    for (let at = 0; at < good.length; at++) {
      for (const value of [0, 0xff]) {
        const damaged = new Uint8Array(good);
        damaged[at] = value;
        await refusal(damaged);
      }
    }
  });
});

function findWords(bytes: Uint8Array, words: readonly number[]): number {
  const view = new DataView(bytes.buffer, bytes.byteOffset);
  for (let at = 0; at + 2 * words.length <= bytes.length; at += 2) {
    if (words.every((word, index) => view.getUint16(at + 2 * index, true) === word)) return at;
  }
  throw new Error('no such keys in the file');
}
