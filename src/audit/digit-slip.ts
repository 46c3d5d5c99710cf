/** How one figure was made into another at a keypad: figures exchanged, one wrong, one left out, the point moved. */

export type DigitSlip = 'digits-exchanged' | 'one-digit-wrong' | 'digit-left-out' | 'point-moved';

/** @param shown and @param planned plain decimal numbers, `146.940` */
export function digitSlip(shown: string, planned: string): DigitSlip | undefined {
  const [a, b] = aligned(shown, planned);
  if (a === b) return undefined;
  const [bareShown, barePlanned] = [significant(shown), significant(planned)];
  if (bareShown !== '' && bareShown === barePlanned) return 'point-moved';
  if (a.length === b.length) {
    const at = [...a].flatMap((figure, index) => (figure === b[index] ? [] : [index]));
    const [first = 0, second = 0] = at;
    if (at.length === 2 && a[first] === b[second] && a[second] === b[first]) return 'digits-exchanged';
    if (at.length === 1) return 'one-digit-wrong';
  }
  const keyed = shown.replace('.', '').replace(/0+$/, '');
  const meant = planned.replace('.', '').replace(/0+$/, '');
  const leftOut = [...meant].some(
    (_, index) => (meant.slice(0, index) + meant.slice(index + 1)).replace(/0+$/, '') === keyed,
  );
  return leftOut ? 'digit-left-out' : undefined;
}

/** Figures alone, so that each place of one number stands over the same place of the other. */
function aligned(a: string, b: string): readonly [string, string] {
  const [aWhole = '', aFraction = ''] = a.split('.');
  const [bWhole = '', bFraction = ''] = b.split('.');
  const whole = Math.max(aWhole.length, bWhole.length);
  const fraction = Math.max(aFraction.length, bFraction.length);
  return [
    aWhole.padStart(whole, '0') + aFraction.padEnd(fraction, '0'),
    bWhole.padStart(whole, '0') + bFraction.padEnd(fraction, '0'),
  ];
}

function significant(number: string): string {
  return number.replace('.', '').replace(/^0+|0+$/g, '');
}
