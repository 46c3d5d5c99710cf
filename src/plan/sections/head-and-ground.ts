/** The head of a plan, its places and the ground between them. */
import * as z from 'zod';
import { entry } from '../entry.ts';
import type { HandProfile, Terrain } from '../model.ts';
import {
  date,
  keyed,
  languageTag,
  line,
  listOf,
  oneOf,
  oneOrMore,
  position,
  quantity,
  reference,
  report,
  wholeNumber,
} from '../written.ts';
import { length, notes } from './entry-values.ts';

export const header = keyed(
  {
    title: line('a line of text').describe('The name of the plan, as the group says it.'),
    revision: wholeNumber('a whole number that goes up at each issue of the cards', 0, 99_999).describe(
      'Goes up at each issue of the cards.',
    ),
    effective: date.describe('The day from which the plan holds.'),
    'review-by': date.describe('The day by which it must be looked at again.').optional(),
    timezone: line('an IANA time zone, such as America/New_York').describe(
      'IANA name of the time zone in which times are written.',
    ),
    language: languageTag
      .describe(
        'Language of the documents: en, de, or another for which templates and words are brought; English if left out.',
      )
      .optional(),
    rules: oneOrMore(
      line('a country code, such as us, or a rules file'),
      'a country code, such as us, or a list that begins with one',
    )
      .refine((rules) => rules.length > 0, {
        error: '`rules` is empty; it begins with the country whose rules hold, such as us.',
      })
      .describe("The country's rules, then files of local coordination that add to them."),
    coordinator: reference('the id of a member').describe('The member who keeps the plan.').optional(),
    record: line('a file name, such as radios.json')
      .describe('File of clean audits, beside the plan: which radio holds which revision.')
      .optional(),
    notes: notes.describe('Lines for the booklet.'),
  },
  'the head of the plan: title, revision, effective, timezone, rules',
);

export const place = keyed(
  {
    name: line('a name').describe('As members say it.'),
    at: position.describe('Decimal degrees, a Maidenhead locator or an MGRS reference.'),
    elevation: quantity('length', 'a height above the sea, such as 402 m', { negative: true, most: 9000 })
      .describe('Above the sea.')
      .optional(),
    kind: oneOf(['base', 'high-ground', 'field', 'relay'])
      .describe('What the place is to the group.')
      .default('field'),
  },
  'a place: name, at, elevation, kind',
);

const profileNumber = (what: string, lowest: number, highest: number) =>
  z.number({ error: what }).min(lowest, { error: what }).max(highest, { error: what });

export const handProfile = keyed(
  {
    from: reference('the id of a place'),
    to: reference('the id of a place'),
    heights: z
      .array(
        z.tuple(
          [
            profileNumber('a distance in km, from 0 to half the way round the earth', 0, 20_000),
            profileNumber('a height in m, from -9000 to 9000', -9000, 9000),
          ],
          {
            error: 'a pair: distance in km, height in m',
          },
        ),
        { error: 'pairs of distance in km and height in m' },
      )
      .describe('Pairs of distance in km and height in m, read off a map.'),
  },
  'a profile: from, to, heights',
).transform((profile, context): HandProfile => {
  const heights = profile.heights.map(([km, m]) => [Math.round(km * 1000), m] as const);
  if (heights.length < 2) report(context, 'A profile has at least its two ends.');
  if (heights.some(([distance], index) => index > 0 && distance <= (heights[index - 1]?.[0] ?? 0))) {
    report(context, 'The distances of a profile rise from one end to the other.');
  }
  if (heights[0]?.[0] !== 0) report(context, 'A profile begins at distance 0.');
  return { from: profile.from, to: profile.to, heights };
});

export const terrain = keyed(
  {
    files: listOf(line('a file name'), 'a list of elevation files')
      .default([])
      .describe('GeoTIFF or .hgt files, relative to the plan.'),
    woodland: length('a tree height, such as 15 m')
      .describe('Height of the trees met around field places.')
      .optional(),
    profiles: listOf(handProfile, 'a list of profiles')
      .default([])
      .describe('Ground heights typed by hand from a map.'),
  },
  'terrain: files, woodland, profiles',
).transform((t) => entry<Terrain>({ files: t.files, woodlandM: t.woodland, profiles: t.profiles }));
