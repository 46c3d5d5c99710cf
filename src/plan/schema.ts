/**
 * The plan language, version 1: every key, what it holds, and what it becomes in the model.
 *
 * The keys are fixed. More may be added; none is renamed, and every plan that is valid stays valid. The
 * descriptions are what an editor shows beside a key, and what the language reference is made of.
 */
import * as z from 'zod';
import { entry } from './entry.ts';
import type {
  Acceptance,
  Antenna,
  Asset,
  Battery,
  Cards,
  Channel,
  CheckIn,
  HandProfile,
  Ladder,
  Licence,
  Member,
  PacketStation,
  Place,
  Plan,
  Radio,
  Repeater,
  Route,
  Rung,
  Terrain,
  Trial,
} from './model.ts';
import {
  byId,
  date,
  days,
  frequency,
  hertzSpan,
  idPattern,
  keyed,
  line,
  listOf,
  minutes,
  oneOf,
  oneOrMore,
  position,
  quantity,
  reference,
  report,
  slotSpan,
  timeOfDay,
  tone,
  trueOrFalse,
  wholeNumber,
} from './written.ts';

const slot = wholeNumber('a slot number', 0, 9999).describe('A channel, by its slot number.');
const ids = (what: string) => listOf(reference(`the id of ${what}`), `a list of ids of ${what}`);
const notes = listOf(line('a line of text'), 'a list of lines').default([]);
const call = line('a call sign').transform((text) => text.toUpperCase());
const power = quantity('power', 'a power, such as 5 W', { most: 100_000 });
const length = (what: string) => quantity('length', what, { most: 100_000 });
const backup = minutes('how long it runs on its battery, such as 12 h')
  .describe('How long it keeps working after what it depends on is lost.')
  .optional();
const dependsOn = ids('something in the plan')
  .default([])
  .describe('What must work for this to work: assets, or other stations.');
const sensitivity = quantity('level', 'a sensitivity, such as -119 dBm')
  .describe('Signal for 12 dB SINAD.')
  .optional();

const who = z
  .union([z.literal('all'), reference('the id of a team or a member'), ids('teams and members')], {
    error: 'all, a team, a member, or a list of them',
  })
  .transform((value) => (value === 'all' ? 'all' : typeof value === 'string' ? [value] : value));

const mode = oneOf(['fm', 'am', 'ssb', 'cw', 'packet']);

const antenna = keyed(
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
      .describe('Lost between the radio and the antenna.')
      .optional(),
  },
  'an antenna: gain, height, carried, counterpoise, feed-loss',
).transform((a) =>
  entry<Antenna>({
    gainDbi: a.gain,
    heightM: a.height,
    carried: a.carried,
    counterpoise: a.counterpoise,
    feedLossDb: a['feed-loss'],
  }),
);

const header = keyed(
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
    language: oneOf(['en', 'de']).describe('Language of the documents; English if left out.').optional(),
    rules: oneOrMore(
      line('a country code, such as us, or a rules file'),
      'a country code, such as us, or a list that begins with one',
    ).describe("The country's rules, then files of local coordination that add to them."),
    coordinator: reference('the id of a member').describe('The member who keeps the plan.').optional(),
    record: line('a file name, such as radios.json')
      .describe('File of clean audits, beside the plan: which radio holds which revision.')
      .optional(),
    notes: notes.describe('Lines for the booklet.'),
  },
  'the head of the plan: title, revision, effective, timezone, rules',
);

