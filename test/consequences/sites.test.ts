import { expect, test } from 'vitest';
import { examine } from '../../src/pipeline.ts';
import { examplePlan } from '../checks/example-plan.ts';

async function sitesOf(piece: string) {
  const read = () => Promise.reject(new Error('no file'));
  const { whole } = await examine(examplePlan(piece), 'plan.yaml', { today: '2026-11-25', read });
  if (!whole) throw new Error('not a plan');
  return whole.consequences.sites();
}

const radios = `
radios:
  mast: { name: Base set, transmits: [144-148], receives: [136-174], certified: [amateur], memories: 1-128, tones: [ctcss], modes: [fm, packet], powers: { high: 25 W }, antenna: { gain: 3 dBd, height: 8 m, carried: mast } }
  handheld: { name: Handheld, transmits: [144-148], receives: [136-174], certified: [amateur], memories: 1-128, tones: [ctcss], modes: [fm, packet], powers: { high: 5 W }, antenna: { carried: hand } }
members:
  ada: { name: Ada Example, licences: { amateur: { class: general, call: KX4XAA, expires: 2033-02-01 } }, radios: [mast], at: hill }
  ben: { name: Ben Example, licences: { amateur: { class: technician, call: KX4XBB, expires: 2033-02-01 } }, radios: [handheld], at: hill }`;

test('a repeater and the mast of a member beside it are one site; a hand-held is not part of it', async () => {
  const [site, ...others] = await sitesOf(radios);
  expect(others).toEqual([]);
  expect(site?.name).toBe('Hill');
  expect(
    site?.stations.map(({ name, receiveHz, transmitHz, attended }) => [
      name,
      receiveHz,
      transmitHz,
      attended,
    ]),
  ).toEqual([
    ['Gap repeater', 146_340_000, 146_940_000, false],
    ['Ada Example', 146_940_000, 146_340_000, true],
    ['Ada Example', 146_550_000, 146_550_000, true],
  ]);
});

// Carson's rule: 2 × (5 + 3) kHz of voice, 2 × (5 + 2.2) kHz of packet, 2 × (2.5 + 3) kHz of narrow voice.
test('deviation is what fills the width', async () => {
  const [site] = await sitesOf(`
channels:
  1: { name: GAP, repeater: gap }
  3: { name: SIMP, simplex: 146.550, width: 25 }
  19: { name: PACKET, simplex: 145.010, width: 25, mode: packet, use: Packet }
repeaters:
  gap: { name: Gap repeater, call: W4XGP, output: 146.940, offset: -0.6, tone: 100.0, width: 12.5, place: hill, power: 25 W }
packet:
  mailboxes: { home: { name: Mailbox, call: KX4XAA-10, place: hill, channel: 19 } }`);
  expect(site?.stations.map(({ name, occupiedHz, deviationHz }) => [name, occupiedHz, deviationHz])).toEqual([
    ['Gap repeater', 11_000, 2500],
    ['Mailbox', 14_400, 5000],
  ]);
});

test('a place where one station stands alone is no site', async () => {
  expect(await sitesOf('')).toEqual([]);
});
