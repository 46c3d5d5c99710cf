import { exampleGround } from '../example-ground.ts';
import { endText, figuresText } from '../path-words.ts';
import { commonPractice, rule } from '../rule.ts';

/** Where the ground and the reckoning disagree, something is to be learned: an antenna, a height, a wrong tone. */
export const pathAgainstTrial = rule({
  id: 'path/against-trial',
  severity: 'note',
  basis: 'practice',
  needs: 'paths',
  looksFor:
    'A trial that contradicts its prediction: nothing heard on a path reckoned solid, or a signal on one reckoned closed.',
  why: 'The trial is right. What the plan says about antennas, heights, power or tones may not be, and other predictions rest on it too.',
  mend: 'Look for the cause: the antenna, the tone, the height above the ground, an elevation file that misses a ridge. Try again.',
  sources: [commonPractice],
  bad: `${exampleGround}
trials:
  - { date: 2026-11-14, from: base, to: gap, channel: 1, heard: nothing } # finding`,
  good: `${exampleGround}
trials:
  - { date: 2026-11-14, from: base, to: gap, channel: 1, heard: readable }`,
  *check({ plan, paths }) {
    const said = new Set<number>();
    for (const path of paths ?? []) {
      if (!path.prediction.ok) continue;
      const { verdict } = path.prediction.worse;
      for (const trial of path.trials) {
        const against = trial.heard === 'nothing' ? verdict === 'solid' : verdict === 'no';
        const index = plan.trials.indexOf(trial);
        if (!against || said.has(index)) continue;
        said.add(index);
        yield {
          at: ['trials', index, 'heard'],
          message: `${trial.heard === 'nothing' ? 'Nothing was' : 'A signal was'} heard, while the path to ${endText(plan, path.to)} is reckoned ${verdict === 'no' ? 'closed' : verdict}: ${figuresText(path)}.`,
        };
      }
    }
  },
});
