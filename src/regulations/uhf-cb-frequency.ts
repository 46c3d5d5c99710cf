import { mhz } from './mhz.ts';

/**
 * The 80 channels near 477 MHz that Australia (UHF citizens' band) and New Zealand (personal radio service)
 * share: 1 to 40 on the older 25 kHz raster, 41 to 80 in between.
 */
export function uhfCbFrequencyHz(channel: number): number {
  const [startHz, k] = channel <= 40 ? [mhz('476.400'), channel] : [mhz('476.4125'), channel - 40];
  return startHz + 25_000 * k;
}
