/**
 * Elevation files come from strangers and from bad connections. Whatever stands in them, `paths`, `ground` and `reach` answer in a sentence.
 * The tiles are made here: SRTM layout (NASA/JPL, SRTM_Topo.txt, section 2.1) and GeoTIFF by the program's own writer.
 */
import { mkdirSync, readFileSync, writeFileSync } from 'node:fs';
import { describe, expect, test } from 'vitest';
import { writeGeotiff } from '../../src/reach/write-geotiff.ts';
import { emptyFolder, readback } from './readback.ts';

const plan = (
  files: readonly string[],
  west = '36.5000, -84.0200',
  east = '36.5000, -83.9800',
) => `readback: 1
plan:
  title: Seam
  revision: 1
  effective: 2026-12-01
  timezone: America/New_York
  rules: us
  coordinator: ada
places:
  west: { name: West farm, at: "${west}", kind: base }
  east: { name: East hill, at: "${east}", kind: high-ground }
terrain: { files: [${files.join(', ')}] }
radios:
  handheld:
    name: Handheld
    transmits: [144-148]
    receives: [136-174]
    certified: [amateur]
    memories: 1-128
    steps: [5, 12.5, 25]
    widths: [25, 12.5]
    tones: [ctcss]
    modes: [fm]
    powers: { high: 5 W }
    antenna: { gain: -5 dBd, height: 1.5 m, carried: hand }
members:
  ada: { name: Ada Example, licences: { amateur: { class: general, call: KX4XAA, expires: 2033-02-01 } }, radios: [handheld], at: west }
repeaters:
  gap: { name: Gap repeater, call: W4XGP, output: 146.940, offset: -0.6, tone: 100.0, width: 25, place: east, power: 25 W }
channels:
  1: { name: GAP, repeater: gap }
`;

/** A folder with the plan and its terrain, and how each of the three commands answers it. */
function answers(files: Readonly<Record<string, Uint8Array | string>>, text = plan(Object.keys(files))) {
  const folder = emptyFolder();
  writeFileSync(`${folder}/plan.yaml`, text);
  for (const [name, bytes] of Object.entries(files)) writeFileSync(`${folder}/${name}`, bytes);
  const run = (...args: readonly string[]) => {
    const ran = readback(args, { cwd: folder });
    expect(ran.err + ran.out).not.toMatch(/\n\s+at .*:\d+:\d+|node:internal|undefined|NaN/);
    return ran;
  };
  return {
    paths: run('paths', 'plan.yaml'),
    ground: run('ground', 'plan.yaml', '--from', 'west', '--to', 'gap'),
    reach: run('reach', 'plan.yaml', '--station', 'gap', '--out', 'charts'),
  };
}

function refused(found: ReturnType<typeof answers>, because: RegExp): void {
  for (const { status, out, err } of Object.values(found)) {
    expect({ status, out }).toEqual({ status: 2, out: '' });
    expect(err.replace(/\s+/g, ' ')).toMatch(because);
    expect(err.split('\n').length).toBeLessThan(8);
  }
}

const hills = new Uint8Array(readFileSync(new URL('../../plans/terrain/hickory-gap.tif', import.meta.url)));

/** A tile of three-second steps on rolling ground that goes on over its edges. */
function tile(
  south: number,
  west: number,
  voidAt: (latitude: number, longitude: number) => boolean = () => false,
) {
  const view = new DataView(new ArrayBuffer(2 * 1201 * 1201));
  for (let row = 0; row <= 1200; row++) {
    for (let column = 0; column <= 1200; column++) {
      const [latitude, longitude] = [south + 1 - row / 1200, west + column / 1200];
      const height = 400 + 60 * Math.sin(latitude * 300) + 60 * Math.cos(longitude * 250);
      view.setInt16(2 * (row * 1201 + column), voidAt(latitude, longitude) ? -32_768 : Math.round(height));
    }
  }
  return new Uint8Array(view.buffer);
}

/** Flat ground under both places. */
const flat = () =>
  writeGeotiff({
    columns: 200,
    rows: 200,
    northDeg: 36.58,
    westDeg: -84.08,
    stepNorthDeg: 1 / 1200,
    stepEastDeg: 1 / 1200,
    samples: new Int16Array(40_000).fill(300),
    voidValue: -32_768,
    isPlain: true,
  });

/** The bytes with the value of one directory entry written over. */
function withEntry(bytes: Uint8Array, tag: number, value: number): Uint8Array {
  const copy = Uint8Array.from(bytes);
  const view = new DataView(copy.buffer);
  const start = view.getUint32(4, true);
  for (let entry = 0; entry < view.getUint16(start, true); entry++) {
    const at = start + 2 + 12 * entry;
    if (view.getUint16(at, true) === tag) view.setUint32(at + 8, value, true);
  }
  return copy;
}

