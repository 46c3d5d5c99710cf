import { stuckBy } from '../../consequences/stuck.ts';
import { formatSpacing } from '../../radio/format-quantity.ts';
import { listNames } from '../list-names.ts';
import { commonPractice, rule } from '../rule.ts';

/** A radio with one width alone is too loud or too faint on channels of the other. */
export const widthRadioCannotSet = rule({
  id: 'width/radio-cannot-set',
  severity: 'error',
  basis: 'consistency',
  looksFor: 'A channel whose width some radios cannot be set to, for members who have no other radio for it.',
  why: 'Sent too wide, voice distorts and spills into the next channel; sent too narrow, it is faint. The worksheet would ask for a setting that the radio does not have.',
  mend: 'Use a width that all radios have, or give these members another channel or radio.',
  sources: [commonPractice],
  bad: `
radios:
  handheld: { name: Handheld, transmits: [144-148, 420-450], receives: [136-174, 400-480], certified: [amateur], memories: 1-128, widths: [25], tones: [ctcss], powers: { high: 5 W } }
channels:
  1: { name: GAP, repeater: gap }
  3: { name: SIMP, simplex: 146.550, width: 12.5 } # finding`,
  good: `
radios:
  handheld: { name: Handheld, transmits: [144-148, 420-450], receives: [136-174, 400-480], certified: [amateur], memories: 1-128, widths: [25], tones: [ctcss], powers: { high: 5 W } }
channels:
  1: { name: GAP, repeater: gap }
  3: { name: SIMP, simplex: 146.550, width: 25 }`,
  *check(context) {
    for (const [slot, here] of stuckBy(context, ['width'])) {
      const [{ on, radio }] = here;
      const own = on.channel.widthHz !== undefined || !on.repeater;
      const who = here.map((each) => `${each.radio.name} (${listNames(each.holders)})`);
      yield {
        at: own ? ['channels', slot, 'width'] : ['repeaters', on.repeater.id, 'width'],
        message: `Slot ${slot}, ${on.name}, is ${formatSpacing(on.spacingHz)}, to which ${listNames(who)} cannot be set; ${radio.name} has ${radio.widthsHz.map(formatSpacing).join(', ')}.`,
      };
    }
  },
});
