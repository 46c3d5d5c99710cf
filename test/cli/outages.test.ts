import { describe, expect, test } from 'vitest';
import { demo, readback } from './readback.ts';

describe('readback outages', () => {
  test('says what stops when the power feeder fails, after how long, and who loses which rung', () => {
    const { status, out, err } = readback(['outages', demo]);
    expect({ status, err }).toEqual({ status: 0, err: '' });
    const text = out.replace(/\s+/g, ' ');
    // Backups of the demo plan: 8 h and 12 h.
    expect(text).toContain("Valley power feeder (asset) Stops: Neighbours' repeater after 8 h, ");
    expect(text).toContain('Gap repeater after 12 h.');
    expect(text).toContain(
      'Calder Finch (away) Check-ins lost: Yard call. Off the air at once: Juno Petrak; left: meet at Old Schoolhouse',
    );
    expect(text).not.toContain('When two things fail');
  });

  test('with --two says what two failures do that neither does alone', () => {
    const { out } = readback(['outages', demo, '--two']);
    expect(out).toContain('When two things fail');
    expect(out.replace(/\s+/g, ' ')).toContain(
      'Cut off: Calder Finch. if Ward Ellison away together with Old Schoolhouse',
    );
    expect(Math.max(...out.split('\n').map((line) => line.length))).toBeLessThanOrEqual(80);
  });

  test('gives the same as JSON, rungs counted from 1', () => {
    const { single, double, oneChannel } = JSON.parse(readback(['outages', demo, '--two', '--json']).out);
    const feeder = single.find(
      ({ failed }: { failed: { id: string }[] }) => failed[0]?.id === 'valley-feeder',
    );
    expect(feeder.stopped).toContainEqual({ kind: 'repeater', id: 'gap', afterMin: 720 });
    expect(feeder.members).toContainEqual(
      expect.objectContaining({
        member: 'inez',
        standing: 'on the air',
        rungsLost: [{ ladder: 'trail', rung: 1, afterMin: 720 }],
      }),
    );
    expect(double.length).toBeGreaterThan(0);
    expect(oneChannel).toEqual([{ member: 'juno', slot: 11 }]);
  });
});
