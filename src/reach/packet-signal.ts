/**
 * How many packets of 1200-baud AFSK over FM arrive at a given signal.
 *
 * Source: measurements by S. Goode (K9NG) as tabulated by R. Wallio (W0RPK), "AX.25 packet radio AFSK on FM: bit, packet and data set
 * error rates": bit error rate against Eb/N0, dB. Taken as referred to the carrier: C/N0 = Eb/N0 + 10 log 1200.
 */
const bitErrors = [
  [15.5, 1e-1],
  [17.5, 1e-2],
  [19.5, 1e-3],
  [22.5, 1e-4],
  [24.0, 1.6e-5],
] as const;

const bitsPerSecond = 1200;

/** Bit error rate at a carrier over noise density, dBHz; between the rows by the logarithm of the rate, carried on beyond them. */
export function packetBitErrorRate(carrierToNoiseDbHz: number): number {
  const ebN0 = carrierToNoiseDbHz - 10 * Math.log10(bitsPerSecond);
  let upper: number = bitErrors.findIndex(([each]) => each >= ebN0);
  if (upper < 0) upper = bitErrors.length - 1;
  if (upper < 1) upper = 1;
  const [e0, rate0] = bitErrors[upper - 1] ?? bitErrors[0];
  const [e1, rate1] = bitErrors[upper] ?? bitErrors[1];
  return Math.min(0.5, rate0 * (rate1 / rate0) ** ((ebN0 - e0) / (e1 - e0)));
}

/** Share of frames without a wrong bit, in a steady signal. A frame lost on any hop is lost: multiply the shares. */
export function packetFrameShare(carrierToNoiseDbHz: number, frameBits = 800): number {
  return (1 - packetBitErrorRate(carrierToNoiseDbHz)) ** frameBits;
}
