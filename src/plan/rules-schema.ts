/**
 * The language of rules files: a whole country's rules, or what a local coordinator adds to a country's.
 *
 * Every row names its source, and says so where it was not read but remembered. A local file has only tables
 * that reserve or restrict; there is no key by which it could allow something.
 */
import * as z from 'zod';
import type {
  AllocationRow,
  AreaRow,
  BandPlanRow,
  BarredStationRow,
  ChannelRow,
  EmissionRow,
  ListenOnlyRow,
  OffsetRow,
  PowerRow,
  RasterRow,
  ServiceRow,
  WidthRow,
} from '../regulations/country.ts';
import type { ClosedRow } from '../regulations/law.ts';
import { entry } from './entry.ts';
import {
  byId,
  date,
  frequency,
  hertzSpan,
  keyed,
  languageTag,
  line,
  listOf,
  minutes,
  oneOf,
  oneOrMore,
  position,
  quantity,
  reference,
  report,
  tone,
  trueOrFalse,
} from './written.ts';

const sourceKey = /^[a-z0-9][a-z0-9.-]{0,47}$/;
const remembered = trueOrFalse
  .describe('Not found in a text that was read; remembered. It reaches every finding that rests on it.')
  .optional();

const sources = z
  .record(
    z.string().regex(sourceKey, { error: 'a key: small letters, digits, points and hyphens' }),
    keyed(
      {
        document: line('the title of the document'),
        section: line('a section, table or page').optional(),
        date: date.describe('The date of the text that was read.').optional(),
        'from-memory': remembered,
      },
      'a source: document, section, date',
    ).transform(({ 'from-memory': fromMemory, ...rest }) =>
      entry({ ...rest, fromMemory: fromMemory === true ? true : undefined }),
    ),
    { error: 'sources by key, such as { act: { document: Wireless Act } }' },
  )
  .describe('The texts that rows rest on, by the key that rows name.');

const reading = {
  source: line('a key of sources').describe('A key of `sources`.'),
  'from-memory': remembered,
};
/** Every row of every table has these. */
const row = {
  ...reading,
  note: line('a line of text').optional(),
};
const span = hertzSpan.describe('Both ends belong to it, MHz; a single frequency is a spot.');
const service = reference('a service, such as amateur');
const classes = oneOrMore(reference('a class of licence'), 'a list of classes of licence')
  .describe('Absent: every class.')
  .optional();
const kind = oneOf(['cw', 'mcw', 'phone', 'image', 'rtty', 'data', 'spread-spectrum', 'test', 'pulse']);
const modulations = oneOrMore(oneOf(['am', 'fm', 'ssb', 'digital']), 'a list of modulations')
  .describe('Absent: however modulated.')
  .optional();
const kinds = oneOrMore(kind, 'a list of kinds of emission').describe('Absent: every kind.').optional();
const station = oneOf([
  'handheld',
  'mobile',
  'base',
  'fixed',
  'repeater',
  'auxiliary',
  'beacon',
  'digipeater',
]);
const stations = oneOrMore(station, 'a list of kinds of station');
const power = quantity('power', 'a power, such as 5 W', { most: 1_000_000 });
const measure = oneOf(['output', 'erp', 'eirp']).describe(
  'At the output, or radiated over a dipole (erp) or an isotropic antenna (eirp).',
);
const width = quantity('spacing', 'a width in kHz, such as 16');
const offset = quantity('frequencyOffset', 'an offset in MHz, such as -0.6');
const band = line('a band, such as 2 m');

interface WrittenReading {
  readonly source: string;
  readonly 'from-memory'?: boolean | undefined;
}
const readingOf = (read: WrittenReading) => ({
  source: read.source,
  fromMemory: read['from-memory'] === true ? (true as const) : undefined,
});
const rowOf = (read: WrittenReading & { readonly note?: string | undefined }) => ({
  ...readingOf(read),
  note: read.note,
});

function table<Item extends z.ZodType>(item: Item, what: string) {
  return listOf(item, 'a list of rows').default([]).describe(what);
}

const bandPlan = table(
  keyed(
    {
      span,
      band,
      use: oneOf([
        'cw',
        'weak-signal',
        'beacon',
        'satellite',
        'calling',
        'simplex',
        'repeater-output',
        'repeater-input',
        'repeater',
        'link',
        'packet',
        'positions',
        'digital',
        'image',
        'model-control',
        'guard',
        'emergency',
        'mixed',
      ]),
      label: line('what it is kept for, in words'),
      width: width.optional(),
      ...row,
    },
    'a row: span, band, use, label, source',
  ).transform(
    (r): BandPlanRow =>
      entry<BandPlanRow>({
        ...r.span,
        ...rowOf(r),
        band: r.band,
        use: r.use,
        label: r.label,
        maxWidthHz: r.width,
      }),
  ),
  'What a voluntary band plan keeps segments for; the narrowest row that holds a frequency stands first.',
);

