import { stuckBy } from '../../consequences/stuck.ts';
import { formatTone } from '../../radio/tone.ts';
import { listNames } from '../list-names.ts';
import { commonPractice, rule } from '../rule.ts';

/** Older and cheaper radios know the common tones only; the repeater stays shut to them. */
export const toneRadioCannotSend = rule({
  id: 'tone/radio-cannot-send',
  severity: 'error',
  basis: 'consistency',
  looksFor:
    'A channel whose tone or code some radios cannot send, for members who have no other radio for it.',
  why: 'These members hear the channel and cannot open it. In the plan they look like everybody else.',
  mend: 'Use a tone that all radios have, where the group may choose it; else give these members another channel or radio.',
  sources: [commonPractice],
  bad: `
radios:
  handheld: { name: Handheld, transmits: [144-148, 420-450], receives: [136-174, 400-480], certified: [amateur], memories: 1-128, widths: [25, 12.5], tones: [ctcss], powers: { high: 5 W } }
repeaters:
  gap: { name: Gap repeater, call: W4XGP, output: 146.940, offset: -0.6, tone: D023N } # finding`,
  good: `
radios:
  handheld: { name: Handheld, transmits: [144-148, 420-450], receives: [136-174, 400-480], certified: [amateur], memories: 1-128, widths: [25, 12.5], tones: [ctcss], powers: { high: 5 W } }
repeaters:
  gap: { name: Gap repeater, call: W4XGP, output: 146.940, offset: -0.6, tone: 100.0 }`,
  *check(context) {
    for (const [slot, here] of stuckBy(context, ['tone'])) {
      const [{ on }] = here;
      if (!on.tone) continue;
      const own = on.channel.tone !== undefined || !on.repeater;
      const who = here.map(({ radio, holders }) => `${radio.name} (${listNames(holders)})`);
      yield {
        at: own ? ['channels', slot, 'tone'] : ['repeaters', on.repeater.id, 'tone'],
        message: `Slot ${slot}, ${on.name}, needs the tone ${formatTone(on.tone)}, which ${listNames(who)} cannot send.`,
      };
    }
  },
});
