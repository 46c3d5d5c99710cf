/** When people call and listen, what they try when nobody answers, what they tried, and what they accepted. */
import * as z from 'zod';
import { entry } from '../entry.ts';
import type { Acceptance, Rung, Trial } from '../model.ts';
import {
  date,
  days,
  keyed,
  line,
  minutes,
  oneOf,
  oneOrMore,
  reference,
  report,
  timeOfDay,
  trueOrFalse,
  wholeNumber,
} from '../written.ts';
import { dependsOn, slot, who } from './entry-values.ts';

export const checkIn = keyed(
  {
    name: line('a name'),
    channel: slot,
    listen: trueOrFalse.default(false).describe('Nobody calls the roll; everybody listens.'),
    days: days
      .describe('every day, weekdays, weekends, a list, or an RFC 5545 RRULE.')
      .default({ kind: 'weekdays', isoDays: [1, 2, 3, 4, 5, 6, 7] }),
    at: timeOfDay.describe('When it begins: "07:30", or "14:30Z" for UTC.'),
    until: timeOfDay.describe('Last start of a watch that repeats through the day.').optional(),
    repeats: minutes('how long from one start to the next, such as 3 h').optional(),
    lasts: minutes('how long it lasts, such as 15 min')
      .describe('How long it lasts; 10 min if left out.')
      .default(10),
    who: who.describe('all, a team, members; all if left out.').default('all'),
    control: oneOrMore(reference('the id of a member'), 'a list of members')
      .describe('Net control, taking turns in this order.')
      .default([]),
    turn: oneOf(['day', 'week', 'time'])
      .default('week')
      .describe('When net control changes: each day, week or time.'),
    missed: reference('the id of a ladder')
      .describe('The ladder to start when someone does not answer.')
      .optional(),
  },
  'a check-in: name, channel, days, at, lasts, who',
).transform((c, context) => {
  if (c.until !== undefined && c.repeats === undefined)
    report(context, '`until` needs `repeats`: how long from one start to the next.');
  if (c.repeats !== undefined && c.repeats < 1)
    context.addIssue({
      code: 'custom',
      message: '`repeats` is a minute at least, for starts are told by the minute.',
      path: ['repeats'],
    });
  if (c.lasts <= 0) report(context, '`lasts` is more than nothing.');
  return c;
});

export const rung = keyed(
  {
    grade: oneOf(['primary', 'alternate', 'contingency', 'emergency']),
    channel: slot.optional(),
    from: reference('the id of a place').describe('Go there first.').optional(),
    calls: wholeNumber('how many calls', 1, 20).optional(),
    within: minutes('a time, such as 5 min').describe('When to move on to the next rung.').optional(),
    mailbox: reference('the id of a mailbox').describe('Leave a message there, by packet.').optional(),
    through: oneOrMore(reference('the id of a digipeater'), 'a list of digipeaters').default([]),
    meet: reference('the id of a place').describe('No radio: a place.').optional(),
    at: line('when to meet, such as next even hour').describe('With `meet`: when.').optional(),
    other: line('something else to do').describe('Anything else.').optional(),
    'depends-on': dependsOn,
  },
  'a rung: grade, and a channel, a meeting place or something else to do',
).transform((r, context): Rung => {
  if (r.channel === undefined && r.meet === undefined && r.other === undefined) {
    report(context, 'The rung says nothing to do: write channel, meet or other.');
  }
  if (r.mailbox !== undefined && r.channel === undefined)
    report(context, 'A message to a mailbox needs a channel.');
  const { 'depends-on': needs, within, ...rest } = r;
  return entry<Rung>({
    grade: rest.grade,
    channel: rest.channel,
    from: rest.from,
    calls: rest.calls,
    withinMin: within,
    mailbox: rest.mailbox,
    through: rest.through,
    meet: rest.meet,
    at: rest.at,
    other: rest.other,
    dependsOn: needs,
  });
});

export const ladder = keyed(
  {
    name: line('a name'),
    who: who.describe('Whose ladder it is; all if left out.').default('all'),
    reach: oneOrMore(reference('the id of a member'), 'a list of members')
      .describe('Whom they are trying to reach; any one will do.')
      .default([]),
    rungs: z.array(rung, { error: 'a list of rungs' }).min(1, { error: 'at least one rung' }),
  },
  'a ladder: name, who, reach, rungs',
);

export const trial = keyed(
  {
    date,
    from: reference('the id of a place'),
    to: reference('the id of a station, a place or a member'),
    channel: slot.optional(),
    radio: reference('the id of a radio').optional(),
    member: reference('the id of a member').optional(),
    heard: oneOf(['readable', 'weak', 'broken', 'nothing']),
    report: line('a report, such as "5 by 7"').optional(),
  },
  'a trial: date, from, to, channel, heard',
).transform((t) => entry<Trial>(t));

export const acceptance = keyed(
  {
    rule: line('a rule, such as offset/unusual'),
    at: line('a path, such as repeaters.gap').describe(
      'The entry that was looked at, or one key of it; of a whole section it would take in entries to come.',
    ),
    because: line('the reason'),
    until: date.describe('The last day it holds.'),
  },
  'an accepted finding: rule, at, because, until',
).transform((a): Acceptance => a);
