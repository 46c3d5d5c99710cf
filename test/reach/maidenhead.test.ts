import { describe, expect, it } from 'vitest';
import { maidenhead, readMaidenhead } from '../../src/reach/maidenhead.ts';
import { locators } from '../sources/reach/locators.ts';

describe('Maidenhead locators', () => {
  it.each(locators)('gives $place the published locator', ({ locator, extended, ...position }) => {
    expect(maidenhead(position)).toBe(locator);
    expect(maidenhead(position, 2)).toBe(locator.slice(0, 4));
    expect(maidenhead(position, 4)).toBe(extended);
  });

  it.each(locators)(
    'reads $locator as the centre of a square that holds $place',
    ({ locator, latitudeDeg, longitudeDeg }) => {
      const reading = readMaidenhead(locator);
      expect(reading.ok).toBe(true);
      if (!reading.ok) return;
      // A subsquare is 5 minutes of longitude by 2.5 minutes of latitude.
      expect(Math.abs(reading.position.latitudeDeg - latitudeDeg)).toBeLessThanOrEqual(1.25 / 60 + 1e-9);
      expect(Math.abs(reading.position.longitudeDeg - longitudeDeg)).toBeLessThanOrEqual(2.5 / 60 + 1e-9);
    },
  );

  it('puts the north pole and the 180th meridian into the last field', () => {
    expect(maidenhead({ latitudeDeg: 90, longitudeDeg: 180 }, 4)).toBe('RR99xx99');
  });

  it('reads small and capital letters alike', () => {
    expect(readMaidenhead('em76VO')).toEqual(readMaidenhead('EM76vo'));
  });
});
