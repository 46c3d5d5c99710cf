import { shortfalls } from '../../consequences/shortfalls.ts';
import { groupBy } from '../group-by.ts';
import { listNames } from '../list-names.ts';
import { rule } from '../rule.ts';

/** Some channels are for hand-held sets alone; a set in a vehicle may not transmit on them at any power. */
export const serviceStationNotAdmitted = rule({
  id: 'service/station-not-admitted',
  severity: 'error',
  basis: 'law',
  looksFor:
    'Members who are to transmit with a vehicle or base set on a channel that is open to hand-held sets only.',
  why: 'Channels between those of repeaters are kept for low power from the hand, so that they do not block the repeater inputs beside them.',
  mend: 'Use another channel, or let these members use a hand-held set.',
  sources: [{ document: '47 CFR part 95', section: '95.1763' }],
  bad: `
members:
  ada: { name: Ada Example, licences: { gmrs: { call: WZZZ401 } }, radios: [car], at: base }
radios:
  car: { name: Car set, transmits: [462-468], receives: [462-468], certified: [gmrs], memories: 1-30, widths: [25, 12.5], tones: [ctcss], powers: { low: 500 mW }, antenna: { gain: 0 dBd, carried: vehicle } }
channels:
  1: { name: LOW, standard: GMRS 8 } # finding
  3: { name: FAMILY, standard: GMRS 20 }`,
  good: `
members:
  ada: { name: Ada Example, licences: { gmrs: { call: WZZZ401 } }, radios: [car], at: base }
radios:
  car: { name: Car set, transmits: [462-468], receives: [462-468], certified: [gmrs], memories: 1-30, widths: [25, 12.5], tones: [ctcss], powers: { low: 500 mW }, antenna: { gain: 0 dBd, carried: vehicle } }
channels:
  1: { name: FAMILY, standard: GMRS 20 }
  3: { name: SECOND, standard: GMRS 19 }`,
  *check(context) {
    const short = shortfalls(context).filter(({ cause }) => cause.code === 'station');
    for (const here of groupBy(short, ({ on }) => on.slot).values()) {
      const [{ on, cause, radio }] = here;
      yield {
        at: ['channels', on.slot],
        points: 'key',
        message: `${cause.text}; ${listNames(here.map(({ member }) => member.name))} would use ${radio.name} there.`,
        ...(cause.source && { source: cause.source }),
      };
    }
  },
});
