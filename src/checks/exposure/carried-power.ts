import { formatPower } from '../../radio/format-quantity.ts';
import { commonPractice, rule } from '../rule.ts';

/** Above this a radio at the head or on the belt needs a certification that few have, watts (common practice). */
const mostCarriedW = 8;

/** A transmitter at the body is limited by what the body absorbs, which only its certification can tell. */
export const exposureCarriedPower = rule({
  id: 'exposure/carried-power',
  severity: 'warning',
  basis: 'practice',
  looksFor:
    'A radio carried in the hand, at the chest or on the belt with a power that hand-helds seldom have.',
  why: 'At the body the limit is of absorbed power, and grows near with the square of nearness. Hand-helds are certified at a few watts for that reason.',
  mend: "Check the figure and how the antenna is carried; use a lower setting at the body, and the holder and antenna of the radio's own certification.",
  sources: [{ document: '47 CFR', section: '2.1093' }, commonPractice],
  bad: `
radios:
  handheld:
    name: Handheld
    transmits: [144-148]
    receives: [136-174]
    certified: [amateur]
    memories: 1-128
    widths: [25, 12.5]
    tones: [ctcss]
    powers: { high: 25 W } # finding
    antenna: { gain: 0 dBd, height: 1.5 m, carried: belt }`,
  good: `
radios:
  handheld:
    name: Handheld
    transmits: [144-148]
    receives: [136-174]
    certified: [amateur]
    memories: 1-128
    widths: [25, 12.5]
    tones: [ctcss]
    powers: { high: 5 W }
    antenna: { gain: 0 dBd, height: 1.5 m, carried: belt }`,
  *check({ plan }) {
    for (const { id, antenna, powersW } of plan.radios.values()) {
      if (antenna.carried !== 'hand' && antenna.carried !== 'chest' && antenna.carried !== 'belt') continue;
      const most = Math.max(0, ...powersW.values());
      if (most <= mostCarriedW) continue;
      yield {
        at: ['radios', id, 'powers'],
        message: `${formatPower(most)} from an antenna carried ${antenna.carried === 'hand' ? 'in the hand' : antenna.carried === 'chest' ? 'at the chest' : 'on the belt'}; hand-helds are certified at about 5 W.`,
      };
    }
  },
});
