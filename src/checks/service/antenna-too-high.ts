import { memberKinds } from '../../consequences/member-kinds.ts';
import type { Radio } from '../../plan/model.ts';
import { sourceOf } from '../../regulations/law.ts';
import { type RuleContext, rule } from '../rule.ts';

/** In the short-range services the height of the antenna is limited as the power is: it is height that carries. */
export const serviceAntennaTooHigh = rule({
  id: 'service/antenna-too-high',
  severity: 'warning',
  basis: 'law',
  looksFor:
    'A radio whose antenna stands higher than a service allows in which somebody is to transmit with it.',
  why: 'MURS and CB are open to everybody because they reach a short way. Their rules hold the antenna to a height above ground, or above the house or tree that carries it where that is higher.',
  mend: 'Lower the antenna. If it stands on something so tall that the rules allow it, accept the finding and name what carries it.',
  sources: [{ document: '47 CFR part 95', section: '95.941 and 95.2741' }],
  bad: `
radios:
  handheld:
    name: House set
    transmits: [151-155]
    receives: [136-174]
    certified: [murs]
    memories: 1-16
    powers: 2 W
    antenna: { gain: 3 dBd, height: 25 m, carried: mast } # finding
channels:
  1: { name: YARD, standard: MURS 4 }
  3: { name: SECOND, standard: MURS 5 }`,
  good: `
radios:
  handheld:
    name: House set
    transmits: [151-155]
    receives: [136-174]
    certified: [murs]
    memories: 1-16
    powers: 2 W
    antenna: { gain: 3 dBd, height: 12 m, carried: mast }
channels:
  1: { name: YARD, standard: MURS 4 }
  3: { name: SECOND, standard: MURS 5 }`,
  *check(context) {
    const { plan, law } = context;
    for (const radio of plan.radios.values()) {
      const { heightM } = radio.antenna;
      if (heightM === undefined) continue;
      const tooHigh = law.country.services.filter(
        ({ antennaHeight }) => antennaHeight && heightM > antennaHeight.aboveGroundM,
      );
      if (tooHigh.length === 0) continue;
      const used = servicesSentIn(context, radio);
      for (const { id, name, antennaHeight } of tooHigh) {
        if (!antennaHeight || !used.has(id)) continue;
        const { aboveGroundM, aboveSupportM } = antennaHeight;
        const support =
          aboveSupportM === undefined
            ? ''
            : `, or ${aboveSupportM} m above what carries it where that is higher`;
        yield {
          at: ['radios', radio.id, 'antenna', 'height'],
          message: `The antenna of ${radio.name} stands ${heightM} m high; the ${name} has it at most ${aboveGroundM} m above ground${support}.`,
          source: sourceOf(law, antennaHeight),
        };
      }
    }
  },
});

/** Services in which a member transmits with this kind of radio; one member of each kind is asked. */
function servicesSentIn({ plan, law, consequences }: RuleContext, radio: Radio): ReadonlySet<string> {
  const holders = memberKinds({ plan, law }).flatMap(([member]) =>
    member.radios.includes(radio.id) ? [member.id] : [],
  );
  const services = new Set<string>();
  for (const member of holders) {
    for (const slot of consequences.channels.keys()) {
      const use = consequences.use(member, radio.id, slot);
      if (use?.may === 'transmit' && use.service !== undefined) services.add(use.service);
    }
  }
  return services;
}
