import { expect, test } from 'vitest';
import {
  formatPacketAddress,
  parsePacketAddress,
  samePacketAddress,
} from '../../src/radio/packet-address.ts';

// AX.25 version 2.2 revision 4 (2025), sections 3.12 and 3.12.2: four bits of identifier, six characters.
test('every identifier from 0 to 15 is read and written back', () => {
  for (let ssid = 0; ssid <= 15; ssid += 1) {
    const reading = parsePacketAddress(`KX4XWE-${ssid}`);
    expect(reading).toEqual({ ok: true, value: { callSign: 'KX4XWE', ssid } });
    expect(reading.ok && formatPacketAddress(reading.value)).toBe(ssid === 0 ? 'KX4XWE' : `KX4XWE-${ssid}`);
  }
});

test('an address without an identifier is identifier 0', () => {
  expect(parsePacketAddress('kx4xwe')).toEqual({ ok: true, value: { callSign: 'KX4XWE', ssid: 0 } });
  expect(samePacketAddress({ callSign: 'KX4XWE', ssid: 0 }, { callSign: 'KX4XWE', ssid: 1 })).toBe(false);
});

test.each([
  'KX4XWE-16',
  'KX4XWE-',
  'KX4XWE--1',
  'KX4XWE-01',
  'KX4XWE-1-2',
  'KX4XWE-A',
  '-1',
  '',
  'WX-1',
  'KX4XWE/P-1',
  'GB13QRM-1',
])('%s is no packet address', (text) => {
  const reading = parsePacketAddress(text);
  expect(reading.ok ? 'was read' : reading.message).toMatch(/\.$/);
});
