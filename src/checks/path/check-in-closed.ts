import { callPaths } from '../../consequences/call-paths.ts';
import { wasHeard } from '../../consequences/was-heard.ts';
import { exampleGround } from '../example-ground.ts';
import { endText, figuresText } from '../path-words.ts';
import { rule } from '../rule.ts';

/** Somebody who cannot be heard at the roll call is missed every day, until nobody worries about it any more. */
export const pathCheckInClosed = rule({
  id: 'path/check-in-closed',
  severity: 'warning',
  basis: 'practice',
  needs: 'paths',
  looksFor:
    'A member whose usual place does not reach the repeater, or net control, of a check-in they are expected in.',
  why: 'They will be called and not heard. Either the ladder is started for nothing each time, or people learn to ignore a silence that one day means something.',
  mend: 'Give them a better antenna or place for the check-in, or call them on a channel that reaches; or try it and log the trial.',
  sources: [{ document: 'ITU-R P.526-16', section: '4.5, delta-Bullington' }],
  bad: `${exampleGround}
repeaters:
  gap: { name: Gap repeater, call: W4XGP, output: 146.940, offset: -0.6, tone: 100.0, width: 25, place: base, antenna: { gain: 0 dBd, height: 6 m }, power: 10 W }
members:
  ada: { name: Ada Example, licences: { amateur: { class: general, call: KX4XAA, expires: 2033-02-01 } }, radios: [handheld], at: base }
  ben: { name: Ben Example, licences: { amateur: { class: technician, call: KX4XBB, expires: 2033-02-01 } }, radios: [handheld], at: ridge } # finding`,
  good: `${exampleGround}
members:
  ada: { name: Ada Example, licences: { amateur: { class: general, call: KX4XAA, expires: 2033-02-01 } }, radios: [handheld], at: base }
  ben: { name: Ben Example, licences: { amateur: { class: technician, call: KX4XBB, expires: 2033-02-01 } }, radios: [handheld], at: ridge }`,
  *check({ plan, consequences, paths }) {
    if (!paths) return;
    for (const checkIn of plan.checkIns.values()) {
      if (checkIn.listen) continue;
      for (const { member, place, best, trials } of callPaths(
        plan,
        paths,
        consequences.membersOf(checkIn.who),
        checkIn,
        checkIn.control,
      )) {
        if (place !== plan.members.get(member)?.at || wasHeard(trials)) continue;
        if (!best.prediction.ok || best.prediction.worse.verdict !== 'no') continue;
        yield {
          at: ['members', member, 'at'],
          message: `${plan.places.get(place)?.name ?? place} is not expected to reach ${endText(plan, best.to)} for ${checkIn.name}: ${figuresText(best)}.`,
        };
      }
    }
  },
});
