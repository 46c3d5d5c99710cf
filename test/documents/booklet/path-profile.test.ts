import { expect, test } from 'vitest';
import { pathProfile } from '../../../src/documents/booklet/path-profile.ts';
import type { Profile } from '../../../src/reach/profile.ts';
import { equalWidths } from '../print/equal-widths.ts';

type Path = Parameters<typeof pathProfile>[1];

test.each([0.1, 0.6, 6, 12, 12.6])(
  'an obstacle at %d km of 12.7 km has its distance beside those of the ends',
  (alongKm) => {
    const distancesKm = Float64Array.from({ length: 128 }, (_, index) => index / 10);
    const heightsM = distancesKm.map((km) => (Math.abs(km - alongKm) < 0.05 ? 500 : 100));
    const profile = { distancesKm, heightsM } as unknown as Profile;
    const obstacle = { alongKm, groundM: 500, aboveLineM: 300, fresnelZoneM: 50 };
    const path = { heightsM: { from: 2, to: 2 }, prediction: { ok: true, obstacle } } as unknown as Path;
    const { shapes } = pathProfile(profile, path, 146_000_000, '', equalWidths);
    // Letters of half of 8 pt; a distance ends, stands about or begins at its place.
    const spans = shapes
      .flatMap((shape) => (shape.kind === 'words' && shape.y > 36 ? [shape] : []))
      .map(({ x, text, align }) => {
        const wide = (text.length * 4 * 25.4) / 72;
        const left = align === 'end' ? x - wide : align === 'center' ? x - wide / 2 : x;
        return { left, right: left + wide };
      })
      .toSorted((a, b) => a.left - b.left);
    expect(spans).toHaveLength(3);
    for (const [index, span] of spans.slice(1).entries())
      expect(span.left - (spans[index]?.right ?? 0)).toBeGreaterThan(1);
  },
);