const offsetKeys = {
  span,
  service,
  band,
  usual: oneOrMore(offset, 'an offset in MHz, or a list of them').describe(
    'Transmit minus receive as a user’s radio sees it, MHz.',
  ),
  also: oneOrMore(offset, 'an offset in MHz, or a list of them')
    .default([])
    .describe('Also met; no finding.'),
  ...row,
};
const toOffset = (r: z.output<z.ZodObject<typeof offsetKeys>> & { fixed?: boolean | undefined }): OffsetRow =>
  entry<OffsetRow>({
    ...r.span,
    ...rowOf(r),
    service: r.service,
    band: r.band,
    usualHz: r.usual,
    alsoHz: r.also,
    fixed: r.fixed === true ? true : undefined,
  });
const offsetsWords = 'The usual offsets of repeaters whose output lies in a span.';
const what = 'a row: span, service, band, usual, source';
const localOffsets = table(keyed(offsetKeys, what).transform(toOffset), offsetsWords);
const fixed = trueOrFalse.describe('The rule leaves no choice.').optional();
const offsets = table(keyed({ ...offsetKeys, fixed }, what).transform(toOffset), offsetsWords);

const rasters = table(
  keyed(
    { span, steps: oneOrMore(width, 'a step in kHz, or a list of them'), ...row },
    'a row: span, steps, source',
  ).transform((r): RasterRow => entry<RasterRow>({ ...r.span, ...rowOf(r), stepsHz: r.steps })),
  'Where channels stand: at the lower end of the span and every step up from it.',
);

const barredStations = table(
  keyed({ span, service, stations, ...row }, 'a row: span, service, stations, source').transform(
    (r): BarredStationRow =>
      entry<BarredStationRow>({ ...r.span, ...rowOf(r), service: r.service, stations: r.stations }),
  ),
  'Segments where a kind of station may not transmit.',
);

const powers = table(
  keyed(
    {
      span,
      service,
      power,
      measure,
      classes,
      kinds,
      modulations,
      stations: stations.describe('Absent: every kind of station.').optional(),
      ...row,
    },
    'a row: span, service, power, measure, source',
  ).transform(
    (r): PowerRow =>
      entry<PowerRow>({
        ...r.span,
        ...rowOf(r),
        service: r.service,
        maxW: r.power,
        measure: r.measure,
        classes: r.classes,
        kinds: r.kinds,
        modulations: r.modulations,
        stations: r.stations,
      }),
  ),
  'Limits of power; the strictest that applies holds.',
);

const closed = table(
  keyed(
    { span, service, label: line('why, in words'), ...row },
    'a row: span, service, label, source',
  ).transform(
    (r): ClosedRow => entry<ClosedRow>({ ...r.span, ...rowOf(r), service: r.service, label: r.label }),
  ),
  'Segments that the coordinator keeps closed to a service.',
);

