import { formatFrequency } from '../../radio/format-quantity.ts';
import { sourceOf } from '../../regulations/law.ts';
import { commonPractice, rule } from '../rule.ts';

/** Half of the spacing of the channels looked at, hertz: farther off, something else is meant. */
const nearHz = 15_000;

/** A slipped digit in a broadcast frequency leaves a radio silent when the warning comes. */
export const standardBetweenChannels = rule({
  id: 'standard/between-channels',
  severity: 'warning',
  basis: 'consistency',
  looksFor: 'A frequency to listen to that lies beside a published channel, and on none.',
  why: 'Broadcasts stand on published channels. A few kilohertz beside one a receiver hears it badly or not at all, and nobody notices before the day it matters.',
  mend: 'Listen on the channel itself, or name it by `standard:`.',
  sources: [commonPractice],
  bad: `
channels:
  1: { name: GAP, repeater: gap }
  3: { name: SIMP, simplex: 146.550, width: 25 }
  9: { name: WX, listen: 162.410, use: Weather } # finding`,
  good: `
channels:
  1: { name: GAP, repeater: gap }
  3: { name: SIMP, simplex: 146.550, width: 25 }
  9: { name: WX, listen: 162.400, use: Weather }`,
  *check({ plan, law }) {
    const published = law.country.channels.filter(({ transmitHz }) => transmitHz === undefined);
    for (const channel of plan.channels.values()) {
      if (channel.kind !== 'listen') continue;
      const { frequencyHz } = channel;
      const apart = (hz: number) => Math.abs(hz - frequencyHz);
      const [nearest] = published.toSorted((a, b) => apart(a.receiveHz) - apart(b.receiveHz));
      if (!nearest || apart(nearest.receiveHz) === 0 || apart(nearest.receiveHz) > nearHz) continue;
      yield {
        at: ['channels', channel.slot, 'listen'],
        message: `${formatFrequency(frequencyHz)} MHz is no published channel; the nearest is ${nearest.name} at ${formatFrequency(nearest.receiveHz)} MHz.`,
        suggestion: formatFrequency(nearest.receiveHz),
        source: sourceOf(law, nearest),
      };
    }
  },
});
