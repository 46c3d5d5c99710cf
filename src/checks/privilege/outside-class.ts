import { shortfalls } from '../../consequences/shortfalls.ts';
import { serviceById } from '../../regulations/law.ts';
import { classKnown } from '../class-known.ts';
import { groupBy } from '../group-by.ts';
import { listNames } from '../list-names.ts';
import { rule } from '../rule.ts';

const ofClass: readonly string[] = ['class', 'outside', 'edge', 'kind', 'modulation'];

/** A band has parts for each class of licence; a card that shows a channel invites its holder to use it. */
export const privilegeOutsideClass = rule({
  id: 'privilege/outside-class',
  severity: 'error',
  basis: 'law',
  looksFor: 'Members who are to transmit in a check-in or on a ladder where their class of licence may not.',
  why: 'The class of the operator decides, not the group and not the owner of the radio. A check-in that needs the privilege shuts these members out, or has them break the law.',
  mend: 'Move the check-in or the rung to a channel open to every class called there, or leave these members out of it.',
  sources: [{ document: '47 CFR part 97', section: '97.105(b), 97.301, 97.305' }],
  bad: `
radios:
  handheld: { name: HF set, transmits: [1.8-30, 144-148], receives: [1-200], certified: [amateur], memories: 1-128, steps: [1], tones: [ctcss], modes: [fm, ssb], powers: 50 W }
channels:
  1: { name: GAP, repeater: gap }
  3: { name: DISTANT, simplex: 14.250, mode: ssb }
fallbacks:
  first:
    name: First
    who: all
    reach: [ada]
    rungs:
      - { grade: primary, channel: 1, calls: 3, within: 5 min }
      - { grade: alternate, channel: 3, calls: 3, within: 10 min } # finding
      - { grade: emergency, meet: base, at: next full hour }`,
  good: `
radios:
  handheld: { name: HF set, transmits: [1.8-30, 144-148], receives: [1-200], certified: [amateur], memories: 1-128, steps: [1], tones: [ctcss], modes: [fm, ssb], powers: 50 W }
channels:
  1: { name: GAP, repeater: gap }
  3: { name: NEAR, simplex: 28.350, mode: ssb }`,
  *check(context) {
    const { law } = context;
    const short = shortfalls(context).filter(
      ({ cause, need, member, on }) =>
        ofClass.includes(cause.code) && !need.controlAt && classKnown(law, member, on),
    );
    const slots = [...groupBy(short, ({ on }) => on.slot).values()];
    // Members shut out of several channels are so for one reason, and are named once.
    const shutOut = groupBy(slots, (here) => here.map(({ member }) => member.id).join(' '));
    for (const several of shutOut.values()) {
      const [here] = several;
      const [first] = here;
      const where = several.map(([{ on, need }]) => `slot ${on.slot}, ${on.name}, in ${need.because}`);
      const service = serviceById(law, first.on.services[0] ?? '');
      const names = here.map(({ member }) => {
        const held = member.licences.get(service?.id ?? '')?.class;
        const title = service?.classes.find(({ id }) => id === held)?.name;
        return title === undefined ? member.name : `${member.name} (${title})`;
      });
      yield {
        at: first.need.at,
        message: `${listNames(names)} would transmit on ${where.join(', and on ')}: ${first.cause.text}.`,
        ...(first.cause.source && { source: first.cause.source }),
      };
    }
  },
});
