import { transmitPath } from '../../consequences/planned-signals.ts';
import { stuckBy } from '../../consequences/stuck.ts';
import { formatFrequency, formatSpacing } from '../../radio/format-quantity.ts';
import { listNames } from '../list-names.ts';
import { commonPractice, rule } from '../rule.ts';

/** A radio that counts in steps cannot be set between them, and rounds without a word. */
export const radioOffStep = rule({
  id: 'radio/off-step',
  severity: 'error',
  basis: 'consistency',
  looksFor:
    'A channel on a frequency that none of the tuning steps of a radio reaches, for members who have no other radio for it.',
  why: 'The radio takes the nearest step instead, and the member is a few kilohertz beside everybody else: faint, distorted, or not heard.',
  mend: 'Correct the frequency. If it is right, check the steps in the manual of the radio.',
  sources: [commonPractice],
  bad: `
channels:
  1: { name: GAP, repeater: gap }
  3: { name: SIMP, simplex: 146.553, width: 25 } # finding`,
  good: `
channels:
  1: { name: GAP, repeater: gap }
  3: { name: SIMP, simplex: 146.550, width: 25 }`,
  *check(context) {
    for (const [slot, here] of stuckBy(context, ['receive-step', 'transmit-step'])) {
      const [{ on, radio, misfits }] = here;
      const received = misfits.some(({ code }) => code === 'receive-step');
      const wantedHz = received ? on.receiveHz : (on.transmitHz ?? on.receiveHz);
      // What is listened to stands where it is, whatever a radio can be tuned to.
      const nearHz = (on.transmitHz === undefined ? [] : radio.stepsHz)
        .map((step) => Math.round(wantedHz / step) * step)
        .toSorted((a, b) => Math.abs(a - wantedHz) - Math.abs(b - wantedHz))[0];
      const who = here.map((each) => each.radio.name);
      const nearest =
        nearHz === undefined ? '' : `; the nearest of ${radio.name} is ${formatFrequency(nearHz)} MHz`;
      yield {
        at: on.repeater
          ? ['repeaters', on.repeater.id, received ? 'output' : on.repeater.writtenAs]
          : transmitPath(on.channel),
        message: `Slot ${slot}, ${on.name}, is at ${formatFrequency(wantedHz)} MHz, to which ${listNames(who)} cannot be tuned (for ${listNames(here.flatMap(({ holders }) => holders))}) in steps of ${radio.stepsHz.map(formatSpacing).join(', ')}${nearest}.`,
        ...(nearHz !== undefined && !on.repeater && !on.published && { suggestion: formatFrequency(nearHz) }),
      };
    }
  },
});
