import { workedThrough } from '../../consequences/worked-through.ts';
import type { PlanPath } from '../../findings/finding.ts';
import type { Channel, Repeater } from '../../plan/model.ts';
import { canonicalSignal } from '../../radio/dcs.ts';
import { formatSpacing } from '../../radio/format-quantity.ts';
import { formatTone, type Tone } from '../../radio/tone.ts';
import { commonPractice, rule } from '../rule.ts';

/** What a channel writes goes into the radios, so a slip there beats the figures of the repeater, which were right. */
export const channelContradictsRepeater = rule({
  id: 'channel/contradicts-repeater',
  severity: 'warning',
  basis: 'consistency',
  looksFor: 'A channel with another tone or width than the repeater it works through.',
  why: 'A repeater that waits for one tone stays silent to another, and one of another width is heard badly or not at all. The same figure written twice must be the same.',
  mend: 'Leave it out of the channel, so that the figure of the repeater holds; or correct the repeater. A second tone that the repeater also takes can be accepted.',
  sources: [commonPractice],
  bad: `
channels:
  1: { name: GAP, repeater: gap, tone: 123.0 } # finding
  3: { name: SIMP, simplex: 146.550, width: 25 }`,
  good: `
channels:
  1: { name: GAP, repeater: gap }
  3: { name: SIMP, simplex: 146.550, width: 25 }`,
  *check({ plan }) {
    for (const channel of plan.channels.values()) {
      const ofEach = workedThrough(plan, channel).map((repeater) => contradictions(channel, repeater));
      // One pair may carry several repeaters; the channel is for any of them that it agrees with.
      if (ofEach.every((found) => found.length > 0)) yield* ofEach[0] ?? [];
    }
  },
});

interface Contradiction {
  readonly at: PlanPath;
  readonly message: string;
}

function contradictions(channel: Channel, repeater: Repeater): readonly Contradiction[] {
  const { slot, name, tone, receiveTone, widthHz } = channel;
  const found: Contradiction[] = [];
  const add = (key: string | undefined, message: string) =>
    found.push({ at: ['channels', slot, ...(key === undefined ? [] : [key])], message });
  if (tone && repeater.tone && !alike(tone, repeater.tone))
    add(
      'tone',
      `${name} sends ${formatTone(tone)}; ${repeater.name} waits for ${formatTone(repeater.tone)}.`,
    );
  // What a channel does not say it has from a repeater that it names, and from no other.
  if (channel.kind === 'split' && !tone && repeater.tone)
    add(
      undefined,
      `${name} is the pair of ${repeater.name}, which waits for ${formatTone(repeater.tone)}, and sends no tone.`,
    );
  if (receiveTone && repeater.outputTone && !alike(receiveTone, repeater.outputTone))
    add(
      'receive-tone',
      `${name} opens to ${formatTone(receiveTone)}; ${repeater.name} sends ${formatTone(repeater.outputTone)}.`,
    );
  if (widthHz !== undefined && repeater.widthHz !== undefined && widthHz !== repeater.widthHz)
    add(
      'width',
      `${name} is ${formatSpacing(widthHz)} wide; ${repeater.name} is ${formatSpacing(repeater.widthHz)}.`,
    );
  return found;
}

function alike(a: Tone, b: Tone): boolean {
  // One signal may have several names.
  return a.kind === 'dcs' && b.kind === 'dcs'
    ? canonicalSignal(a.code, a.inverted) === canonicalSignal(b.code, b.inverted)
    : formatTone(a) === formatTone(b);
}
