import type { ShownName } from '../../consequences/shown-names.ts';
import { commonPractice, rule } from '../rule.ts';

/** What the display cuts off cannot tell two channels apart. */
export const channelNamesAlikeWhenCut = rule({
  id: 'channel/names-alike-when-cut',
  severity: 'warning',
  basis: 'consistency',
  looksFor:
    'Two names that become the same on a radio that shows fewer letters, and cannot be shortened to differ.',
  why: 'The member sees only what the display shows. Two slots that show the same are told apart by counting, in the dark, with gloves.',
  mend: 'Choose names that differ within the letters this radio shows.',
  sources: [commonPractice],
  bad: `
radios:
  handheld: { name: Handheld, transmits: [144-148], receives: [136-174], certified: [amateur], memories: 1-128, name-length: 1, tones: [ctcss], powers: { high: 5 W } }
channels:
  1: { name: GAP, repeater: gap }
  3: { name: GULLY, simplex: 146.550, width: 25 } # finding`,
  good: `
radios:
  handheld: { name: Handheld, transmits: [144-148], receives: [136-174], certified: [amateur], memories: 1-128, name-length: 4, tones: [ctcss], powers: { high: 5 W } }
channels:
  1: { name: GAP, repeater: gap }
  3: { name: GULLY, simplex: 146.550, width: 25 }`,
  *check({ plan, consequences }) {
    for (const radio of plan.radios.values()) {
      if (radio.nameLength === 0) continue;
      const first = new Map<string, ShownName>();
      for (const shown of consequences.shownNames(radio).values()) {
        const before = first.get(shown.shown);
        if (before === undefined) first.set(shown.shown, shown);
        else if (before.name.toUpperCase() !== shown.name.toUpperCase())
          yield {
            at: ['channels', shown.slot, 'name'],
            message: `${before.name} and ${shown.name} both show as ${shown.shown} on ${radio.name}, which shows ${radio.nameLength} letters.`,
          };
      }
    }
  },
});
