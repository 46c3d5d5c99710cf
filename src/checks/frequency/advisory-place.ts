import { plannedSignals, transmitPath } from '../../consequences/planned-signals.ts';
import { membersStanding, standings } from '../../consequences/stands-at.ts';
import { formatFrequency } from '../../radio/format-quantity.ts';
import { areasAt } from '../../regulations/areas-at.ts';
import { sourceOf } from '../../regulations/law.ts';
import { listNames } from '../list-names.ts';
import { rule } from '../rule.ts';

/** Some closures near a border are printed on licences and not in the rules that were read: worth asking, no more. */
export const frequencyAdvisoryPlace = rule({
  id: 'frequency/advisory-place',
  severity: 'warning',
  basis: 'practice',
  looksFor:
    'A station on a frequency that is said to be closed, by custom or a doubtful reading, where it stands.',
  why: 'Near the Canadian border two GMRS channels have long been closed by a condition printed on licences. Whether it holds for a licence, the licence says.',
  mend: 'Read the conditions on the licence; take another channel if it names the line.',
  sources: [
    { document: 'Conditions printed on GMRS licences', section: 'Line A and Line C', fromMemory: true },
  ],
  bad: `
places:
  base: { name: Base, at: "48.6, -119.5", kind: base }
  hill: { name: Hill, at: "48.7, -119.5", kind: high-ground }
repeaters:
  gap: { name: Neighbours, call: WZZZ401, service: gmrs, output: 462.650, offset: 5, tone: 100.0, width: 25, place: hill } # finding
channels:
  1: { name: GAP, repeater: gap }
  3: { name: SIMP, simplex: 146.550, width: 25 }`,
  good: `
places:
  base: { name: Base, at: "48.6, -119.5", kind: base }
  hill: { name: Hill, at: "48.7, -119.5", kind: high-ground }
repeaters:
  gap: { name: Neighbours, call: WZZZ401, service: gmrs, output: 462.675, offset: 5, tone: 100.0, width: 25, place: hill }
channels:
  1: { name: GAP, repeater: gap }
  3: { name: SIMP, simplex: 146.550, width: 25 }`,
  *check(context) {
    const { law } = context;
    for (const { signal, place, at } of standings(context)) {
      const { latitudeDeg, longitudeDeg } = place.at;
      const row = areasAt(law, latitudeDeg, longitudeDeg, signal.frequencyHz).find(
        ({ service, advisory }) => advisory && signal.services.includes(service),
      );
      if (!row) continue;
      yield {
        at,
        message: `${signal.name} at ${place.name} would transmit on ${formatFrequency(signal.frequencyHz)} MHz, said to be closed ${row.area}.`,
        source: sourceOf(law, row),
      };
    }
    const advisory = law.country.areas.filter((row) => row.advisory);
    for (const { part, on, services, frequencyHz } of plannedSignals(context)) {
      if (part !== 'channel') continue;
      const rows = advisory.filter(
        (row) => row.fromHz <= frequencyHz && frequencyHz <= row.toHz && services.includes(row.service),
      );
      if (rows.length === 0) continue;
      const here = [...membersStanding(context, on.slot)].flatMap(({ place, names }) => {
        const row = areasAt(law, place.at.latitudeDeg, place.at.longitudeDeg, frequencyHz).find((area) =>
          rows.includes(area),
        );
        return row ? [{ row, names }] : [];
      });
      const [first] = here;
      if (!first) continue;
      yield {
        at: transmitPath(on.channel),
        message: `${formatFrequency(frequencyHz)} MHz is said to be closed ${first.row.area}, where ${listNames(here.flatMap(({ names }) => names))} would transmit on it.`,
        source: sourceOf(law, first.row),
      };
    }
  },
});
