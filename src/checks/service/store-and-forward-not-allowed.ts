import { plannedSignals } from '../../consequences/planned-signals.ts';
import { localRulesOf, sourceOf } from '../../regulations/law.ts';
import { rule } from '../rule.ts';

/** A digipeater repeats whatever it hears, with nobody at the controls: many services and some segments bar that. */
export const serviceStoreAndForwardNotAllowed = rule({
  id: 'service/store-and-forward-not-allowed',
  severity: 'error',
  basis: 'law',
  looksFor:
    'A mailbox or digipeater on a channel whose service or segment bars stations that store and forward by themselves.',
  why: 'Such a station transmits with nobody at its controls. MURS and FRS bar it altogether; below 50 MHz an amateur one is held to narrow segments.',
  mend: 'Put the station on an amateur channel that its band plan keeps for packet.',
  sources: [{ document: '47 CFR', section: '95.587(d), 95.2733 and 97.221(b)' }],
  bad: `
channels:
  1: { name: GAP, repeater: gap }
  3: { name: SIMP, simplex: 146.550, width: 25 }
  4: { name: DATA, standard: MURS 4, mode: packet }
packet:
  digipeaters:
    hill: { name: Hill digipeater, call: KX4XRG-3, place: hill, channel: 4 } # finding`,
  good: `
channels:
  1: { name: GAP, repeater: gap }
  3: { name: SIMP, simplex: 146.550, width: 25 }
  4: { name: DATA, simplex: 145.010, mode: packet, width: 25 }
packet:
  digipeaters:
    hill: { name: Hill digipeater, call: KX4XRG-3, place: hill, channel: 4 }`,
  *check(context) {
    const { law } = context;
    for (const { part, answer, at, name, on } of plannedSignals(context)) {
      if (part !== 'packet station' || answer.may || answer.why !== 'station') continue;
      if (answer.row && localRulesOf(law, answer.row)) continue;
      // On a channel that is not for packet at all, that is found.
      if (on.mode !== 'packet') continue;
      yield {
        at,
        message: `${name} on slot ${on.slot}, ${on.name}: ${answer.text.replace(/digipeater(?: station)?/g, 'station that stores and forwards')}.`,
        ...(answer.row && { source: sourceOf(law, answer.row) }),
      };
    }
  },
});
