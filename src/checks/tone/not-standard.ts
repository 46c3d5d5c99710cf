import { writtenTones } from '../../consequences/written-tones.ts';
import type { Observation, PlanPath } from '../../findings/finding.ts';
import { nearestTone } from '../../radio/ctcss.ts';
import { dcsCodes112, usualDcsName } from '../../radio/dcs.ts';
import { formatTone, isStandardTone, type Tone } from '../../radio/tone.ts';
import { rule } from '../rule.ts';

/** Radios offer the published tones and no others; one beside them cannot be entered. */
export const toneNotStandard = rule({
  id: 'tone/not-standard',
  severity: 'warning',
  basis: 'practice',
  looksFor: 'A CTCSS tone or digital code that is in none of the published lists.',
  why: 'Radios have the published tones in their menus and no others. A tone beside them is a mistyped one, and members would be left to guess which is meant.',
  mend: 'Write the tone as the list has it; the nearest is suggested.',
  sources: [{ document: 'TIA-603-D (2009)', section: '1.3.5' }],
  bad: `
repeaters:
  gap:
    name: Gap repeater
    call: W4XGP
    output: 146.940
    offset: -0.6
    tone: 100.5 # finding`,
  good: `
repeaters:
  gap:
    name: Gap repeater
    call: W4XGP
    output: 146.940
    offset: -0.6
    tone: 100.0`,
  *check({ plan, consequences }) {
    for (const { at, tone } of writtenTones(plan, consequences)) yield* judge(at, tone);
    for (const { id, tones } of plan.radios.values()) {
      for (const [index, tone] of tones.entries())
        if (typeof tone !== 'string') yield* judge(['radios', id, 'tones', index], tone);
    }
  },
});

function* judge(at: PlanPath, tone: Tone): Generator<Observation> {
  if (isStandardTone(tone)) return;
  if (tone.kind === 'dcs') {
    // A code under another name has a rule of its own.
    if (dcsCodes112.includes(usualDcsName(tone.code))) return;
    yield { at, message: `${formatTone(tone)} is in no published list of digital codes.` };
    return;
  }
  const near = formatTone({ kind: 'ctcss', tenthsHz: nearestTone(tone.tenthsHz).tenthsHz });
  yield {
    at,
    message: `${formatTone(tone)} Hz is no standard tone; the nearest is ${near} Hz.`,
    suggestion: near,
  };
}
