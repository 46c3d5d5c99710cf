import type { SiteStation } from '../../consequences/sites.ts';
import { formatFrequency, formatSpacing } from '../../radio/format-quantity.ts';
import { commonPractice, rule } from '../rule.ts';

/** Two signals that overlap cannot be kept apart at one place. */
export const interferenceAdjacentChannel = rule({
  id: 'interference/adjacent-channel',
  severity: 'warning',
  basis: 'practice',
  looksFor: 'Two stations at one place whose signals are spaced closer than their widths.',
  why: 'The nearer one covers the other for everybody who is between them, and a receiver beside it hears nothing else.',
  mend: 'Space them by their width at least, or move one to another place.',
  sources: [
    {
      document: 'J. R. Carson, Notes on the Theory of Modulation (1922)',
      section: 'width of a modulated signal',
    },
    commonPractice,
  ],
  bad: `
repeaters:
  north: { name: North repeater, call: W4XNO, output: 146.94, offset: -0.6, tone: 100.0, width: 25, place: hill, power: 25 W }
  south: { name: South repeater, call: W4XSO, output: 146.955, offset: -0.6, tone: 100.0, width: 25, place: hill, power: 25 W } # finding
channels:
  1: { name: NORTH, repeater: north }
  2: { name: SOUTH, repeater: south }
  3: { name: SIMP, simplex: 146.550, width: 25 }`,
  good: `
repeaters:
  north: { name: North repeater, call: W4XNO, output: 146.94, offset: -0.6, tone: 100.0, width: 25, place: hill, power: 25 W }
  south: { name: South repeater, call: W4XSO, output: 146.97, offset: -0.6, tone: 100.0, width: 25, place: hill, power: 25 W }
channels:
  1: { name: NORTH, repeater: north }
  2: { name: SOUTH, repeater: south }
  3: { name: SIMP, simplex: 146.550, width: 25 }`,
  *check({ consequences }) {
    for (const { name, stations } of consequences.sites()) {
      for (const { first, second, firstHz, secondHz } of crowded(stations)) {
        const [spacingHz, widthHz] = [
          Math.abs(firstHz - secondHz),
          Math.round((first.occupiedHz + second.occupiedHz) / 2),
        ];
        yield {
          at: second.receivePath,
          message: `At ${name}, ${second.name} on ${formatFrequency(secondHz)} MHz is ${formatSpacing(spacingHz)} from ${first.name} on ${formatFrequency(firstHz)} MHz; their signals need ${formatSpacing(widthHz)}.`,
        };
      }
    }
  },
});

interface Pair {
  readonly first: SiteStation;
  readonly second: SiteStation;
  readonly firstHz: number;
  readonly secondHz: number;
}

/** Pairs that overlap, each once, and each with a station that transmits; what shares a frequency does so on purpose. */
function crowded(stations: readonly SiteStation[]): readonly Pair[] {
  const order = new Map(stations.map((station, index) => [station, index]));
  const signals = stations
    .flatMap((station) => {
      const heard = { station, hz: station.receiveHz, sends: station.transmitHz === station.receiveHz };
      return station.transmitHz === undefined || heard.sends
        ? [heard]
        : [heard, { station, hz: station.transmitHz, sends: true }];
    })
    .sort((a, b) => a.hz - b.hz);
  const pairs = new Map<string, Pair>();
  for (const [index, low] of signals.entries()) {
    for (let next = index + 1; ; next += 1) {
      const high = signals[next];
      if (!high || high.hz - low.hz >= widest) break;
      const overlap = high.hz - low.hz < (low.station.occupiedHz + high.station.occupiedHz) / 2;
      if (!overlap || low.hz === high.hz || low.station.key === high.station.key) continue;
      if ((!low.sends && !high.sends) || (low.station.attended && high.station.attended)) continue;
      const [first, second] =
        (order.get(low.station) ?? 0) < (order.get(high.station) ?? 0) ? [low, high] : [high, low];
      const key = `${first.station.key} ${second.station.key}`;
      const pair = { first: first.station, second: second.station, firstHz: first.hz, secondHz: second.hz };
      if (!pairs.has(key)) pairs.set(key, pair);
    }
  }
  return [...pairs.values()];
}

/** No signal of a plan is wider, hertz. */
const widest = 30_000;