describe('an elevation file that is not what it should be', () => {
  test('cut short in the middle of its data', () => {
    refused(answers({ 'a.tif': hills.subarray(0, hills.length / 2) }), /a\.tif .*cut short/);
  });

  test('cut short in its directory', () => {
    refused(answers({ 'a.tif': hills.subarray(0, 40) }), /a\.tif .*cut short/);
  });

  test('on a map projection', () => {
    const bytes = flat();
    // GTModelType, key 1024, is the first: 2 geographic, 1 projected (OGC GeoTIFF 1.1, section 7.4.2).
    const view = new DataView(bytes.buffer);
    for (let at = 8; at < 400; at += 2)
      if (view.getUint16(at, true) === 1024 && view.getUint16(at + 4, true) === 1)
        view.setUint16(at + 6, 1, true);
    refused(answers({ 'a.tif': bytes }), /a\.tif is on a map projection.*EPSG:4326/);
  });

  test('that says it is a hundred thousand samples wide', () => {
    refused(
      answers({ 'a.tif': withEntry(withEntry(flat(), 256, 100_000), 257, 100_000) }),
      /a\.tif is 100000 by 100000 samples; up to 40000000 are read\. .*Cut it down/,
    );
  });

  test('with a directory of a thousand million values', () => {
    const bytes = flat();
    const view = new DataView(bytes.buffer);
    view.setUint32(8 + 2 + 4, 1_000_000_000, true);
    refused(answers({ 'a.tif': bytes }), /a\.tif has a directory entry of 1000000000 values/);
  });

  test('that is a text, or empty', () => {
    refused(answers({ 'a.tif': 'no such page' }), /a\.tif is no TIFF file/);
    refused(answers({ 'a.tif': '' }), /a\.tif is no TIFF file/);
  });

  test('a tile of the wrong size', () => {
    refused(
      answers({ 'N36W085.hgt': tile(36, -85).subarray(0, 2_000_000) }),
      /N36W085\.hgt has 2000000 bytes; an SRTM tile has 2884802 or 25934402/,
    );
  });

  test('a tile whose name does not say where it lies', () => {
    refused(answers({ 'valley.hgt': tile(36, -85) }), /valley\.hgt/);
  });

  test('of another kind', () => {
    refused(answers({ 'a.png': 'x' }), /a\.png is no elevation file\. .*GeoTIFF/);
  });

  test('that is not there, or is a folder', () => {
    refused(answers({}, plan(['a.tif'])), /There is no file a\.tif/);
    const folder = emptyFolder();
    mkdirSync(`${folder}/a.tif`);
    writeFileSync(`${folder}/plan.yaml`, plan(['a.tif']));
    const { status, err } = readback(['paths', 'plan.yaml'], { cwd: folder });
    expect({ status, err }).toEqual({ status: 2, err: expect.stringContaining('a.tif is a folder') });
  });
});

describe('ground that the files do not have', () => {
  const noGround = (found: ReturnType<typeof answers>) => {
    expect(found.paths.status).toBe(0);
    expect(found.paths.out).toContain('No elevation data');
    expect(found.ground.status).toBe(2);
    expect(found.ground.err).toContain('elevation');
  };

  test('under a place outside of them all is said in its row', () => {
    noGround(answers({ 'a.tif': flat() }, plan(['a.tif'], '36.5000, -84.0200', '37.4000, -83.9800')));
  });

  test('in a hole between two places is said in its row, never taken for flat', () => {
    const holed = (_: number, longitude: number) => longitude > -84.015 && longitude < -84.005;
    noGround(answers({ 'N36W085.hgt': tile(36, -85, holed), 'N36W084.hgt': tile(36, -84) }));
  });

  test('in a plan without files is said in its row', () => {
    const found = answers({}, plan([]));
    expect(found.paths.status).toBe(0);
    expect(found.paths.out).toContain('No elevation data');
    expect([found.ground.status, found.reach.status]).toEqual([2, 2]);
  });
});

describe('two tiles that share an edge', () => {
  test('are one ground: a path over the seam, a walk over it, and a chart of both', () => {
    const found = answers({ 'N36W085.hgt': tile(36, -85), 'N36W084.hgt': tile(36, -84) });
    expect(Object.values(found).map(({ status, err }) => ({ status, err }))).toEqual(
      Array(3).fill({ status: 0, err: '' }),
    );
    expect(found.paths.out).toMatch(/Gap repeater +3.6 km +\d{3}°\/\d{3}° +[+-]?\d+ dB/);
    expect(found.ground.out).not.toContain('No elevation');
    expect(found.reach.out).toContain('of 2401 by 1201 cells');
    expect(found.reach.out).not.toContain('unknown');
  });
});
