/**
 * The plan language, version 1: every section, what it holds, and what it becomes in the model.
 *
 * The keys are fixed. More may be added; none is renamed, and every plan that is valid stays valid. The
 * descriptions are what an editor shows beside a key, and what the language reference is made of.
 */
import * as z from 'zod';
import { acceptance, checkIn, ladder, trial } from './sections/calls.ts';
import { cards } from './sections/cards.ts';
import { channel } from './sections/channels.ts';
import { ids } from './sections/entry-values.ts';
import { header, place, terrain } from './sections/head-and-ground.ts';
import { asset, member, radio } from './sections/radios-and-members.ts';
import { packet, repeater } from './sections/stations.ts';
import { byId, keyed, listOf } from './written.ts';

export const planSchema = keyed(
  {
    readback: z
      .literal(1, { error: '1, the version of the plan language' })
      .describe('Version of the plan language.'),
    plan: header.describe('What the plan is called, when it holds and under whose rules.'),
    places: byId(place, 'places by id').default(new Map()).describe('Where stations stand and people go.'),
    terrain: terrain.default({ files: [], profiles: [] }).describe('The ground between them.'),
    radios: byId(radio, 'kinds of radio by id')
      .default(new Map())
      .describe("The kinds of radio in the group, described by their own manual's figures."),
    members: byId(member, 'members by id')
      .default(new Map())
      .describe('The people, their licences and the radios they hold.'),
    teams: byId(ids('members'), 'teams by id')
      .default(new Map())
      .describe('Members who are called together.'),
    assets: byId(asset, 'assets by id')
      .default(new Map())
      .describe('Things outside the radios that can fail and take stations with them.'),
    repeaters: byId(repeater, 'repeaters by id')
      .default(new Map())
      .describe('Stations that hear on one frequency and send on another.'),
    packet: packet
      .default({ mailboxes: new Map(), digipeaters: new Map(), routes: [] })
      .describe('AX.25 at 1200 bit/s.'),
    channels: z
      .record(z.string().regex(/^(0|[1-9]\d{0,3})$/, { error: 'a slot number, such as 1' }), channel, {
        error: 'channels by slot number',
      })
      .default({})
      .describe('The key is the slot, the same in every radio of the group.'),
    'check-ins': byId(checkIn, 'check-ins by id')
      .default(new Map())
      .describe('When members call in, and when they listen.'),
    fallbacks: byId(ladder, 'ladders by id')
      .default(new Map())
      .describe('What to try, in order, when a call is not answered.'),
    trials: listOf(trial, 'a list of trials').default([]).describe('What was really tried, and heard.'),
    accepted: listOf(acceptance, 'a list of accepted findings')
      .default([])
      .describe('Findings the group has looked at and keeps.'),
    cards: cards
      .default({
        size: 'id-1',
        sheet: 'letter',
        flip: 'long-edge',
        notes: [],
        'back-shift': [0, 0],
      })
      .describe('How pocket cards are printed.'),
  },
  'a plan: a mapping that begins with readback: 1',
);
