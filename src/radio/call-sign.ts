/**
 * Call signs of amateur stations, and the addresses packet stations make of them.
 *
 * ITU Radio Regulations, Article 19, Nos. 19.50, 19.50.1, 19.68, 19.68.1 and 19.69. A call sign of another
 * service (GMRS, a marine or business licence) follows other patterns and is not for this file.
 */

export interface CallSign {
  /** The call sign itself, in capitals: `KX4XWE`. */
  readonly base: string;
  /** What stands before a stroke: the country or area a visitor works from, as in `VE3/KX4XWE` (common practice). */
  readonly visiting?: string;
  /** What stands after a stroke: `P` portable, `M` mobile, a call area (common practice). */
  readonly suffix?: string;
}

export type CallSignReading =
  | { readonly ok: true; readonly value: CallSign }
  | { readonly ok: false; readonly message: string; readonly suggestion?: string };

// One of the nine single letters, or two characters of which at least one is a letter; then a digit; then at
// most four characters, the last a letter. A half series (3DA to 3DZ, SSA to SSZ) has three characters before
// its digit and at most three after it. Series begin with no figure below 2.
const amateur =
  /^(?:(?:[BFGIKMNRW]|[A-Z][A-Z2-9]|[2-9][A-Z])[0-9][0-9A-Z]{0,3}[A-Z]|(?:3D[A-Z]|SS[A-Z])[0-9][0-9A-Z]{0,2}[A-Z])$/;

/** Reads an amateur call sign, with or without what is put before or after a stroke. Small letters are accepted. */
export function parseCallSign(text: string): CallSignReading {
  const given = text.trim();
  const parts = given.toUpperCase().split('/');
  const baseAt = parts.findIndex((part) => amateur.test(part));
  const base = parts[baseAt];
  if (base === undefined || base.startsWith('Q') || parts.length > 3)
    return { ok: false, ...complaint(given) };
  const [visiting, ...tooMany] = parts.slice(0, baseAt);
  const [suffix, ...alsoTooMany] = parts.slice(baseAt + 1);
  const badSide = [visiting, suffix].some((side) => side !== undefined && !/^[0-9A-Z]{1,4}$/.test(side));
  if (tooMany.length > 0 || alsoTooMany.length > 0 || badSide) return { ok: false, ...complaint(given) };
  return {
    ok: true,
    value: {
      base,
      ...(visiting === undefined ? {} : { visiting }),
      ...(suffix === undefined ? {} : { suffix }),
    },
  };
}

export function formatCallSign(callSign: CallSign): string {
  return [callSign.visiting, callSign.base, callSign.suffix].filter((part) => part !== undefined).join('/');
}

function complaint(given: string): { message: string; suggestion?: string } {
  const shown = given.slice(0, 40);
  const base = given.toUpperCase();
  const withoutSsid = /^(.+)-\d+$/.exec(base)?.[1];
  if (withoutSsid !== undefined && amateur.test(withoutSsid)) {
    return {
      message: `"${shown}" is a packet address; a licence has the call sign without the number after the hyphen.`,
      suggestion: withoutSsid,
    };
  }
  if (/\s/.test(base) && amateur.test(base.replace(/\s/g, ''))) {
    return {
      message: `A call sign has no spaces; this one is "${shown}".`,
      suggestion: base.replace(/\s/g, ''),
    };
  }
  const why = base.startsWith('Q')
    ? 'no country holds a series that begins with Q, which is kept for the Q codes'
    : !/[0-9]/.test(base)
      ? 'it has no figure'
      : /[^0-9A-Z/]/.test(base)
        ? 'it has characters other than letters and figures'
        : /[0-9]$/.test(base)
          ? 'it does not end in a letter'
          : 'its prefix, figure and suffix do not make the pattern';
  return { message: `"${shown}" is no amateur call sign such as KX4XWE: ${why}.` };
}
