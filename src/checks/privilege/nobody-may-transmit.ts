import { memberKinds } from '../../consequences/member-kinds.ts';
import { refusedSlots, transmitPath } from '../../consequences/planned-signals.ts';
import { shortfalls } from '../../consequences/shortfalls.ts';
import { serviceById, sourceOf } from '../../regulations/law.ts';
import { commonPractice, rule } from '../rule.ts';

/** A channel that everybody carries and nobody may use costs a slot, and a call to it is never answered. */
export const privilegeNobodyMayTransmit = rule({
  id: 'privilege/nobody-may-transmit',
  severity: 'warning',
  basis: 'consistency',
  looksFor: 'A channel meant for transmitting on which no member may, with any radio they hold.',
  why: 'It is printed on cards as if it could be used. Someone will rely on it.',
  mend: 'Write it with `listen` if it is only heard; else give somebody the licence or the radio for it, or take it out.',
  sources: [commonPractice],
  bad: `
channels:
  1: { name: GAP, repeater: gap }
  3: { name: SIMP, simplex: 146.550, width: 25 }
  7: { name: FAMILY, standard: GMRS 20 } # finding`,
  good: `
channels:
  1: { name: GAP, repeater: gap }
  3: { name: SIMP, simplex: 146.550, width: 25 }`,
  *check(context) {
    const { plan, law, consequences } = context;
    const refused = refusedSlots(context);
    const needed = new Set(shortfalls(context).map(({ on }) => on.slot));
    const kinds = memberKinds({ plan, law }).filter(([{ radios }]) => radios.length > 0);
    if (kinds.length === 0) return;
    for (const on of consequences.channels.values()) {
      // A channel that someone needs and cannot use is already found where it is needed.
      if (on.transmitHz === undefined || refused.has(on.slot) || needed.has(on.slot)) continue;
      const service = serviceById(law, on.services[0] ?? '');
      if (!service || service.licence === 'authority') continue;
      // One member for all with the same radios and licences: where they stand is asked elsewhere.
      const reasons = new Set<string>();
      let usable = false;
      let held = false;
      for (const [{ id }] of kinds) {
        const best = consequences.best(id, on.slot);
        if (best?.may === 'transmit') {
          usable = true;
          break;
        }
        held ||= best?.may === 'listen only';
        for (const { code } of best?.reasons ?? []) reasons.add(code);
      }
      // What nobody can even hold is found as that; a licence whose class is missing, or that has ended, on the licence.
      if (usable || !held || reasons.has('class-missing') || reasons.has('expired')) continue;
      yield {
        at: transmitPath(on.channel),
        message: `No member may transmit on slot ${on.slot}, ${on.name}, with any radio they hold; it takes ${service.mustHold}.`,
        source: sourceOf(law, service),
      };
    }
  },
});
