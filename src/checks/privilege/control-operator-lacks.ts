import { shortfalls } from '../../consequences/shortfalls.ts';
import { serviceById } from '../../regulations/law.ts';
import { classKnown } from '../class-known.ts';
import { rule } from '../rule.ts';

/** A licence that has ended or lacks its class is found on the licence; a set or a place that bars, by rules of their own. */
const ofLicence: readonly string[] = [
  'unlicensed',
  'needs-authority',
  'class',
  'outside',
  'edge',
  'kind',
  'modulation',
];

/** Net control answers for the frequency the net is on; one who may not transmit there cannot call the roll. */
export const privilegeControlOperatorLacks = rule({
  id: 'privilege/control-operator-lacks',
  severity: 'error',
  basis: 'law',
  looksFor: 'A net control operator whose licence does not let them transmit on the channel of the check-in.',
  why: 'Whoever calls the roll transmits more than anybody. When their turn comes they either break the law or leave the group without a net.',
  mend: 'Take them out of the turns, or hold the check-in on a channel that their licence has.',
  sources: [{ document: '47 CFR part 97', section: '97.105 and 97.301' }],
  bad: `
members:
  ada: { name: Ada Example, licences: { amateur: { class: general, call: KX4XAA, expires: 2033-02-01 } }, radios: [handheld], at: base }
  ben: { name: Ben Example, radios: [handheld], at: base }
check-ins:
  morning: { name: Morning check-in, channel: 1, at: "07:30", who: [ada], control: [ada, ben] } # finding
fallbacks:
  first: { name: First, who: [ada], reach: [ben], rungs: [{ grade: primary, channel: 1 }] }`,
  good: `
check-ins:
  morning: { name: Morning check-in, channel: 1, at: "07:30", who: all, control: [ada, ben] }`,
  *check(context) {
    const { law } = context;
    for (const { need, member, on, cause } of shortfalls(context)) {
      if (!need.controlAt || !ofLicence.includes(cause.code)) continue;
      if (!classKnown(law, member, on)) continue;
      const why =
        cause.code === 'unlicensed'
          ? `holds no licence for the ${serviceById(law, on.services[0] ?? '')?.name}`
          : `may not transmit there: ${cause.text}`;
      yield {
        at: need.controlAt,
        message: `${member.name} is net control of ${need.because} on slot ${on.slot}, ${on.name}, and ${why}.`,
        ...(cause.source && { source: cause.source }),
      };
    }
  },
});
