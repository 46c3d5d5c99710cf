/**
 * Mixing products, worked out by hand from the definitions 2A-B, A+B-C and 3A-2B; windows from the deviation
 * (Carson's rule, product of deviations): half the receiver's width, the swing, and 3 kHz of audio.
 */
import { expect, test } from 'vitest';
import {
  harmonics,
  threeSignalProducts,
  twoSignalProducts,
  whereItFalls,
} from '../../src/consequences/intermodulation.ts';
import type { Site, SiteStation } from '../../src/consequences/sites.ts';

function station(
  name: string,
  transmitHz: number,
  receiveHz: number,
  more: Partial<SiteStation> = {},
): SiteStation {
  return {
    key: name,
    name,
    path: ['repeaters', name],
    receivePath: ['repeaters', name, 'offset'],
    transmitHz,
    receiveHz,
    occupiedHz: 16_000,
    deviationHz: 5000,
    attended: false,
    simplex: transmitHz === receiveHz,
    ...more,
  };
}

const site = (...stations: SiteStation[]): Site => ({ place: 'hill', name: 'Hill', stations });
const a = station('A', 146_940_000, 146_340_000);
const b = station('B', 147_240_000, 147_840_000);
const c = station('C', 146_640_000, 146_040_000);
const told = (products: Iterable<{ receiver: SiteStation; text: string; hz: number }>) =>
  [...products].map(({ receiver, text, hz }) => `${text} = ${hz} on ${receiver.name}`);

test('of outputs 146.940 and 146.640, twice the lower less the upper is the input of the upper', () => {
  expect(told(twoSignalProducts(site(a, c), 2, 1))).toEqual([
    '2 × 146.640 (C) - 146.940 (A) = 146340000 on A',
  ]);
});

test('three times the lower less twice the upper is the input of the lower', () => {
  expect(told(twoSignalProducts(site(a, c), 3, 2))).toEqual([
    '3 × 146.640 (C) - 2 × 146.940 (A) = 146040000 on C',
  ]);
});

test('with a third output at 147.240, A + C - B is the input of A once more, and nothing falls on 147.840', () => {
  expect(told(threeSignalProducts(site(a, b, c)))).toEqual([
    '146.640 (C) + 146.940 (A) - 147.240 (B) = 146340000 on A',
  ]);
});

// Upper output A, lower C, inputs F below: 2C-A meets A's input when F is twice the spacing and C's when F equals it.
test.each([
  [600_000, 'C'],
  [300_000, 'A'],
])('with inputs 0.6 MHz below, outputs %i Hz apart are heard on the input of one', (apartHz, victim) => {
  const low = station('C', 146_940_000 - apartHz, 146_340_000 - apartHz);
  const receivers = [...twoSignalProducts(site(a, low), 2, 1)].map(({ receiver }) => receiver.name);
  expect(receivers).toEqual([victim]);
});

test.each([
  ['wide', 16_000, 5000, 2, 1, 26_000],
  ['narrow', 11_000, 2500, 2, 1, 16_000],
  ['wide', 16_000, 5000, 3, 2, 36_000],
  ['narrow', 11_000, 2500, 3, 2, 21_000],
])(
  'a %s receiver (%i Hz, deviation %i) is reached by %i A - %i B within %i Hz and no farther',
  (_, occupiedHz, deviationHz, first, second, windowHz) => {
    const width = { occupiedHz, deviationHz };
    const [low, high] = [
      station('low', 146_000_000, 150_000_000, width),
      station('high', 146_700_000, 151_000_000, width),
    ];
    const hz = first * 146_000_000 - second * 146_700_000;
    const heard = (offHz: number) =>
      [
        ...twoSignalProducts(
          site(low, high, station('victim', 155_000_000, hz + offHz, width)),
          first,
          second,
        ),
      ].length;
    expect([heard(windowHz), heard(windowHz + 1), heard(-windowHz), heard(-windowHz - 1)]).toEqual([
      1, 0, 1, 0,
    ]);
  },
);

test('a set that cannot hear while it sends is not disturbed by a product of its own', () => {
  const member = { key: 'M', attended: true, simplex: true };
  const calling = station('M', 146_340_000, 146_940_000, member);
  const listening = station('M', 146_550_000, 146_550_000, member);
  const repeater = station('R', 146_130_000, 146_730_000);
  // 2 × 146.340 - 146.130 = 146.550, heard by another set on that channel alone.
  expect(told(twoSignalProducts(site(calling, listening, repeater), 2, 1))).toEqual([]);
  const other = station('N', 147_540_000, 146_550_000, { key: 'N', simplex: true, attended: true });
  expect(told(twoSignalProducts(site(calling, listening, repeater, other), 2, 1))).toEqual([
    '2 × 146.340 (M) - 146.130 (R) = 146550000 on N',
  ]);
});

test('two members at their sets wait for each other; one of them and a repeater do not', () => {
  const [x, y] = [a, c].map((each) => ({ ...each, attended: true }));
  if (!x || !y) throw new Error('two stations');
  expect(told(twoSignalProducts(site(x, y), 2, 1))).toEqual([]);
  expect(told(twoSignalProducts(site(a, y), 2, 1))).toHaveLength(1);
});

test('the third harmonic of 147.240 is 441.720, which a repeater there hears', () => {
  const low = station('L', 147_240_000, 147_840_000);
  const high = station('H', 446_720_000, 441_720_000);
  const found = [...harmonics(site(low, high), [2, 3, 4, 5])];
  expect(told(found)).toEqual(['3 × 147.240 (L) = 441720000 on H']);
  expect(found.map(whereItFalls)).toEqual(['is 441.720 MHz, to which H listens']);
});

test('past fifty transmitters at one place products are not told one by one', () => {
  const many = Array.from({ length: 51 }, (_, index) =>
    station(`S${index}`, 146_000_000 + index * 20_000, 145_400_000 + index * 20_000),
  );
  expect(told(twoSignalProducts(site(...many), 2, 1))).toEqual([]);
});
