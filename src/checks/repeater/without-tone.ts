import { repeaterServices } from '../../consequences/planned-signals.ts';
import { serviceById } from '../../regulations/law.ts';
import { commonPractice, rule } from '../rule.ts';

/** Most repeaters want a tone; one entered without it stays silent to every call. */
export const repeaterWithoutTone = rule({
  id: 'repeater/without-tone',
  severity: 'note',
  basis: 'practice',
  looksFor: 'A repeater without a tone, on channels that add none.',
  why: 'Nearly every repeater opens only to a tone or code. Where it was left out of the plan, members call and nothing happens; some few repeaters do open without one.',
  mend: "Add the tone from the coordinator's list. If the repeater opens without one, accept the finding with that reason.",
  sources: [commonPractice],
  bad: `
repeaters:
  gap: { name: Gap repeater, call: W4XGP, output: 146.940, offset: -0.6 } # finding`,
  good: `
repeaters:
  gap: { name: Gap repeater, call: W4XGP, output: 146.940, offset: -0.6, tone: 100.0 }`,
  *check({ plan, law }) {
    const toned = new Set(
      [...plan.channels.values()].flatMap((channel) =>
        channel.kind === 'repeater' && channel.tone ? [channel.repeater] : [],
      ),
    );
    for (const repeater of plan.repeaters.values()) {
      const { id, name, tone } = repeater;
      if (tone || toned.has(id)) continue;
      // Where nobody needs a licence, repeaters stand open to everybody (common practice).
      if (repeaterServices(law, repeater).some((service) => serviceById(law, service)?.licence === 'none'))
        continue;
      yield {
        at: ['repeaters', id],
        points: 'key',
        message: `${name} has no tone; most repeaters open only to one.`,
      };
    }
  },
});
