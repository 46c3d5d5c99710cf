import { plainCut } from '../../consequences/shown-names.ts';
import { commonPractice, rule } from '../rule.ts';

/** A name that had to be changed to differ is not the name people say. */
export const channelNameShownOddly = rule({
  id: 'channel/name-shown-oddly',
  severity: 'note',
  basis: 'practice',
  looksFor: 'A name that a radio shows in a form other than its beginning, because its beginning is taken.',
  why: 'People say the name on their card and look for it on the display. A form made only to differ has to be learnt.',
  mend: 'Choose names that differ within the letters this radio shows.',
  sources: [commonPractice],
  bad: `
radios:
  handheld: { name: Handheld, transmits: [144-148], receives: [136-174], certified: [amateur], memories: 1-128, name-length: 5, tones: [ctcss], powers: { high: 5 W } }
channels:
  1: { name: GAP, repeater: gap }
  3: { name: TRAIL EAST, simplex: 146.550, width: 25 }
  4: { name: TRAIL WEST, simplex: 146.565, width: 25 } # finding`,
  good: `
radios:
  handheld: { name: Handheld, transmits: [144-148], receives: [136-174], certified: [amateur], memories: 1-128, name-length: 5, tones: [ctcss], powers: { high: 5 W } }
channels:
  1: { name: GAP, repeater: gap }
  3: { name: EAST TRAIL, simplex: 146.550, width: 25 }
  4: { name: WEST TRAIL, simplex: 146.565, width: 25 }`,
  *check({ plan, consequences }) {
    const odd = new Map<number, { name: string; forms: string[] }>();
    for (const radio of plan.radios.values()) {
      if (radio.nameLength === 0) continue;
      for (const { slot, name, shown, cut } of consequences.shownNames(radio).values()) {
        if (!cut || shown === plainCut(name, radio.nameLength)) continue;
        const entry = odd.get(slot) ?? { name, forms: [] };
        entry.forms.push(`${shown} on ${radio.name}`);
        odd.set(slot, entry);
      }
    }
    for (const [slot, { name, forms }] of odd)
      yield {
        at: ['channels', slot, 'name'],
        message: `${name} shows as ${forms.join(', ')}, because another channel begins the same.`,
      };
  },
});
