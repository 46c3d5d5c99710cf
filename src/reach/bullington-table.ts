/**
 * The Bullington loss of an edge as a table, for rasters of millions of cells: `J(v)` and `1 - exp(-J/6)` (ITU-R P.526-15 eq (31); P.1812-8 eq
 * (21)) at even steps of the square root of v, straight between, which is within 0.0005 dB of the formula.
 */
import { decibels20 } from './decibel-table.ts';
import { knifeEdgeLossDb } from './knife-edge.ts';

/** The formula jumps by 0.004 dB where it begins, at v = -0.78; the table begins from its upper side. */
const firstV = -0.78;
const perRoot = 128;
const lastRoot = 20;

/** J and the share, in turn. */
const table = new Float64Array(2 * (lastRoot * perRoot + 1));
for (let index = 0; 2 * index < table.length; index++) {
  const edgeDb = knifeEdgeLossDb(Math.max((index / perRoot) ** 2 + firstV, firstV + 1e-6));
  table[2 * index] = edgeDb;
  table[2 * index + 1] = 1 - Math.exp(-edgeDb / 6);
}

/**
 * Loss over an edge of parameter v on a path of so many km, dB.
 *
 * The figures above stand in it once more, since constants of a module would be read anew for every cell.
 */
export function bullingtonOfEdgeDb(v: number, distanceKm: number): number {
  const around = 10 + 0.02 * distanceKm;
  if (v <= -0.78) return 0;
  // So high an edge leaves nothing of the exponential, and the root in J is that of v alone.
  if (v >= 19 * 19 - 0.78) return 6.9 + decibels20(2 * (v - 0.1)) + around;
  const entries = table;
  const at = Math.sqrt(v + 0.78) * 128;
  const step = at | 0;
  const part = at - step;
  const e0 = entries[2 * step] ?? 0;
  const s0 = entries[2 * step + 1] ?? 0;
  const e1 = entries[2 * step + 2] ?? 0;
  const s1 = entries[2 * step + 3] ?? 0;
  return e0 + part * (e1 - e0) + (s0 + part * (s1 - s0)) * around;
}
