import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { maidenhead } from '../../src/reach/maidenhead.ts';
import { formatPosition, parsePosition, positionExamples } from '../../src/reach/position.ts';

/** What a plan's author sees when a position cannot be read. */
function reasonFor(text: string): string {
  const reading = parsePosition(text);
  return reading.ok ? `read as ${reading.notation}` : reading.reason;
}

describe('positions', () => {
  it('reads decimal degrees with south and west negative', () => {
    expect(parsePosition('36.6246, -84.2346')).toMatchObject({
      ok: true,
      notation: 'degrees',
      position: { latitudeDeg: 36.6246, longitudeDeg: -84.2346 },
    });
    expect(parsePosition(' -34.91   -56.21166 ')).toMatchObject({ position: { latitudeDeg: -34.91 } });
  });

  it('says how far the place may be from what was written', () => {
    const four = parsePosition('EM76');
    const six = parsePosition('EM76vo');
    const decimals = parsePosition('36.6246, -84.2346');
    // A square is 2° by 1°, a subsquare 5' by 2.5' (by definition): half-diagonals near 36.5° N.
    expect(four.ok && four.withinM).toBeCloseTo(
      Math.hypot(111195 * Math.cos((36.5 * Math.PI) / 180), 55597.5),
      0,
    );
    expect(six.ok && six.withinM).toBeGreaterThan(4000);
    expect(six.ok && six.withinM).toBeLessThan(5000);
    expect(decimals.ok && decimals.withinM).toBeLessThan(8);
  });

  it('shows an example of each notation for anything else', () => {
    const reason = reasonFor('up by the old mill');
    for (const example of ['36.6246, -84.2346', 'EM76vo', '16SGF']) expect(reason).toContain(example);
  });

  it('names the usual mistakes', () => {
    expect(reasonFor('')).toMatch(/empty/);
    expect(reasonFor('-84.2346, 36.6246')).not.toMatch(/read as locator/);
    expect(reasonFor('124.2346, 36.6246')).toMatch(/latitude comes first/);
    expect(reasonFor('36.6, 184.2')).toMatch(/beyond 180/);
    expect(reasonFor('36.6246 N, 84.2346 W')).toMatch(/minus sign/);
    expect(reasonFor('36,6246, -84,2346')).toMatch(/decimal points/);
    expect(reasonFor("36° 37.476' -84° 14.1'")).toMatch(/degrees and minutes/);
    expect(reasonFor('36.6246')).toMatch(/one number/);
    expect(reasonFor('EM76v')).toMatch(/5 characters/);
    expect(reasonFor('EM76zz')).toMatch(/A to X/);
    expect(reasonFor('EZ76vo')).toMatch(/A to R/);
    expect(reasonFor('61SGF1234')).toMatch(/zones are 1 to 60/);
    expect(reasonFor('16IGF1234')).toMatch(/bands are C to X/);
    expect(reasonFor('16SGF123')).toMatch(/same number/);
    expect(reasonFor('16SZF1234')).toMatch(/which zone 16 has not/);
    expect(reasonFor('16SAF1234')).toMatch(/does not hold/);
    expect(reasonFor('34XDG1234')).toMatch(/does not exist/);
  });

  it('never throws and never leaves the globe, whatever is written', () => {
    const shaped = fc.stringMatching(/^[0-9A-Za-z]{2,3}[A-Za-z]{0,3}[0-9 .,-]{0,12}$/);
    fc.assert(
      fc.property(fc.oneof(fc.string(), shaped), (text) => {
        const reading = parsePosition(text);
        if (!reading.ok) return reading.reason.endsWith('.');
        const { latitudeDeg, longitudeDeg } = reading.position;
        return Math.abs(latitudeDeg) <= 90.5 && Math.abs(longitudeDeg) <= 180;
      }),
      { numRuns: 3000 },
    );
  });

  it('takes a hair south of the equator for the equator', () => {
    for (const latitudeDeg of [-7e-15, -1e-9, -1e-8, -1e-7, 1e-15]) {
      const written = formatPosition({ latitudeDeg, longitudeDeg: 0 }, 'mgrs');
      expect(parsePosition(written), written).toMatchObject({ ok: true });
    }
  });

  it('reads back what it writes to within the last figure', () => {
    const anywhere = fc.record({
      latitudeDeg: fc.double({ min: -79.9, max: 83.9, noNaN: true }),
      longitudeDeg: fc.double({ min: -180, max: 179.999, noNaN: true }),
    });
    fc.assert(
      fc.property(anywhere, (position) => {
        for (const written of [
          formatPosition(position),
          formatPosition(position, 'mgrs'),
          maidenhead(position, 4),
        ]) {
          const reading = parsePosition(written);
          expect(reading, written).toMatchObject({ ok: true });
          if (!reading.ok) return;
          const northM = (reading.position.latitudeDeg - position.latitudeDeg) * 111_195;
          const turnDeg = reading.position.longitudeDeg - position.longitudeDeg;
          const eastM =
            (((turnDeg + 540) % 360) - 180) * 111_320 * Math.cos((position.latitudeDeg * Math.PI) / 180);
          expect(Math.hypot(northM, eastM), written).toBeLessThan(1.01 * reading.withinM + 0.5);
        }
      }),
      { numRuns: 500 },
    );
  });
});

describe('the examples shown in messages', () => {
  it('name one and the same place', () => {
    const written = ['36.6246, -84.2346', 'EM76vo', '16SGF4728656791'];
    for (const text of written) expect(positionExamples).toContain(text);
    for (const text of written) {
      const reading = parsePosition(text);
      expect(reading, text).toMatchObject({ ok: true });
      // The coarsest of the three is a locator of six characters, 2.5 minutes high.
      expect(reading.ok && Math.abs(reading.position.latitudeDeg - 36.6246)).toBeLessThan(2.5 / 120);
    }
  });
});
