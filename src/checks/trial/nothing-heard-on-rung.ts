import { commonPractice, rule } from '../rule.ts';

/** A rung that was tried and failed is worse than none: it costs the time it takes. */
export const trialNothingHeardOnRung = rule({
  id: 'trial/nothing-heard-on-rung',
  severity: 'warning',
  basis: 'practice',
  looksFor: 'A rung that sends people to a place from which nothing was heard on its channel.',
  why: 'The ladder asks for a walk to a place whence the last trial on that channel found nothing. The walk and the wait are lost just when they matter.',
  mend: 'Choose another place or channel for the rung, or try again and log the trial.',
  sources: [commonPractice],
  bad: `
fallbacks:
  first:
    name: First
    who: all
    reach: [ada]
    rungs:
      - { grade: primary, channel: 1, calls: 3, within: 5 min }
      - { grade: alternate, channel: 3, from: hill, calls: 3, within: 10 min } # finding
      - { grade: emergency, meet: base, at: next full hour }
trials:
  - { date: 2026-11-14, from: hill, to: base, channel: 3, heard: nothing }`,
  good: `
fallbacks:
  first:
    name: First
    who: all
    reach: [ada]
    rungs:
      - { grade: primary, channel: 1, calls: 3, within: 5 min }
      - { grade: alternate, channel: 3, from: hill, calls: 3, within: 10 min }
      - { grade: emergency, meet: base, at: next full hour }
trials:
  - { date: 2026-11-14, from: hill, to: base, channel: 3, heard: nothing }
  - { date: 2026-11-20, from: hill, to: base, channel: 3, heard: weak }`,
  *check({ plan }) {
    // To whatever station: what counts is whether anything at all was heard there on the latest day.
    const latest = new Map<string, { date: string; heard: boolean }>();
    for (const { date, from, channel, heard } of plan.trials) {
      const key = `${from} ${channel}`;
      const known = latest.get(key);
      if (known === undefined || known.date < date) latest.set(key, { date, heard: heard !== 'nothing' });
      else if (known.date === date && heard !== 'nothing') known.heard = true;
    }
    for (const { id, rungs } of plan.ladders.values()) {
      for (const [index, { from, channel }] of rungs.entries()) {
        if (from === undefined || channel === undefined) continue;
        const trial = latest.get(`${from} ${channel}`);
        if (!trial || trial.heard) continue;
        const place = plan.places.get(from)?.name ?? from;
        yield {
          at: ['fallbacks', id, 'rungs', index],
          message: `The rung goes to ${place} for slot ${channel}, where nothing was heard on ${trial.date}.`,
        };
      }
    }
  },
});
