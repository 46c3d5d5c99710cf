import type { ChannelRow } from '../country.ts';
import { mhz } from '../mhz.ts';
import { region1DesignatorHz, region1FormerName } from './designator.ts';

/*
 * The channels of the Region 1 handbook by their designators. Their width is the band plan's, so no limit in
 * law. A repeater's row holds the pair as a user's set has it.
 */
type Letter = 'F' | 'V' | 'U';

const row = (designator: string, inputMinusOutputHz: number): ChannelRow => {
  const receiveHz = region1DesignatorHz(designator);
  if (receiveHz === undefined) throw new RangeError(`no designator: ${designator}`);
  const formerly = region1FormerName(receiveHz, designator.startsWith('R'));
  return {
    service: 'amateur',
    name: designator,
    ...(formerly !== undefined && { alsoNamed: [formerly] }),
    receiveHz,
    transmitHz: receiveHz + inputMinusOutputHz,
    maxWidthHz: 12_000,
    kinds: ['phone'],
    source: 'iaru-r1-channels',
  };
};
const numbers = (first: number, last: number, digits: number): string[] =>
  Array.from({ length: last - first + 1 }, (_, k) => String(first + k).padStart(digits, '0'));
const simplex = (letter: Letter, first: number, last: number): ChannelRow[] =>
  numbers(first, last, letter === 'U' ? 3 : 2).map((n) => row(`${letter}${n}`, 0));
const repeaters = (letter: Letter, first: number, last: number, shift: string): ChannelRow[] =>
  numbers(first, last, letter === 'U' ? 3 : 2).map((n) => row(`R${letter}${n}`, mhz(shift)));

/** Simplex of 6 m, 2 m and 70 cm, and the repeaters of 6 m and 2 m. */
export const region1Channels: readonly ChannelRow[] = [
  ...simplex('F', 41, 59),
  ...simplex('V', 17, 45),
  ...simplex('U', 272, 286),
  ...repeaters('F', 81, 99, '-0.6'),
  ...repeaters('V', 46, 63, '-0.6'),
];

/** Repeaters of 70 cm on the continent: low outputs, the Region 1 standard, the wide shift. */
export const region1Channels70cm: readonly ChannelRow[] = [
  ...repeaters('U', 2, 30, '1.6'),
  ...repeaters('U', 368, 398, '-1.6'),
  ...repeaters('U', 692, 754, '-7.6'),
];

/** Repeaters of 70 cm in the United Kingdom, whose outputs lie below the inputs. */
export const region1Channels70cmUk: readonly ChannelRow[] = [
  ...repeaters('U', 65, 78, '7.6'),
  ...repeaters('U', 240, 270, '1.6'),
];
