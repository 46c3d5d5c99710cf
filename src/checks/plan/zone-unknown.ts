import { isZone, nearestZone } from '../../consequences/zone-names.ts';
import { rule } from '../rule.ts';

/** Every time of day in a plan rests on its zone. */
export const planZoneUnknown = rule({
  id: 'plan/zone-unknown',
  severity: 'error',
  basis: 'consistency',
  looksFor: 'A time zone that is not in the IANA time zone database.',
  why: 'Without a zone no time in the plan can be turned into UTC or put into a calendar. Abbreviations such as EST stand for several zones and know nothing of summer time.',
  mend: 'Write the name of the zone as the IANA time zone database has it, such as America/New_York.',
  sources: [{ document: 'IANA time zone database', section: 'zone names' }],
  bad: `
plan:
  title: Example
  revision: 1
  effective: 2026-12-01
  review-by: 2027-12-01
  timezone: America/New_Yrok # finding
  rules: us
  coordinator: ada`,
  good: `
plan:
  title: Example
  revision: 1
  effective: 2026-12-01
  review-by: 2027-12-01
  timezone: America/New_York
  rules: us
  coordinator: ada`,
  *check({ plan }) {
    if (isZone(plan.timezone)) return;
    const near = nearestZone(plan.timezone);
    yield {
      at: ['plan', 'timezone'],
      message: `\`${plan.timezone}\` is no zone of the IANA time zone database, such as America/New_York.`,
      ...(near !== undefined && { suggestion: near }),
    };
  },
});
