import type { Observation } from '../../findings/finding.ts';
import { formatFrequency } from '../../radio/format-quantity.ts';
import { designatedHz } from '../../regulations/designated.ts';
import { commonPractice, rule } from '../rule.ts';

/** A published channel that is not published has no frequency, and its slot comes out empty. */
export const standardUnknownChannel = rule({
  id: 'standard/unknown-channel',
  severity: 'error',
  basis: 'consistency',
  looksFor: 'A `standard` that names no channel published for the country.',
  why: 'The figures of such a channel come from the rules by its name. Under a name that they do not have there are none, and no card shows it.',
  mend: 'Write the name as the message lists it, or give the frequency.',
  sources: [commonPractice],
  bad: `
channels:
  1: { name: GAP, repeater: gap }
  3: { name: FAMILY, standard: GMSR 20 } # finding`,
  good: `
channels:
  1: { name: GAP, repeater: gap }
  3: { name: FAMILY, standard: GMRS 20 }`,
  *check({ consequences, law }) {
    for (const [slot, outcome] of consequences.outcomes) {
      if (outcome.known || outcome.missing !== 'standard') continue;
      const designated = designatedHz(law, outcome.name);
      if (designated !== undefined) {
        const at = formatFrequency(designated);
        yield {
          at: ['channels', slot, 'standard'],
          message: `\`${outcome.name}\` is ${at} MHz in the numbering of the region, where these rules (${law.country.name}) have no channel; write the frequency, \`simplex: ${at}\`, or a repeater with both of its own.`,
        };
        continue;
      }
      const [likely] = outcome.nearest;
      // A number that is not there could be any; letters that slipped are known by their number.
      const near = likely !== undefined && numberOf(likely) === numberOf(outcome.name) ? likely : undefined;
      const observation: Observation = {
        at: ['channels', slot, 'standard'],
        message: `There is no published channel \`${outcome.name}\` (rules: ${law.country.name}); the nearest are ${outcome.nearest.join(', ') || 'none'}.`,
      };
      yield near === undefined ? observation : { ...observation, suggestion: near };
    }
  },
});

function numberOf(name: string): string {
  return name.replace(/\D/g, '').replace(/^0+/, '');
}
