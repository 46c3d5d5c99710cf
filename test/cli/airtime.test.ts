import { describe, expect, test } from 'vitest';
import { demo, readback } from './readback.ts';

describe('readback airtime', () => {
  test('shows each route with its time on the channel, and what is assumed', () => {
    const { status, out, err } = readback(['airtime', demo]);
    expect({ status, err }).toEqual({ status: 0, err: '' });
    expect(out).toContain('A message of 500 characters: 2 frames of at most 256.');
    // A channel is a slot everywhere else: the column of times is not called one.
    expect(out).toMatch(/^Route +On air +In all +A loss +T1$/m);
    expect(out).toContain('through Ridge digipeater, channel 19; from North Trailhead');
    expect(out.replace(/\s+/g, ' ')).toContain(
      '1200 bit/s, 500 ms of keying, persistence 0.25 in slots of 100 ms',
    );
    expect(Math.max(...out.split('\n').map((line) => line.length))).toBeLessThanOrEqual(80);
  });

  test('a longer message takes longer over every route', () => {
    const times = (characters: string) =>
      JSON.parse(readback(['airtime', demo, '--characters', characters, '--json']).out).routes.map(
        ({ totalS }: { totalS: number }) => totalS,
      );
    const [short, long] = [times('80'), times('800')];
    expect(short).toHaveLength(2);
    for (const [index, s] of short.entries()) expect(long[index]).toBeGreaterThan(s);
  });

  test('refuses a length that is none', () => {
    expect(readback(['airtime', demo, '--characters', 'x'])).toMatchObject({ status: 2, out: '' });
  });
});
