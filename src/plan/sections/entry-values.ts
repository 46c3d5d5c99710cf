/** Values and small entries that several sections of the plan language share. */
import * as z from 'zod';
import { feedLines } from '../../reach/feed-line.ts';
import { entry } from '../entry.ts';
import type { Antenna } from '../model.ts';
import {
  keyed,
  line,
  listOf,
  minutes,
  oneOf,
  quantity,
  reference,
  report,
  trueOrFalse,
  wholeNumber,
} from '../written.ts';

export const slot = wholeNumber('a slot number', 0, 9999).describe('A channel, by its slot number.');
export const ids = (what: string) => listOf(reference(`the id of ${what}`), `a list of ids of ${what}`);
export const notes = listOf(line('a line of text'), 'a list of lines').default([]);
export const call = line('a call sign').transform((text) => text.toUpperCase());
export const power = quantity('power', 'a power, such as 5 W', { most: 100_000 });
export const length = (what: string) => quantity('length', what, { most: 100_000 });
export const backup = minutes('how long it runs on its battery, such as 12 h')
  .describe('How long it keeps working after what it depends on is lost.')
  .optional();
export const dependsOn = ids('something in the plan')
  .default([])
  .describe('What must work for this to work: assets, or other stations.');
export const sensitivity = quantity('level', 'a sensitivity, such as -119 dBm')
  .describe('Signal for 12 dB SINAD.')
  .optional();

export const who = z
  .union([z.literal('all'), reference('the id of a team or a member'), ids('teams and members')], {
    error: 'all, a team, a member, or a list of them',
  })
  .transform((value) => (value === 'all' ? 'all' : typeof value === 'string' ? [value] : value));

export const mode = oneOf(['fm', 'am', 'ssb', 'cw', 'packet']);

export const antenna = keyed(
  {
    gain: quantity('gain', 'a gain, such as -5 dBd or 2.15 dBi')
      .describe('Over a dipole (dBd) or an isotropic antenna (dBi).')
      .optional(),
    height: length('a height, such as 12 m').describe('Above the ground.').optional(),
    carried: oneOf(['hand', 'chest', 'belt', 'vehicle', 'mast'])
      .describe('How the radio or its antenna is carried.')
      .optional(),
    counterpoise: trueOrFalse
      .describe('A wire hung below a hand-held, or a metal roof under a whip.')
      .optional(),
    'feed-loss': quantity('loss', 'a loss, such as 1.5 dB')
      .describe('Lost between the radio and the antenna; in place of a feed line.')
      .optional(),
    feed: oneOf(feedLines)
      .describe('The line between the radio and the antenna, from which its loss follows.')
      .optional(),
    'feed-length': length('a length, such as 20 m').describe('Length of that line.').optional(),
  },
  'an antenna: gain, height, carried, counterpoise, feed-loss, or feed and feed-length',
).transform((a, context) => {
  const [line, lengthM] = [a.feed, a['feed-length']];
  if (line !== undefined && a['feed-loss'] !== undefined)
    report(
      context,
      'An antenna has a feed-loss or a feed line, not both: one of them could contradict the other.',
    );
  else if ((line === undefined) !== (lengthM === undefined))
    report(context, 'A feed line is a kind and a length: `feed` and `feed-length` go together.');
  return entry<Antenna>({
    gainDbi: a.gain,
    heightM: a.height,
    carried: a.carried,
    counterpoise: a.counterpoise,
    feedLossDb: a['feed-loss'],
    feed: line !== undefined && lengthM !== undefined ? { line, lengthM } : undefined,
  });
});
