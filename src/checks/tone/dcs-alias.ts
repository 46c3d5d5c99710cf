import { writtenTones } from '../../consequences/written-tones.ts';
import { dcsCodes112, usualDcsName } from '../../radio/dcs.ts';
import { formatTone, isStandardTone } from '../../radio/tone.ts';
import { rule } from '../rule.ts';

/** A digital code repeats without a beginning, so one signal has several names, and menus list only one of them. */
export const toneDcsAlias = rule({
  id: 'tone/dcs-alias',
  severity: 'note',
  basis: 'practice',
  looksFor: 'A digital code that radios do not list, but which is the same signal as one that they do.',
  why: 'Some makers name the same signal by another of its codes. A member whose radio lists only the usual name cannot find it.',
  mend: 'Write the usual name; the signal is the same.',
  sources: [{ document: 'TIA-603-D (2009)', section: '1.3.5.5' }],
  bad: `
repeaters:
  gap:
    name: Gap repeater
    call: W4XGP
    output: 146.940
    offset: -0.6
    tone: D340N # finding`,
  good: `
repeaters:
  gap:
    name: Gap repeater
    call: W4XGP
    output: 146.940
    offset: -0.6
    tone: D023N`,
  *check({ plan, consequences }) {
    for (const { at, tone } of writtenTones(plan, consequences)) {
      if (tone.kind !== 'dcs' || isStandardTone(tone)) continue;
      const code = usualDcsName(tone.code);
      if (!dcsCodes112.includes(code)) continue;
      const usual = formatTone({ ...tone, code });
      yield {
        at,
        message: `${formatTone(tone)} is in no usual list; ${usual} is the same signal and is.`,
        suggestion: usual,
      };
    }
  },
});