const services = table(
  keyed(
    {
      id: service,
      name: line('a name'),
      licence: oneOf(['personal', 'family', 'none', 'authority', 'never']).describe(
        'personal: each operator; family: covers the family of the licensee; none; authority: only with an agency’s leave; never: listen only.',
      ),
      classes: byId(line('a name'), 'names of classes by id, lowest first')
        .default(new Map())
        .describe('Classes of licence, lowest first.'),
      'certified-equipment': trueOrFalse.describe('Radios must be certified for the service.').default(false),
      'call-signs': trueOrFalse.default(false),
      'channels-only': trueOrFalse.describe('Nobody may transmit off the published channels.').default(false),
      'must-hold': line('what must be held before transmitting'),
      repeaters: trueOrFalse.default(false),
      'store-and-forward': trueOrFalse.describe('Digipeaters and mailboxes are allowed.').default(false),
      'certified-apart': keyed(
        { from: oneOrMore(service, 'a list of services'), ...reading },
        'certified-apart: from, source',
      )
        .describe('Services in which a set that is certified for this one cannot work as well.')
        .optional(),
      'antenna-height': keyed(
        {
          'above-ground': quantity('length', 'a height, such as 18.3 m'),
          'above-support': quantity('length', 'a height, such as 6.1 m').optional(),
          ...reading,
        },
        'antenna-height: above-ground, above-support, source',
      )
        .describe(
          'How high an antenna may stand: above ground, or above what carries it where that is higher.',
        )
        .optional(),
      identification: keyed(
        {
          every: minutes('a time, such as 10 min').optional(),
          'at-start': trueOrFalse.default(false),
          'at-end': trueOrFalse.default(false),
          how: line('words for the roll-call script'),
          source: line('a key of sources').optional(),
          'from-memory': remembered,
        },
        'identification: every, at-start, at-end, how',
      ).optional(),
      ...row,
    },
    'a service: id, name, licence, must-hold, source',
  ).transform((r): ServiceRow => {
    const duty = r.identification;
    const apart = r['certified-apart'];
    const height = r['antenna-height'];
    return entry<ServiceRow>({
      ...rowOf(r),
      id: r.id,
      name: r.name,
      licence: r.licence,
      classes: [...r.classes].map(([id, name]) => ({ id, name })),
      certifiedEquipment: r['certified-equipment'],
      callSigns: r['call-signs'],
      channelsOnly: r['channels-only'] ? true : undefined,
      mustHold: r['must-hold'],
      repeaters: r.repeaters,
      storeAndForward: r['store-and-forward'],
      certifiedApart:
        apart && entry<NonNullable<ServiceRow['certifiedApart']>>({ ...readingOf(apart), from: apart.from }),
      antennaHeight:
        height &&
        entry<NonNullable<ServiceRow['antennaHeight']>>({
          ...readingOf(height),
          aboveGroundM: height['above-ground'],
          aboveSupportM: height['above-support'],
        }),
      identification:
        duty &&
        entry<NonNullable<ServiceRow['identification']>>({
          everyMin: duty.every,
          atStart: duty['at-start'],
          atEnd: duty['at-end'],
          how: duty.how,
          source: duty.source,
          fromMemory: duty['from-memory'] === true ? true : undefined,
        }),
    });
  }),
  'Services that stations may transmit in, or only listen to.',
);

const allocations = table(
  keyed(
    { span, service, band, classes, condition: line('what else the rules ask').optional(), ...row },
    'a row: span, service, band, source',
  ).transform(
    (r): AllocationRow =>
      entry<AllocationRow>({
        ...r.span,
        ...rowOf(r),
        service: r.service,
        band: r.band,
        classes: r.classes,
        condition: r.condition,
      }),
  ),
  'Where a service may transmit at all, and which classes may.',
);

const emissions = table(
  keyed(
    {
      span,
      service,
      kinds: oneOrMore(kind, 'a list of kinds of emission'),
      classes,
      modulations,
      carrier: frequency.describe('The only frequency on which the carrier may stand.').optional(),
      ...row,
    },
    'a row: span, service, kinds, source',
  ).transform(
    (r): EmissionRow =>
      entry<EmissionRow>({
        ...r.span,
        ...rowOf(r),
        service: r.service,
        kinds: r.kinds,
        classes: r.classes,
        modulations: r.modulations,
        carrierHz: r.carrier,
      }),
  ),
  'Kinds of emission that segments admit; rows add up, and where there is none every kind is.',
);

const widths = table(
  keyed(
    { span, service, width, kinds, modulations, ...row },
    'a row: span, service, width, source',
  ).transform(
    (r): WidthRow =>
      entry<WidthRow>({
        ...r.span,
        ...rowOf(r),
        service: r.service,
        maxWidthHz: r.width,
        kinds: r.kinds,
        modulations: r.modulations,
      }),
  ),
  'The widest signal that a segment admits.',
);

