import { readFile } from 'node:fs/promises';
import { expect, test } from 'vitest';
import { loadGround } from '../../src/consequences/load-ground.ts';
import { radioPath } from '../../src/consequences/paths.ts';
import { reachMap } from '../../src/consequences/reach-map.ts';
import { cellOf } from '../../src/reach/grid.ts';
import { sweepLoss } from '../../src/reach/loss-sweep.ts';
import { rayCount, rayFrame } from '../../src/reach/rays.ts';
import { example } from './example.ts';

const read = (path: string) => readFile(new URL(`../../plans/terrain/${path}`, import.meta.url));

/** A plan whose places in the field stand on samples of the grid. */
const plan = (terrain: string) => `
terrain: { files: [hickory-gap.tif]${terrain} }
places:
  base: { name: Base, at: "36.6192, -84.2010", kind: base }
  hill: { name: Hill, at: "36.6258, -84.2725", kind: high-ground }
  hollow: { name: Hollow, at: "36.5816667, -84.3600", kind: field }
  camp: { name: Camp, at: "36.6500000, -84.2200", kind: field }
members:
  ada: { name: Ada, licences: { amateur: { class: general, call: KX4XAA } }, radios: [handheld], at: base }
`;

async function margins(terrain: string) {
  const whole = await example(plan(terrain));
  const ground = await loadGround(whole.plan, read);
  const to = { kind: 'repeater', id: 'gap', place: 'hill' } as const;
  const map = reachMap(whole.plan, whole.consequences, ground, to, 'handheld', 1);
  if (!map.ok) throw new Error(map.reason);
  const frame = rayFrame(map.grid, map.station);
  if (!frame) throw new Error('no ground under the station');
  const lossDb = new Float32Array(map.grid.rows * map.grid.columns).fill(Number.NaN);
  sweepLoss(map.grid, frame, map.settings, lossDb, [[0, rayCount(frame)]]);
  return ['hollow', 'camp'].map((place) => {
    const at = whole.plan.places.get(place)?.at;
    if (!at) throw new Error(`no place ${place}`);
    const { row, column } = cellOf(map.grid, at);
    const loss = lossDb[Math.round(row) * map.grid.columns + Math.round(column)] ?? Number.NaN;
    const { prediction } = radioPath(whole.plan, whole.consequences, ground, {
      from: { kind: 'member', place, radio: 'handheld' },
      to,
      slot: 1,
      members: ['ada'],
    });
    if (!prediction.ok) throw new Error(prediction.reason);
    return { byMap: map.greatestLossDb - loss, byPath: prediction.worse.marginDb };
  });
}

test('the map of a station says of places in the field what their paths say, with and without woodland', async () => {
  const [open, wooded] = [await margins(''), await margins(', woodland: 15 m')];
  // The two sample the same ground at other points.
  for (const { byMap, byPath } of [...open, ...wooded]) expect(Math.abs(byMap - byPath)).toBeLessThan(1.5);
  for (const [index, { byMap }] of wooded.entries()) {
    const [openField, woodedField] = [open[index], wooded[index]];
    // What the wood takes is told by the angle at which the path leaves.
    const taken = (openField?.byPath ?? Number.NaN) - (woodedField?.byPath ?? Number.NaN);
    expect(taken).toBeGreaterThan(1);
    expect((openField?.byMap ?? Number.NaN) - byMap).toBeCloseTo(taken, 0);
  }
});
