/**
 * The tone or code that opens a receiver's squelch, as a plan writes it: `100.0`, `D023N`, `D023I`.
 *
 * Codes carry a letter so that YAML cannot eat their leading zero: it reads a bare 023 as the number 23, and
 * older readers as 19.
 */
import { nearestTone, standardTone } from './ctcss.ts';
import { canonicalSignal, dcsCodes112, isDcsCode } from './dcs.ts';
import { parseDecimal } from './decimal.ts';

export type Tone =
  | { readonly kind: 'ctcss'; readonly tenthsHz: number }
  | { readonly kind: 'dcs'; readonly code: string; readonly inverted: boolean };

export type ToneReading =
  | { readonly ok: true; readonly value: Tone }
  | { readonly ok: false; readonly message: string; readonly suggestion?: string };

/** Tones of any scheme lie well within these; beyond them something else was meant. Tenths of a hertz. */
const lowestTenthsHz = 600;
const highestTenthsHz = 3000;

/**
 * Reads a tone. A CTCSS frequency need not be a standard one (that is for a check to say), but a bare number
 * that looks like a digital code is refused.
 */
export function parseTone(text: string | number): ToneReading {
  const given = String(text).trim();
  const dcs = /^D(\d+)\s*([NI])?$/i.exec(given);
  if (dcs !== null) return readDcs(dcs[1] ?? '', dcs[2]?.toUpperCase());

  const lettered = /^(?:DCS|CDCSS)?\s*(\d{3})\s*([NI])$/i.exec(given);
  if (lettered !== null && isDcsCode(lettered[1] ?? '')) {
    const suggestion = `D${lettered[1]}${lettered[2]?.toUpperCase()}`;
    return { ok: false, message: `A digital code is written with D before it, not "${given}".`, suggestion };
  }

  // Nothing so long is a tone, and a pattern that begins with spaces is slow on many of them.
  const bare = given.length > 40 ? '' : given.replace(/\s*hz$/i, '');
  const number = parseDecimal(bare);
  if (number === undefined || number.digits < 0n) {
    return {
      ok: false,
      message: `A tone is a frequency like 100.0 or a digital code like D023N or D023I, not "${given.slice(0, 40)}".`,
    };
  }
  const code = bare.padStart(3, '0');
  const tenthsHz = wholeTenths(number.digits, number.decimals);
  if (isDcsCode(code) && (bare.startsWith('0') || !isWholeTone(tenthsHz))) return refuseBareCode(bare, code);
  if (tenthsHz === undefined) {
    return { ok: false, message: `A tone has one decimal; "${given}" is finer than 0.1 Hz.` };
  }
  if (tenthsHz < lowestTenthsHz || tenthsHz > highestTenthsHz) {
    return { ok: false, message: `A CTCSS tone lies between 60 and 300 Hz; this one is ${given}.` };
  }
  return { ok: true, value: { kind: 'ctcss', tenthsHz } };
}

/** As a plan writes it: `100.0`, `D023N`. */
export function formatTone(tone: Tone): string {
  if (tone.kind === 'dcs') return `D${tone.code}${tone.inverted ? 'I' : 'N'}`;
  return `${Math.trunc(tone.tenthsHz / 10)}.${tone.tenthsHz % 10}`;
}

/** Whether one receiver would open on both: the same CTCSS frequency, or digital codes that are one signal under two names. */
export function sameSignal(a: Tone | undefined, b: Tone | undefined): boolean {
  if (a === undefined || b === undefined) return a === b;
  if (a.kind === 'ctcss') return b.kind === 'ctcss' && a.tenthsHz === b.tenthsHz;
  return b.kind === 'dcs' && canonicalSignal(a.code, a.inverted) === canonicalSignal(b.code, b.inverted);
}

/** Whether a tone is in the published lists: the 50 CTCSS tones, the 112 digital codes. */
export function isStandardTone(tone: Tone): boolean {
  return tone.kind === 'ctcss' ? standardTone(tone.tenthsHz) !== undefined : dcsCodes112.includes(tone.code);
}

function readDcs(digits: string, sense: string | undefined): ToneReading {
  if (!isDcsCode(digits)) {
    return {
      ok: false,
      message: `A digital code has three octal digits, 0 to 7; "${digits.slice(0, 40)}" has not.`,
    };
  }
  if (sense === undefined) {
    return {
      ok: false,
      message: `D${digits} does not say whether it is normal or inverted; write D${digits}N or D${digits}I.`,
      suggestion: `D${digits}N`,
    };
  }
  return { ok: true, value: { kind: 'dcs', code: digits, inverted: sense === 'I' } };
}

function refuseBareCode(bare: string, code: string): ToneReading {
  if (bare.startsWith('0') || bare.length < 3) {
    return {
      ok: false,
      message: `${bare} is no tone; a digital code is written D${code}N or D${code}I, because YAML reads a bare ${code} as the number ${Number(code)}.`,
      suggestion: `D${code}N`,
    };
  }
  const nearest = formatTone({ kind: 'ctcss', tenthsHz: nearestTone(Number(bare) * 10).tenthsHz });
  return {
    ok: false,
    message: `${bare} could be a digital code or a CTCSS tone; write D${code}N, D${code}I, or the tone to a tenth, such as ${nearest}.`,
  };
}

/** 77, 100 and 123 are tones that people write without the decimal. */
function isWholeTone(tenthsHz: number | undefined): boolean {
  return tenthsHz !== undefined && standardTone(tenthsHz) !== undefined;
}

function wholeTenths(digits: bigint, decimals: number): number | undefined {
  const scaled = decimals <= 1 ? digits * 10n ** BigInt(1 - decimals) : undefined;
  if (scaled !== undefined) return Number(scaled);
  const divisor = 10n ** BigInt(decimals - 1);
  return digits % divisor === 0n ? Number(digits / divisor) : undefined;
}