const place = keyed(
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

const handProfile = keyed(
  {
    from: reference('the id of a place'),
    to: reference('the id of a place'),
    heights: z
      .array(z.tuple([z.number(), z.number()], { error: 'a pair: distance in km, height in m' }), {
        error: 'pairs of distance in km and height in m',
      })
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

const terrain = keyed(
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

const entryField = oneOf([
  'receive',
  'transmit',
  'step',
  'mode',
  'offset-direction',
  'offset',
  'tone-kind',
  'tone',
  'receive-tone',
  'width',
  'power',
  'name',
]);

const battery = keyed(
  {
    energy: quantity('energy', 'an energy, such as 11 Wh'),
    spares: wholeNumber('how many spare batteries', 0, 99).default(0),
    volts: quantity('voltage', 'a voltage, such as 7.4 V').optional(),
    standby: quantity('current', 'a current, such as 60 mA').optional(),
    receive: quantity('current', 'a current, such as 180 mA').optional(),
    transmit: quantity('current', 'a current, such as 1.5 A').optional(),
  },
  'a battery: energy, spares, volts, standby, receive, transmit',
).transform((b) =>
  entry<Battery>({
    energyWh: b.energy,
    spares: b.spares,
    volts: b.volts,
    standbyA: b.standby,
    receiveA: b.receive,
    transmitA: b.transmit,
  }),
);

const radio = keyed(
  {
    name: line('a name').describe('As members call this kind of radio.'),
    transmits: oneOrMore(hertzSpan, 'a list of ranges in MHz')
      .describe('Ranges in MHz where it can transmit.')
      .default([]),
    receives: oneOrMore(hertzSpan, 'a list of ranges in MHz').describe('Ranges in MHz where it can receive.'),
    certified: oneOrMore(reference('a service, such as amateur or gmrs'), 'a list of services')
      .default([])
      .describe('Services it may lawfully transmit in.'),
    memories: oneOrMore(slotSpan, 'slots it has, such as 1-128').describe('Slots it has.'),
    'name-length': wholeNumber('how many characters of a name it shows', 0, 64)
      .default(0)
      .describe('Characters its display shows of a channel name; 0 for none.'),
    steps: oneOrMore(quantity('spacing', 'a step in kHz'), 'a list of tuning steps in kHz')
      .describe('Tuning steps, kHz.')
      .default([]),
    widths: oneOrMore(quantity('spacing', 'a spacing in kHz'), 'a list of channel spacings in kHz')
      .describe('Channel spacings it can be set to, kHz.')
      .default([]),
    tones: listOf(
      z.union([z.enum(['ctcss', 'dcs']), tone], { error: 'ctcss, dcs, or a tone it knows' }),
      'a list: ctcss, dcs, or single tones',
    )
      .describe('Kinds of tone it can send, or single tones.')
      .default([]),
    modes: listOf(mode, 'a list of modes').default(['fm']),
    powers: z
      .union(
        [
          z.record(z.string().regex(idPattern, { error: 'a word for the setting, such as high' }), power),
          power,
        ],
        {
          error: 'power settings, such as { high: 5 W, low: 1 W }',
        },
      )
      .describe('Its power settings by name.')
      .optional(),
    antenna: antenna.optional(),
    sensitivity,
    battery: battery.optional(),
    'entry-order': listOf(entryField, 'a list of what its menu asks for')
      .default(['receive', 'offset-direction', 'offset', 'tone', 'width', 'power', 'name'])
      .describe('The order in which its menu asks.'),
  },
  'a kind of radio',
);

const licence = keyed(
  {
    class: line('a licence class')
      .transform((text) => text.toLowerCase())
      .describe('As the licence says it, such as general.')
      .optional(),
    call: call.describe('Their call sign in this service.').optional(),
    expires: date.describe('The last day it holds.').optional(),
    authority: line('who gave leave, and under what reference')
      .describe('For services that are open only with the leave of an agency.')
      .optional(),
  },
  'a licence: class, call, expires',
).transform((l) =>
  entry<Licence>({ class: l.class, call: l.call, expires: l.expires, authority: l.authority }),
);

const member = keyed(
  {
    name: line('a name'),
    licences: byId(licence, 'licences by service, such as { amateur: { class: general, call: … } }')
      .describe('By service: amateur, gmrs …')
      .default(new Map()),
    radios: oneOrMore(reference('the id of a radio'), 'a list of radios')
      .default([])
      .describe('The kinds of radio they hold.'),
    at: reference('the id of a place').describe('Where they usually are.').optional(),
    roams: oneOrMore(reference('the id of a place'), 'a list of places')
      .default([])
      .describe('Where else they must be reachable from.'),
    contact: z
      .record(z.string(), line('a line of text'))
      .describe('Private: printed only where a template asks for it by name.')
      .default({}),
    'contact-shared': trueOrFalse
      .default(false)
      .describe('Whether the contact may be printed for the whole group.'),
  },
  'a member: name, licences, radios, at',
);

const asset = z.union(
  [keyed({ name: line('a name'), 'depends-on': dependsOn, backup }, 'an asset: name, depends-on, backup')],
  { error: 'an asset, such as { name: Valley power feeder }' },
);

const repeater = keyed(
  {
    name: line('a name'),
    call: call.optional(),
    output: frequency.describe('What members listen to, MHz.'),
    offset: quantity('frequencyOffset', 'an offset in MHz, such as -0.6')
      .describe('Added to the output for transmit, MHz.')
      .optional(),
    input: frequency.describe('What members transmit on, MHz; in place of an offset.').optional(),
    service: reference('a service, such as amateur')
      .describe('The service meant, where a frequency belongs to several.')
      .optional(),
    tone: tone.describe('Needed to open it.').optional(),
    'output-tone': tone.describe('What it sends back.').optional(),
    width: quantity('spacing', 'a spacing in kHz, such as 25').describe('Channel spacing, kHz.').optional(),
    place: reference('the id of a place').describe('Where it stands.').optional(),
    antenna: antenna.optional(),
    power: power.describe('What its transmitter puts out.').optional(),
    sensitivity,
    'time-out': minutes('a time, such as 3 min')
      .describe('How long it lets one transmission last.')
      .optional(),
    coordinated: trueOrFalse.describe('Whether a frequency coordinator has agreed to it.').optional(),
    'depends-on': dependsOn,
    backup,
  },
  'a repeater: name, output, offset or input, tone, place',
).transform((r, context) => {
  if (r.offset === undefined && r.input === undefined) {
    report(
      context,
      'A repeater needs an offset or an input, so that members know what to transmit on.',
      'offset: -0.6',
    );
  }
  if (r.offset !== undefined && r.input !== undefined) {
    report(
      context,
      'A repeater has an offset or an input, not both: one of them could contradict the other.',
    );
  }
  const inputHz = r.input ?? r.output + (r.offset ?? 0);
  if (inputHz <= 0 && r.offset !== undefined) {
    // Six hundred written where kilohertz were meant.
    const kilohertz = Math.abs(r.offset) >= 100e6 ? `${r.offset / 1e6} kHz` : undefined;
    const message = `An offset of ${r.offset / 1e6} MHz would put the input below 0 MHz, for the output is ${r.output / 1e6} MHz.`;
    context.addIssue({
      code: 'custom',
      message,
      path: ['offset'],
      ...(kilohertz !== undefined && { params: { suggestion: kilohertz } }),
    });
  }
  return { ...r, inputHz };
});

const packetStation = keyed(
  {
    name: line('a name').optional(),
    call: call.describe('With its SSID, such as KX4XWE-10.'),
    place: reference('the id of a place').optional(),
    channel: slot,
    power: power.optional(),
    antenna: antenna.optional(),
    sensitivity,
    'depends-on': dependsOn,
    backup,
  },
  'a packet station: call, place, channel',
);

const route = keyed(
  {
    from: reference('the id of a place or a member'),
    to: reference('the id of a mailbox'),
    through: listOf(reference('the id of a digipeater'), 'a list of digipeaters').default([]),
  },
  'a route: from, to, through',
).transform((r): Route => r);

const packet = keyed(
  {
    mailboxes: byId(packetStation, 'mailboxes by id').default(new Map()),
    digipeaters: byId(packetStation, 'digipeaters by id').default(new Map()),
    routes: listOf(route, 'a list of routes').default([]),
  },
  'packet: mailboxes, digipeaters, routes',
);

const channelKeys = {
  name: line('a name').describe('As radios show it.'),
  use: line('a line of text').describe('What the channel is for.').optional(),
  repeater: reference('the id of a repeater').describe('A repeater of this plan.').optional(),
  simplex: frequency.describe('One frequency for both, MHz.').optional(),
  standard: line('a published channel, such as GMRS 20')
    .describe('A published channel: its figures come from the rules.')
    .optional(),
  listen: frequency.describe('Listen only, MHz.').optional(),
  receive: frequency.describe('With `transmit`: a pair that is no listed repeater, MHz.').optional(),
  transmit: frequency.optional(),
  tone: tone.describe('Sent when transmitting.').optional(),
  'receive-tone': tone.describe('Needed to open the squelch.').optional(),
  width: quantity('spacing', 'a spacing in kHz, such as 25').describe('Channel spacing, kHz.').optional(),
  mode: mode.default('fm'),
  power: z
    .union([power, reference('a power setting')], { error: 'a power such as 5 W, or the name of a setting' })
    .describe('A setting by name, or watts.')
    .optional(),
  service: reference('a service, such as amateur')
    .describe('The service meant, where a frequency belongs to several.')
    .optional(),
};

const channel = keyed(
  channelKeys,
  'a channel: name, and one of repeater, simplex, standard, listen, or receive and transmit',
).transform((c, context) => {
  const given = (['repeater', 'simplex', 'standard', 'listen', 'receive', 'transmit'] as const).filter(
    (key) => c[key] !== undefined,
  );
  const pair = given.join(' ') === 'receive transmit';
  if (given.length === 0) {
    report(
      context,
      'The channel has no frequency: write one of repeater, simplex, standard, listen, or receive and transmit.',
    );
  } else if (given.length === 1 && (given[0] === 'receive' || given[0] === 'transmit')) {
    const missing = given[0] === 'receive' ? 'transmit' : 'receive';
    report(
      context,
      `The channel has \`${given[0]}\` without \`${missing}\`; a frequency only listened to is written \`listen\`.`,
    );
  } else if (given.length > 1 && !pair) {
    report(
      context,
      `The channel says ${given.map((key) => `\`${key}\``).join(' and ')}; one of them decides its frequency, so the others must go.`,
    );
  }
  return c;
});

const checkIn = keyed(
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
    lasts: minutes('how long it lasts, such as 15 min').default(10),
    who: who.describe('all, a team, members.').default('all'),
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
  if (c.repeats !== undefined && c.repeats <= 0) report(context, '`repeats` is more than nothing.');
  if (c.lasts <= 0) report(context, '`lasts` is more than nothing.');
  return c;
});

const rung = keyed(
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

const ladder = keyed(
  {
    name: line('a name'),
    who: who.describe('Whose ladder it is.').default('all'),
    reach: oneOrMore(reference('the id of a member'), 'a list of members')
      .describe('Whom they are trying to reach; any one will do.')
      .default([]),
    rungs: z.array(rung, { error: 'a list of rungs' }).min(1, { error: 'at least one rung' }),
  },
  'a ladder: name, who, reach, rungs',
);

const trial = keyed(
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

const acceptance = keyed(
  {
    rule: line('a rule, such as offset/unusual'),
    at: line('a path, such as repeaters.gap'),
    because: line('the reason'),
    until: date.describe('The last day it holds.'),
  },
  'an accepted finding: rule, at, because, until',
).transform((a): Acceptance => a);

const millimetres = z
  .number({ error: 'millimetres' })
  .min(-10, { error: 'at most 10 mm' })
  .max(10, { error: 'at most 10 mm' });

const cards = keyed(
  {
    size: oneOf(['id-1', 'index', 'a7', 'a6', 'fold']).default('id-1').describe('Size of the finished card.'),
    sheet: oneOf(['letter', 'a4']).default('letter').describe('The paper.'),
    flip: oneOf(['long-edge', 'short-edge'])
      .default('long-edge')
      .describe('The edge about which the printer turns the sheet.'),
    notes: notes.describe('Lines for every card.'),
    qr: trueOrFalse
      .describe('A code on the back that a telephone can read: the channels and the plan check.')
      .optional(),
    'back-shift': z
      .tuple([millimetres, millimetres], { error: 'two numbers in mm: right, down' })
      .default([0, 0])
      .describe('How far this printer sets the back off the front, in mm right and down.'),
  },
  'cards: size, sheet, flip, notes',
);

// A plan is read once: checking it costs less than first compiling the checks.
z.config({ jitless: true });

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

/** What the schema gives, put into the shape of the model: names in code, ids and slots inside their entries. */
export function toPlan(read: z.output<typeof planSchema>): Plan {
  const { plan: head, packet: stations } = read;
  return entry<Plan>({
    title: head.title,
    revision: head.revision,
    effective: head.effective,
    reviewBy: head['review-by'],
    ...(head.language !== undefined && { language: head.language }),
    timezone: head.timezone,
    rules: head.rules as [string, ...string[]],
    coordinator: head.coordinator,
    record: head.record,
    notes: head.notes,
    places: mapEntries(read.places, (id, p) =>
      entry<Place>({ id, name: p.name, at: p.at, elevationM: p.elevation, kind: p.kind }),
    ),
    terrain: read.terrain,
    radios: mapEntries(read.radios, toRadio),
    members: mapEntries(read.members, (id, m) =>
      entry<Member>({
        id,
        name: m.name,
        licences: m.licences,
        radios: m.radios,
        at: m.at,
        roams: m.roams,
        contact: new Map(Object.entries(m.contact)),
        contactShared: m['contact-shared'],
      }),
    ),
    teams: read.teams,
    assets: mapEntries(read.assets, (id, a) =>
      entry<Asset>({ id, name: a.name, dependsOn: a['depends-on'], backupMin: a.backup }),
    ),
    repeaters: mapEntries(read.repeaters, (id, r) =>
      entry<Repeater>({
        id,
        name: r.name,
        call: r.call,
        outputHz: r.output,
        inputHz: r.inputHz,
        writtenAs: r.input === undefined ? 'offset' : 'input',
        service: r.service,
        tone: r.tone,
        outputTone: r['output-tone'],
        widthHz: r.width,
        place: r.place,
        antenna: r.antenna ?? {},
        powerW: r.power,
        sensitivityDbm: r.sensitivity,
        timeOutMin: r['time-out'],
        coordinated: r.coordinated,
        dependsOn: r['depends-on'],
        backupMin: r.backup,
      }),
    ),
    mailboxes: mapEntries(stations.mailboxes, toPacketStation),
    digipeaters: mapEntries(stations.digipeaters, toPacketStation),
    routes: stations.routes,
    channels: new Map(
      Object.entries(read.channels).map(([key, c]) => [Number(key), toChannel(Number(key), c)]),
    ),
    checkIns: mapEntries(read['check-ins'], (id, c) =>
      entry<CheckIn>({
        id,
        name: c.name,
        channel: c.channel,
        listen: c.listen,
        days: c.days,
        at: c.at,
        until: c.until,
        repeatsMin: c.repeats,
        lastsMin: c.lasts,
        who: c.who,
        control: c.control,
        turn: c.turn,
        missed: c.missed,
      }),
    ),
    ladders: mapEntries(
      read.fallbacks,
      (id, l): Ladder => ({ id, name: l.name, who: l.who, reach: l.reach, rungs: l.rungs }),
    ),
    trials: read.trials,
    accepted: read.accepted,
    cards: {
      size: read.cards.size,
      sheet: read.cards.sheet,
      flip: read.cards.flip,
      notes: read.cards.notes,
      ...(read.cards.qr === true && { qr: true as const }),
      backShiftMm: read.cards['back-shift'],
    } satisfies Cards,
  });
}

function mapEntries<Read, Entry>(
  entries: ReadonlyMap<string, Read>,
  make: (id: string, read: Read) => Entry,
): Map<string, Entry> {
  return new Map([...entries].map(([id, read]) => [id, make(id, read)]));
}

function toRadio(id: string, r: z.output<typeof radio>): Radio {
  const powersW = new Map(
    typeof r.powers === 'number' ? [['high', r.powers] as const] : Object.entries(r.powers ?? {}),
  );
  return entry<Radio>({
    id,
    name: r.name,
    transmits: r.transmits,
    receives: r.receives,
    certified: r.certified,
    memories: r.memories,
    nameLength: r['name-length'],
    stepsHz: r.steps,
    widthsHz: r.widths,
    tones: r.tones,
    modes: r.modes,
    powersW,
    antenna: r.antenna ?? {},
    sensitivityDbm: r.sensitivity,
    battery: r.battery,
    entryOrder: r['entry-order'],
  });
}

function toPacketStation(id: string, s: z.output<typeof packetStation>): PacketStation {
  return entry<PacketStation>({
    id,
    name: s.name ?? id,
    call: s.call,
    place: s.place,
    channel: s.channel,
    powerW: s.power,
    antenna: s.antenna ?? {},
    sensitivityDbm: s.sensitivity,
    dependsOn: s['depends-on'],
    backupMin: s.backup,
  });
}

function toChannel(slotNumber: number, c: z.output<typeof channel>): Channel {
  const basics = {
    slot: slotNumber,
    name: c.name,
    use: c.use,
    mode: c.mode,
    widthHz: c.width,
    tone: c.tone,
    receiveTone: c['receive-tone'],
    power: c.power,
    service: c.service,
  };
  const source =
    c.repeater !== undefined
      ? { kind: 'repeater' as const, repeater: c.repeater }
      : c.simplex !== undefined
        ? { kind: 'simplex' as const, frequencyHz: c.simplex }
        : c.standard !== undefined
          ? { kind: 'standard' as const, standard: c.standard }
          : c.listen !== undefined
            ? { kind: 'listen' as const, frequencyHz: c.listen }
            : { kind: 'split' as const, receiveHz: c.receive ?? 0, transmitHz: c.transmit ?? 0 };
  return { ...entry<object>(basics), ...source } as Channel;
}
