/** Numbers as PDF operators take them (ISO 32000-1:2008, 7.3.3). */

const fractions = Array.from({ length: 1000 }, (_, thousandth) =>
  thousandth === 0 ? '' : String(thousandth / 1000).slice(1),
);

/** A number to three decimals. Far quicker than asking for the shortest spelling of a rounded one. */
export function thousandths(value: number): string {
  const whole = Math.round(value * 1000);
  // Beyond this a page has no places; the spelling is still right.
  if (!(Math.abs(whole) < 2 ** 30)) return String(whole / 1000);
  if (whole < 0) return `-${spelled(-whole)}`;
  return spelled(whole);
}

function spelled(whole: number): string {
  const units = (whole / 1000) | 0;
  return `${units}${fractions[whole - units * 1000]}`;
}
