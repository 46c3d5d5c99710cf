import { transmitPath } from '../../consequences/planned-signals.ts';
import { shortfalls } from '../../consequences/shortfalls.ts';
import { standings } from '../../consequences/stands-at.ts';
import { formatFrequency } from '../../radio/format-quantity.ts';
import { areasAt } from '../../regulations/areas-at.ts';
import { sourceOf } from '../../regulations/law.ts';
import { listNames } from '../list-names.ts';
import { rule } from '../rule.ts';

/** A segment open in the whole country can be closed where a radar or a border is near. */
export const frequencyClosedPlace = rule({
  id: 'frequency/closed-place',
  severity: 'error',
  basis: 'law',
  looksFor: 'A station that would transmit on a frequency closed at the place where it stands.',
  why: 'Some segments are closed near borders and military ranges, and nothing on the radio tells.',
  mend: 'Use a frequency that is open at the place, or move the station out of the closed area.',
  sources: [{ document: '47 CFR part 97', section: '97.303' }],
  bad: `
places:
  base: { name: Base, at: "48.6, -119.5", kind: base }
  hill: { name: Hill, at: "48.7, -119.5", kind: high-ground }
repeaters:
  gap: { name: Gap repeater, call: W4XGP, output: 425.500, offset: 3, tone: 100.0, width: 25, place: hill } # finding
channels:
  1: { name: GAP, repeater: gap }
  3: { name: SIMP, simplex: 146.550, width: 25 }`,
  good: `
places:
  base: { name: Base, at: "48.6, -119.5", kind: base }
  hill: { name: Hill, at: "48.7, -119.5", kind: high-ground }
repeaters:
  gap: { name: Gap repeater, call: W4XGP, output: 442.500, offset: 5, tone: 100.0, width: 25, place: hill }
channels:
  1: { name: GAP, repeater: gap }
  3: { name: SIMP, simplex: 146.550, width: 25 }`,
  *check(context) {
    const { law } = context;
    const repeaters = new Set<string>();
    for (const { signal, place, at } of standings(context)) {
      const { latitudeDeg, longitudeDeg } = place.at;
      const row = areasAt(law, latitudeDeg, longitudeDeg, signal.frequencyHz).find(
        ({ service, maxW, advisory }) => signal.services.includes(service) && maxW === undefined && !advisory,
      );
      if (!row || !signal.answer.may) continue;
      if (signal.part === 'output') repeaters.add(signal.repeater.id);
      yield {
        at,
        message: `${signal.name} at ${place.name} would transmit on ${formatFrequency(signal.frequencyHz)} MHz, which is closed ${row.area}.`,
        source: sourceOf(law, row),
      };
    }
    // A repeater that must move takes its members' frequency with it.
    const barred = shortfalls(context).filter(
      ({ cause, on }) => cause.code === 'area' && !(on.repeater && repeaters.has(on.repeater.id)),
    );
    for (const slot of new Set(barred.map(({ on }) => on.slot))) {
      const here = barred.filter(({ on }) => on.slot === slot);
      const [first] = here;
      if (!first) continue;
      yield {
        at: transmitPath(first.on.channel),
        message: `${first.cause.text}, where ${listNames(here.map(({ member }) => member.name))} would transmit on it.`,
        ...(first.cause.source && { source: first.cause.source }),
      };
    }
  },
});
