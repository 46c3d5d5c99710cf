/**
 * Exact decimal numbers, read from the very digits a person wrote.
 *
 * Binary floating point cannot hold 146.94 or 0.6, so a sum of the two may miss a channel by a hertz. A
 * written number is therefore kept as whole digits and a count of decimals until it is in its final unit.
 */
export interface Decimal {
  /** All digits as one whole number, with the sign. */
  readonly digits: bigint;
  /** How many of them stand after the point. */
  readonly decimals: number;
}

const pattern = /^([+-]?)([0-9]*)(?:\.([0-9]*))?$/;

/** Longer numbers than this are slips or attacks; no quantity of a radio plan needs them. */
const longest = 24;

/** Reads plain digits with an optional sign and point: `146.940`, `-0.6`, `+5`, `.5`. Anything else gives undefined. */
export function parseDecimal(text: string): Decimal | undefined {
  if (text.length > longest) return undefined;
  const match = pattern.exec(text);
  const whole = match?.[2] ?? '';
  const fraction = match?.[3] ?? '';
  if (match === null || whole + fraction === '') return undefined;
  const size = BigInt(whole + fraction);
  return { digits: match[1] === '-' ? -size : size, decimals: fraction.length };
}

export function multiply(a: Decimal, b: Decimal): Decimal {
  return { digits: a.digits * b.digits, decimals: a.decimals + b.decimals };
}

export function add(a: Decimal, b: Decimal): Decimal {
  const decimals = Math.max(a.decimals, b.decimals);
  return { digits: scaled(a, decimals) + scaled(b, decimals), decimals };
}

/** True when nothing but zeros stands after the point. */
export function isWhole(a: Decimal): boolean {
  return a.digits % 10n ** BigInt(a.decimals) === 0n;
}

/** The nearest binary number, by way of the text, so that it is rounded once only. */
export function toNumber(a: Decimal): number {
  // A negative zero would print as "-0" somewhere far from here.
  return a.digits === 0n ? 0 : Number(`${a.digits}e-${a.decimals}`);
}

function scaled(a: Decimal, decimals: number): bigint {
  return a.digits * 10n ** BigInt(decimals - a.decimals);
}
