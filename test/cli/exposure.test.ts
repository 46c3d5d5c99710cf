import { expect, test } from 'vitest';
import { demo, readback } from './readback.ts';

test.each(['hickory-gap', 'lauterkar-hut', 'loon-lake', 'saltbush-track'])(
  'the distances to keep of %s fit 80 columns, the longest name whole',
  (plan) => {
    const { status, out, err } = readback(['exposure', demo.replace('hickory-gap', plan)]);
    expect({ status, err }).toEqual({ status: 0, err: '' });
    const table = out.slice(0, out.indexOf('\n\n')).split('\n');
    expect(table[0]?.trim()).toBe('Keep away, m');
    expect(table[1]).toMatch(/^Transmitter +MHz +Power +Gain +public +trained$/);
    expect(table.length).toBeGreaterThan(2);
    for (const row of table.slice(2)) expect(row).toMatch(/^[^…]+ [\d.]+ dBi +\d+\.\d +\d+\.\d$/);
    // Rows end under the ends of their headings.
    expect(new Set(table.map((row) => row.length)).size).toBe(1);
    expect(Math.max(...out.split('\n').map((line) => line.length))).toBeLessThanOrEqual(80);
  },
);
