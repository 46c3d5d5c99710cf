import { nearest } from '../../findings/nearest.ts';
import { commonPractice, rule } from '../rule.ts';

/** A setting that no radio has is skipped in silence, and the radio stays at whatever it was. */
export const powerUnknownSetting = rule({
  id: 'power/unknown-setting',
  severity: 'error',
  basis: 'consistency',
  looksFor: 'A channel that names a power setting which no radio of the plan has.',
  why: 'Settings are matched by their name. One that no radio has leads nowhere, so the worksheet cannot say what to set.',
  mend: 'Write one of the settings that the radios have, or the power in watts.',
  sources: [commonPractice],
  bad: `
channels:
  1: { name: GAP, repeater: gap }
  3: { name: SIMP, simplex: 146.550, width: 25, power: hihg } # finding`,
  good: `
channels:
  1: { name: GAP, repeater: gap }
  3: { name: SIMP, simplex: 146.550, width: 25, power: high }`,
  *check({ plan }) {
    const names = new Set([...plan.radios.values()].flatMap(({ powersW }) => [...powersW.keys()]));
    for (const { slot, power } of plan.channels.values()) {
      if (typeof power !== 'string' || names.has(power)) continue;
      const near = nearest(power, names);
      const message = `No radio has a power setting \`${power}\`; they have ${[...names].join(', ') || 'none'}.`;
      const at = ['channels', slot, 'power'];
      yield near === undefined ? { at, message } : { at, message, suggestion: near };
    }
  },
});
