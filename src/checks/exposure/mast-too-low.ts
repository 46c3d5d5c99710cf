import { exposuresOf } from '../../consequences/exposures.ts';
import { formatPower } from '../../radio/format-quantity.ts';
import { rule } from '../rule.ts';

/** Height of a tall person with an arm raised, metres (common practice). */
const overheadM = 2;

/** An antenna on a low mast is within reach of people who do not know that it transmits. */
export const exposureMastTooLow = rule({
  id: 'exposure/mast-too-low',
  severity: 'warning',
  basis: 'law',
  looksFor: 'A fixed antenna so low that people below it come nearer than the distance to keep.',
  why: 'Exposure limits hold for whoever may come near, and nobody below a mast can tell that it is transmitting.',
  mend: 'Raise the antenna, lower the power, or keep people away from it; `readback exposure` gives the distances.',
  sources: [
    { document: '47 CFR', section: '1.1310 and 97.13(c)' },
    { document: 'FCC OET Bulletin 65', section: 'edition 97-01, section 2' },
  ],
  bad: `
repeaters:
  gap:
    name: Gap repeater
    call: W4XGP
    output: 146.940
    offset: -0.6
    tone: 100.0
    place: hill
    power: 100 W
    antenna: { gain: 6 dBd, height: 4 m } # finding`,
  good: `
repeaters:
  gap:
    name: Gap repeater
    call: W4XGP
    output: 146.940
    offset: -0.6
    tone: 100.0
    place: hill
    power: 25 W
    antenna: { gain: 3 dBd, height: 12 m }`,
  *check({ plan, consequences, law }) {
    const sections = {
      repeater: ['repeaters'],
      digipeater: ['packet', 'digipeaters'],
      mailbox: ['packet', 'mailboxes'],
      radio: ['radios'],
    };
    const atMasts = [...plan.radios.values()].filter(({ antenna }) => antenna.carried === 'mast');
    for (const row of exposuresOf(plan, consequences, law, atMasts)) {
      if (row.answer.kind !== 'distance' || row.carried !== 'mast' || row.heightM === undefined) continue;
      // Nearer than the edge of the near field the formula says nothing either way; `exposure` tells that distance.
      const { formulaM, keepM } = row.answer.public;
      if (row.heightM >= formulaM + overheadM) continue;
      const needed = keepM + overheadM;
      yield {
        at: [...sections[row.kind], row.id, 'antenna'],
        message: `At ${formatPower(row.powerW)} people must stay ${keepM.toFixed(1)} m from the antenna; ${row.heightM} m up it is nearer than that to a head below it, ${needed.toFixed(1)} m would do.`,
        source: row.answer.public.limit.source,
      };
    }
  },
});
