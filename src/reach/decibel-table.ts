/**
 * Logarithms for rasters of millions of cells: `20 log10(x)` from the bits of a floating number (IEEE 754 single precision), its exponent
 * times 20 log10(2) and a table of 512 steps for the rest, straight between. Within 0.00002 dB for normal positive numbers, several times quicker than `Math.log`.
 */
const single = new Float32Array(1);
const bits = new Int32Array(single.buffer);

const indexBits = 9;
const restBits = 23 - indexBits;
const restMask = (1 << restBits) - 1;
const perExponent = 20 * Math.log10(2);
const table = Float64Array.from(
  { length: (1 << indexBits) + 1 },
  (_, index) => 20 * Math.log10(1 + index / (1 << indexBits)),
);

export function decibels20(x: number): number {
  single[0] = x;
  const word = bits[0] ?? 0;
  const index = (word >> restBits) & ((1 << indexBits) - 1);
  const below = table[index] ?? 0;
  const above = table[index + 1] ?? 0;
  return ((word >> 23) - 127) * perExponent + below + ((word & restMask) / (restMask + 1)) * (above - below);
}
