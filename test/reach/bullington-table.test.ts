import { describe, expect, it } from 'vitest';
import { bullingtonOfEdgeDb } from '../../src/reach/bullington-table.ts';
import { knifeEdgeLossDb } from '../../src/reach/knife-edge.ts';

describe('the table of edge losses', () => {
  it('is within 0.0005 dB of ITU-R P.526-15 eq (31) and P.1812-8 eq (21)', () => {
    for (let v = -1; v < 500; v += 0.0137) {
      const edgeDb = knifeEdgeLossDb(v);
      const wanted = edgeDb + (1 - Math.exp(-edgeDb / 6)) * (10 + 0.02 * 25);
      expect(Math.abs(bullingtonOfEdgeDb(v, 25) - wanted)).toBeLessThan(0.0005);
    }
  });
});
