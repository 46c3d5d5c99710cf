/**
 * The Bullington loss of an edge as a table, for rasters of millions of cells: `J(v)` and `1 - exp(-J/6)` (ITU-R P.526-15 eq (31); P.1812-8 eq
 * (21)) at steps of 1/128, straight between, which is within 0.0001 dB of the formula.
 */
import { knifeEdgeLossDb } from './knife-edge.ts';

const firstV = -0.78125;
const lastV = 20;
const perUnit = 128;
const count = (lastV - firstV) * perUnit + 1;
const edge = new Float64Array(count);
const share = new Float64Array(count);
for (let index = 0; index < count; index++) {
  // The formula jumps by 0.004 dB where it begins; the table begins from its upper side.
  const v = Math.max(firstV + index / perUnit, -0.779_999);
  edge[index] = knifeEdgeLossDb(v);
  share[index] = 1 - Math.exp(-(edge[index] ?? 0) / 6);
}

/** Loss over an edge of parameter v on a path of so many km, dB. */
export function bullingtonOfEdgeDb(v: number, distanceKm: number): number {
  if (v <= -0.78) return 0;
  if (v >= lastV - 1) {
    const loss = knifeEdgeLossDb(v);
    return loss + (1 - Math.exp(-loss / 6)) * (10 + 0.02 * distanceKm);
  }
  const at = (v - firstV) * perUnit;
  const index = Math.floor(at);
  const part = at - index;
  const [e0, e1] = [edge[index] ?? 0, edge[index + 1] ?? 0];
  const [s0, s1] = [share[index] ?? 0, share[index + 1] ?? 0];
  return e0 + part * (e1 - e0) + (s0 + part * (s1 - s0)) * (10 + 0.02 * distanceKm);
}
