/**
 * Megahertz as text to whole hertz, without floating point: `mhz('146.940')` is 146 940 000.
 * @throws {RangeError} for anything but digits with up to six decimals.
 */
export function mhz(text: string): number {
  const match = /^(-?)(\d+)(?:\.(\d{1,6}))?$/.exec(text);
  if (!match) throw new RangeError(`not a frequency in MHz to the hertz: ${text}`);
  const [, sign, whole, fraction = ''] = match;
  const hertz = Number(whole) * 1_000_000 + Number(fraction.padEnd(6, '0'));
  return sign ? -hertz : hertz;
}
