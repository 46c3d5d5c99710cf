import { plannedSignals } from '../../consequences/planned-signals.ts';
import { formatFrequency } from '../../radio/format-quantity.ts';
import { channelsOfPair } from '../../regulations/channels.ts';
import { serviceById, sourceOf } from '../../regulations/law.ts';
import { rule } from '../rule.ts';

/** Written by its name, a published channel brings its width, its power and its licence with it, and no digit can slip. */
export const standardFrequencyOfPublishedChannelTyped = rule({
  id: 'standard/frequency-of-published-channel-typed',
  severity: 'note',
  basis: 'practice',
  looksFor:
    'A simplex frequency typed by hand that is a channel of a service which has published channels only.',
  why: 'By its name everybody knows the channel, and its width and power limit come with it from the rules.',
  mend: 'Write `standard` with the name of the channel.',
  sources: [{ document: '47 CFR part 95', section: '95.563, 95.1763 and 95.2763' }],
  bad: `
channels:
  1: { name: GAP, repeater: gap }
  3: { name: YARD, simplex: 151.940, width: 12.5 } # finding`,
  good: `
channels:
  1: { name: GAP, repeater: gap }
  3: { name: YARD, standard: MURS 3 }`,
  *check(context) {
    const { law } = context;
    for (const { part, on, services, at, frequencyHz, answer } of plannedSignals(context)) {
      if (part !== 'channel' || on.published || on.channel.kind !== 'simplex' || !answer.may) continue;
      const rows = channelsOfPair(law, frequencyHz, frequencyHz).filter(
        (row) =>
          row.transmitHz === frequencyHz &&
          services.includes(row.service) &&
          serviceById(law, row.service)?.channelsOnly,
      );
      const [row] = rows.toSorted((a, b) => services.indexOf(a.service) - services.indexOf(b.service));
      if (!row) continue;
      const [only, another] = [...new Set(rows.map(({ name }) => name))];
      yield {
        at,
        message: `${formatFrequency(frequencyHz)} MHz is ${another === undefined ? only : `${only}, and ${another}`}; by its name its width and power limit come with it.`,
        suggestion: `standard: ${row.name}`,
        source: sourceOf(law, row),
      };
    }
  },
});