const channels = table(
  keyed(
    {
      service,
      name: line('a name, such as GMRS 20').describe('As plans write it after `standard:`.'),
      'also-named': oneOrMore(line('a name'), 'a list of names').optional(),
      receive: frequency,
      transmit: frequency.describe('Absent: listen only.').optional(),
      'repeater-input': frequency
        .describe('What users transmit on through a repeater of the pair.')
        .optional(),
      width,
      'usual-width': width
        .describe('What sets of today are made for, where older and wider ones are still admitted.')
        .optional(),
      power: power.optional(),
      measure: measure.optional(),
      stations: stations.describe('Absent: every kind of station.').optional(),
      kinds: oneOrMore(kind, 'a list of kinds of emission').default(['phone']),
      modulations,
      tone: tone.describe('A CTCSS tone that goes with the channel.').optional(),
      role: line('what it is for, such as emergency').optional(),
      'role-only': trueOrFalse.describe('For nothing but its role.').optional(),
      ...row,
    },
    'a channel: service, name, receive, transmit, width, source',
  ).transform((r, context): ChannelRow => {
    if (r.tone?.kind === 'dcs')
      report(context, 'A tone that goes with a published channel is a CTCSS frequency.');
    return entry<ChannelRow>({
      ...rowOf(r),
      service: r.service,
      name: r.name,
      alsoNamed: r['also-named'],
      receiveHz: r.receive,
      transmitHz: r.transmit,
      repeaterInputHz: r['repeater-input'],
      maxWidthHz: r.width,
      usualWidthHz: r['usual-width'],
      maxW: r.power,
      measure: r.measure,
      stations: r.stations,
      kinds: r.kinds,
      modulations: r.modulations,
      toneHz: r.tone?.kind === 'ctcss' ? r.tone.tenthsHz / 10 : undefined,
      role: r.role,
      roleOnly: r['role-only'] === true ? true : undefined,
    });
  }),
  'Published channels, by the name that plans write after `standard:`.',
);

const listenOnly = table(
  keyed({ span, label: line('what is heard there'), ...row }, 'a row: span, label, source').transform(
    (r): ListenOnlyRow => entry<ListenOnlyRow>({ ...r.span, ...rowOf(r), label: r.label }),
  ),
  'What a group may listen to and must not transmit on.',
);

const areas = table(
  keyed(
    {
      span,
      service,
      area: line('the place, in words'),
      polygon: listOf(position, 'a list of positions').describe('Its corners in turn, three or more.'),
      power: power.describe('Absent: closed altogether.').optional(),
      measure: measure.optional(),
      advisory: trueOrFalse.describe('Custom or a doubtful reading: worth a warning, no more.').optional(),
      ...row,
    },
    'a row: span, service, area, polygon, source',
  ).transform((r, context): AreaRow => {
    if (r.polygon.length < 3) report(context, 'An area has three corners at least.');
    return entry<AreaRow>({
      ...r.span,
      ...rowOf(r),
      service: r.service,
      area: r.area,
      polygon: r.polygon.map(({ latitudeDeg, longitudeDeg }) => [latitudeDeg, longitudeDeg] as const),
      maxW: r.power,
      measure: r.measure,
      advisory: r.advisory === true ? true : undefined,
    });
  }),
  'Places where a segment is closed or its power lower.',
);

const version = z
  .literal(1, { error: '1, the version of the language of rules files' })
  .describe('Version of the language of rules files.');
const shared = { 'band-plan': bandPlan, rasters, 'barred-stations': barredStations, powers };

export const countryKeys = {
  'readback-rules': version,
  scope: z.literal('country').describe('A whole country.'),
  code: reference('a code, such as us').describe('A short code of the country.'),
  name: line('the name of the country'),
  'as-of': date.describe('The day as of which the rules were read.'),
  caution: line('one line that every document prints, such as: A planning aid, not legal advice.').describe(
    'One line that every document prints.',
  ),
  language: languageTag
    .describe('In which the caution and the duties to identify are written; English if left out.')
    .optional(),
  exposure: oneOf(['fcc', 'icnirp']).describe('Whose limits of exposure hold.').default('icnirp'),
  mains: z
    .union([z.literal(50), z.literal(60)], { error: '50 or 60, the frequency of the mains in Hz' })
    .describe('Frequency of the mains, Hz.')
    .default(50),
  sources,
  services,
  allocations,
  emissions,
  widths,
  ...shared,
  offsets,
  channels,
  'listen-only': listenOnly,
  areas,
};

const localKeys = {
  'readback-rules': version,
  scope: z.literal('local').describe('What a local coordinator adds to the rules of a country.'),
  name: line('whose rules these are').describe('Whose rules these are.'),
  sources,
  ...shared,
  offsets: localOffsets,
  closed,
};

export const rulesSchema = z.discriminatedUnion(
  'scope',
  [
    keyed(countryKeys, 'rules: a mapping that begins with readback-rules: 1'),
    keyed(localKeys, 'rules: a mapping that begins with readback-rules: 1'),
  ],
  {
    error: ({ code, input }) =>
      code === 'invalid_union' && typeof input === 'object' && input !== null && !Array.isArray(input)
        ? 'country for a whole country’s rules, local for what a coordinator adds to them'
        : 'rules: a mapping that begins with readback-rules: 1',
  },
);
