/**
 * Writing quantities, the other way round from {@link ./quantity.ts}: what these give, it reads back as the
 * same value. No locale: a point before the decimals, no grouping, a plain hyphen for minus.
 */

/**
 * A frequency in MHz without its unit, as radios show it: `146.940`. At least three decimals, and as many up
 * to six as the frequency needs. Throws on a fraction of a hertz, which can only be a fault of ours.
 */
export function formatFrequency(frequencyHz: number): string {
  requireWhole(frequencyHz);
  const digits = String(Math.abs(frequencyHz)).padStart(7, '0');
  const fraction = digits.slice(-6).replace(/0{1,3}$/, '');
  return `${frequencyHz < 0 ? '-' : ''}${digits.slice(0, -6)}.${fraction}`;
}

/** An offset with its sign and unit: `-0.6 MHz`, `+5 MHz`, `0 MHz`. */
export function formatOffset(offsetHz: number): string {
  requireWhole(offsetHz);
  return `${offsetHz > 0 ? '+' : ''}${shiftPoint(offsetHz, -6)} MHz`;
}

/** A channel spacing, step or bandwidth: `12.5 kHz`. */
export function formatSpacing(spacingHz: number): string {
  requireWhole(spacingHz);
  return `${shiftPoint(spacingHz, -3)} kHz`;
}

/** A power: `500 mW` below a watt, `1.5 kW` from a kilowatt, watts between. */
export function formatPower(powerW: number): string {
  if (powerW > 0 && powerW < 1) return `${shiftPoint(powerW, 3)} mW`;
  if (powerW >= 1000) return `${shiftPoint(powerW, -3)} kW`;
  return `${shiftPoint(powerW, 0)} W`;
}

/** A height, elevation or other length that is spoken of in metres: `612 m`, `1.5 m`. */
export function formatLength(lengthM: number): string {
  return `${shiftPoint(lengthM, 0)} m`;
}

/** A distance across the ground, rounded to what matters: `850 m`, `12.3 km`, `140 km`. Not meant to be read back. */
export function formatDistance(distanceM: number): string {
  if (Math.round(distanceM) < 1000) return `${rounded(distanceM, 0)} m`;
  return `${rounded(distanceM / 1000, distanceM < 99_950 ? 1 : 0)} km`;
}

/** A length of time in the largest unit that holds it whole: `90 s`, `5 min`, `12 h`, `2 d`; one day is `24 h`. */
export function formatDuration(durationS: number): string {
  if (durationS !== 0 && durationS % 86_400 === 0 && durationS !== 86_400) return `${durationS / 86_400} d`;
  if (durationS !== 0 && durationS % 3600 === 0) return `${durationS / 3600} h`;
  if (durationS % 60 === 0) return `${durationS / 60} min`;
  return `${shiftPoint(durationS, 0)} s`;
}

/** An antenna's gain over an isotropic one, to a hundredth of a decibel: `2.15 dBi`. */
export function formatGain(gainDbi: number): string {
  return `${rounded(gainDbi, 2)} dBi`;
}

/** A signal level to a tenth of a decibel: `-119 dBm`. */
export function formatLevel(levelDbm: number): string {
  return `${rounded(levelDbm, 1)} dBm`;
}

/** A loss, margin or ratio to a tenth of a decibel: `12.5 dB`. */
export function formatDecibels(valueDb: number): string {
  return `${rounded(valueDb, 1)} dB`;
}

export function formatEnergy(energyWh: number): string {
  return `${shiftPoint(energyWh, 0)} Wh`;
}

/** A current: `60 mA` below an ampere, amperes from there. */
export function formatCurrent(currentA: number): string {
  if (currentA > 0 && currentA < 1) return `${shiftPoint(currentA, 3)} mA`;
  return `${shiftPoint(currentA, 0)} A`;
}

export function formatVoltage(voltageV: number): string {
  return `${shiftPoint(voltageV, 0)} V`;
}

/** A share as a percentage, to a tenth: `12.5 %`. */
export function formatRatio(ratio: number): string {
  return `${rounded(ratio * 100, 1)} %`;
}

/**
 * A number in plain digits, with its point moved. It moves the point in the text because multiplying by a
 * power of ten turns 0.07 W into 70.00000000000001 mW.
 */
function shiftPoint(value: number, places: number): string {
  if (!Number.isFinite(value)) throw new RangeError(`Cannot write ${value} as a quantity.`);
  const [mantissa = '0', exponent = '0'] = String(Math.abs(value)).split('e');
  const [whole = '', fraction = ''] = mantissa.split('.');
  const digits = whole + fraction;
  const point = whole.length + Number(exponent) + places;
  const padded = digits.padStart(digits.length + Math.max(0, 1 - point), '0').padEnd(point, '0');
  const at = Math.max(1, point);
  const left = padded.slice(0, at).replace(/^0+(?=\d)/, '');
  const right = padded.slice(at).replace(/0+$/, '');
  const text = right === '' ? left : `${left}.${right}`;
  return value < 0 ? `-${text}` : text;
}

function rounded(value: number, decimals: number): string {
  if (!Number.isFinite(value)) throw new RangeError(`Cannot write ${value} as a quantity.`);
  const text = value.toFixed(decimals);
  const trimmed = text.includes('.') ? text.replace(/\.?0+$/, '') : text;
  return trimmed === '-0' ? '0' : trimmed;
}

function requireWhole(valueHz: number): void {
  if (!Number.isSafeInteger(valueHz)) throw new RangeError(`${valueHz} Hz is not a whole number of hertz.`);
}
