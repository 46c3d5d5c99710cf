/**
 * Logarithms for rasters of millions of cells: `20 log10(x)` from the bits of a floating number (IEEE 754 single precision), its exponent
 * times 20 log10(2) and a table of 512 steps for the rest, straight between. Within 0.00002 dB for normal positive numbers, several times quicker than `Math.log`.
 */
const single = new Float32Array(1);
const bits = new Int32Array(single.buffer);

const table = Float64Array.from({ length: 513 }, (_, index) => 20 * Math.log10(1 + index / 512));

/** Its figures stand in it, since constants of a module would be read anew for every logarithm: 23 bits after the exponent, 9 of them the step. */
export function decibels20(x: number): number {
  single[0] = x;
  const word = bits[0] ?? 0;
  const steps = table;
  const step = (word >> 14) & 0x1ff;
  const below = steps[step] ?? 0;
  const above = steps[step + 1] ?? 0;
  // 20 log10(2) for each doubling.
  return ((word >> 23) - 127) * 6.020599913279624 + below + (word & 0x3fff) * (1 / 0x4000) * (above - below);
}
