/**
 * Emission designators: necessary bandwidth and three symbols, `16K0F3E`.
 *
 * ITU Radio Regulations, Appendix 1, sections I and II (the same rules in 47 CFR 2.201 and 2.202). Necessary
 * bandwidth of frequency-modulated telephony, Bn = 2M + 2DK: Recommendation ITU-R SM.1138, table in its
 * annex; the same sum is Carson's rule (J. R. Carson, Notes on the Theory of Modulation, 1922).
 */

export interface Emission {
  readonly bandwidthHz: number;
  /** How the main carrier is modulated: F frequency, G phase, A double sideband, J single sideband… */
  readonly modulation: string;
  /** The signal that modulates it: 1 digital, 2 digital on a subcarrier, 3 analogue… */
  readonly signal: string;
  /** What is sent: E telephony, D data, A Morse by ear… */
  readonly information: string;
  /** The two optional symbols of section II (details of the signal, multiplexing). */
  readonly details?: string;
}

// Second symbols 7, 8, 9, X, third symbols W, X, and the optional symbols: from memory.
const designator = /^([0-9HKMG]{4})([NAHRJBCFGDPKLMQVWX])([0-37-9X])([NABCDEFWX])([A-NWX][NCFTWX])?$/;

const units = [
  ['H', 1],
  ['K', 1e3],
  ['M', 1e6],
  ['G', 1e9],
] as const;

/** Reads a designator; undefined for what is none, such as one whose bandwidth begins with 0, K, M or G. */
export function parseEmission(text: string): Emission | undefined {
  const match = designator.exec(text.trim().toUpperCase());
  const bandwidthHz = parseBandwidth(match?.[1] ?? '');
  if (match === null || bandwidthHz === undefined) return undefined;
  const [, , modulation = '', signal = '', information = '', details] = match;
  return { bandwidthHz, modulation, signal, information, ...(details === undefined ? {} : { details }) };
}

export function formatEmission(emission: Emission): string {
  const { bandwidthHz, modulation, signal, information, details = '' } = emission;
  return `${formatBandwidth(bandwidthHz)}${modulation}${signal}${information}${details}`;
}

/** The four characters of a bandwidth in hertz; undefined when they are none. */
export function parseBandwidth(text: string): number | undefined {
  const match = /^(?![0KMG])(\d{0,3})([HKMG])(\d{0,3})$/.exec(text);
  if (match === null || text.length !== 4) return undefined;
  const factor = units.find(([letter]) => letter === match[2])?.[1] ?? 1;
  const decimals = match[3]?.length ?? 0;
  const value = (Number(`${match[1]}${match[3]}`) * factor) / 10 ** decimals;
  return value > 0 ? value : undefined;
}

/**
 * Necessary bandwidth in four characters, rounded to three digits, halves upward: 16 000 Hz is `16K0`.
 * @throws {RangeError} outside 0.001 Hz to 999 GHz, which the notation cannot hold.
 */
export function formatBandwidth(bandwidthHz: number): string {
  if (bandwidthHz >= 0.0005 && bandwidthHz < 0.9995) {
    return `H${String(Math.round(bandwidthHz * 1000)).padStart(3, '0')}`;
  }
  for (const [letter, factor] of bandwidthHz >= 0.9995 ? units : []) {
    for (const decimals of [2, 1, 0]) {
      // Multiplied first: for whole hertz the quotient is then rounded once.
      const digits = Math.round((bandwidthHz * 10 ** decimals) / factor);
      if (digits < 1000) {
        const text = String(digits);
        return `${text.slice(0, 3 - decimals)}${letter}${text.slice(3 - decimals)}`;
      }
    }
  }
  throw new RangeError(`No designator can hold a bandwidth of ${bandwidthHz} Hz.`);
}

/** Carson's rule: the width that holds nearly all of a frequency-modulated signal, hertz. */
export function carsonBandwidthHz(peakDeviationHz: number, highestModulationHz: number): number {
  return 2 * (peakDeviationHz + highestModulationHz);
}

/** Highest voice frequency passed, hertz: the M of the worked example in ITU-R SM.1138. */
const highestVoiceHz = 3000;
/** The same in FM sets of the 27 MHz citizens' bands, hertz: with ±2 kHz they keep to the 8 kHz of 47 CFR 95.973 (arithmetic). */
const highestCbVoiceHz = 2000;
/** The upper tone of 1200-baud packet, hertz (Bell 202 modem). */
const highestPacketToneHz = 2200;

/**
 * Peak deviation usual at a channel spacing, hertz: 25 kHz ±5, 12.5 kHz ±2.5; 20 kHz ±4 is from memory, 30 kHz
 * ±5 common practice. The citizens' bands near 27 MHz have ±2 (47 CFR 95.975(c); in Europe from memory), on
 * channels 10 kHz apart, and at most 8 kHz wide in the United States. At other spacings analogue FM has no custom.
 */
const usualDeviationsHz: ReadonlyMap<number, number> = new Map([
  [8_000, 2000],
  [10_000, 2000],
  [12_500, 2500],
  [20_000, 4000],
  [25_000, 5000],
  [30_000, 5000],
]);

/**
 * The designator usual for FM voice or 1200-baud packet at a channel spacing: 25 kHz voice is 16K0F3E.
 * Packet is reckoned with its upper tone at full deviation, so it errs on the wide side.
 */
export function usualEmission(mode: 'fm' | 'packet', spacingHz: number): Emission | undefined {
  return usualEmissions[mode].get(spacingHz);
}

/** Spacings that radios are set to: the two of VHF and UHF sets, and that of the 27 MHz citizens' bands. */
const spacingsHz: readonly number[] = [25_000, 12_500, 10_000];

/** The widest spacing in common use whose signal is no wider than a limit, hertz; undefined where none is. */
export function widestSpacingHz(mode: 'fm' | 'packet', limitHz: number): number | undefined {
  return spacingsHz.find((spacing) => (usualEmission(mode, spacing)?.bandwidthHz ?? Infinity) <= limitHz);
}

/** One designator a spacing, for a signal of this highest modulating frequency. */
function bySpacing(highestHz: number, symbols: Omit<Emission, 'bandwidthHz'>): ReadonlyMap<number, Emission> {
  return new Map(
    [...usualDeviationsHz].map(([spacingHz, deviationHz]) => [
      spacingHz,
      {
        bandwidthHz: carsonBandwidthHz(
          deviationHz,
          spacingHz <= 10_000 ? Math.min(highestHz, highestCbVoiceHz) : highestHz,
        ),
        ...symbols,
      },
    ]),
  );
}

const usualEmissions = {
  fm: bySpacing(highestVoiceHz, { modulation: 'F', signal: '3', information: 'E' }),
  packet: bySpacing(highestPacketToneHz, { modulation: 'F', signal: '2', information: 'D' }),
};
