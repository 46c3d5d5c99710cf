/**
 * Random plans that keep the law of a country, made from the rows of its tables alone: the frequencies by
 * cutting spans against each other, and not by asking the functions that are under test.
 */
import fc from 'fast-check';
import type {
  BarredStationRow,
  ChannelRow,
  Country,
  OffsetRow,
  Span,
} from '../../src/regulations/country.ts';

/** A plan as it is written, simple enough to be changed in one place. JSON is YAML as well. */
export interface WrittenPlan {
  readonly rules: string;
  readonly timezone: string;
  radios: Record<string, WrittenRadio>;
  members: Record<string, WrittenMember>;
  repeaters: Record<string, WrittenRepeater>;
  channels: Record<number, WrittenChannel>;
  checkIns: Record<string, { channel: number; who: string[]; control: string[] }>;
  ladder: { who: string[]; reach: string[]; channels: number[] };
}

export interface WrittenRadio {
  transmits: string[];
  certified: string[];
  powers: Record<string, string>;
}

export interface WrittenMember {
  licences: Record<string, { class?: string; call?: string; expires: string }>;
  radios: string[];
}

export interface WrittenRepeater {
  output: string;
  offset: string;
  tone?: string;
  width: number;
}

export interface WrittenChannel {
  repeater?: string;
  simplex?: string;
  standard?: string;
  tone?: string;
  width?: number;
}

export const plainTones = [
  '67.0',
  '77.0',
  '88.5',
  '103.5',
  '114.8',
  '127.3',
  '141.3',
  '162.2',
  '186.2',
  '203.5',
];

/** Voice of 12.5 kHz spacing fills 11 kHz (11K0F3E); the rest is room to spare. */
const halfWidthHz = 8_000;
const stepHz = 12_500;
const tuningHz = 1_250;

/** Bands in which a group would work, where the country has them. */
const worked: readonly Span[] = [
  { fromHz: 144_000_000, toHz: 148_000_000 },
  { fromHz: 420_000_000, toHz: 450_000_000 },
];

export function legalPlan(country: Country): fc.Arbitrary<WrittenPlan> {
  const classes = country.services.find(({ id }) => id === 'amateur')?.classes ?? [];
  const open = channelRows(country);
  return fc
    .record({
      klass: classes.length === 0 ? fc.constant(undefined) : fc.constantFrom(...classes.map(({ id }) => id)),
      repeaters: fc.uniqueArray(fc.nat(), { minLength: 1, maxLength: 3 }),
      simplexes: fc.uniqueArray(fc.nat(), { minLength: 1, maxLength: 4 }),
      published: open.length === 0 ? fc.constant([]) : fc.subarray([...open], { minLength: 1, maxLength: 3 }),
      tones: fc.shuffledSubarray(plainTones, { minLength: 10 }),
      licensed: fc.integer({ min: 2, max: 5 }),
      year: fc.integer({ min: 2028, max: 2036 }),
    })
    .map((chosen) => write(country, chosen));
}

interface Chosen {
  readonly klass: string | undefined;
  readonly repeaters: readonly number[];
  readonly simplexes: readonly number[];
  readonly published: readonly ChannelRow[];
  readonly tones: readonly string[];
  readonly licensed: number;
  readonly year: number;
}

function write(country: Country, chosen: Chosen): WrittenPlan {
  const { klass, published, tones } = chosen;
  const voice = voiceSpans(country, klass);
  const pairs = pairsOf(country, voice);
  const places = simplexPlaces(country, voice);
  const repeaters: Record<string, WrittenRepeater> = {};
  const channels: Record<number, WrittenChannel> = {};
  let slot = 0;
  for (const [k, pick] of chosen.repeaters.entries()) {
    const pair = pairs[pick % Math.max(1, pairs.length)];
    if (!pair || Object.values(repeaters).some(({ output }) => output === megahertz(pair.outputHz))) continue;
    repeaters[`r${k}`] = {
      output: megahertz(pair.outputHz),
      offset: megahertz(pair.offsetHz),
      tone: tones[k] ?? '100.0',
      width: 12.5,
    };
    slot += 1;
    channels[slot] = { repeater: `r${k}` };
  }
  const amateurSlots = Object.keys(channels).map(Number);
  for (const pick of chosen.simplexes) {
    const hz = places[pick % Math.max(1, places.length)];
    if (hz === undefined || Object.values(channels).some(({ simplex }) => simplex === megahertz(hz)))
      continue;
    slot += 1;
    channels[slot] = { simplex: megahertz(hz), width: 12.5 };
    amateurSlots.push(slot);
  }
  const services = [...new Set(published.map(({ service }) => service))];
  const openSlots: number[] = [];
  for (const row of published) {
    slot += 1;
    channels[slot] = { standard: row.name };
    openSlots.push(slot);
  }
  const radios: Record<string, WrittenRadio> = {
    amateur: {
      transmits: worked.map(({ fromHz, toHz }) => `${fromHz / 1e6}-${toHz / 1e6}`),
      certified: ['amateur'],
      powers: { high: '5 W', low: '1 W' },
    },
  };
  for (const service of services) {
    const rows = published.filter((row) => row.service === service);
    radios[service] = {
      transmits: rows.map((row) => megahertz(row.transmitHz ?? row.receiveHz)),
      certified: [service],
      powers: { only: '500 mW' },
    };
  }
  const members: Record<string, WrittenMember> = {};
  for (let k = 0; k < chosen.licensed; k++) {
    members[`a${k}`] = {
      licences: {
        amateur: {
          ...(klass !== undefined && { class: klass }),
          call: `KX${k}XA${String.fromCharCode(65 + k)}`,
          expires: `${chosen.year}-06-30`,
        },
        ...(services.includes('gmrs') && { gmrs: { call: `WZZZ40${k}`, expires: `${chosen.year}-06-30` } }),
      },
      radios: ['amateur', ...services],
    };
  }
  const everybody = Object.keys(members);
  const used = [...amateurSlots, ...openSlots];
  return {
    rules: country.code,
    timezone: 'Etc/GMT',
    radios,
    members,
    repeaters,
    channels,
    checkIns: Object.fromEntries(
      used.map((each) => [`c${each}`, { channel: each, who: everybody, control: everybody.slice(0, 1) }]),
    ),
    ladder: { who: everybody, reach: everybody.slice(0, 2), channels: used.slice(0, 4) },
  };
}

/** As the coordinator would have it in the file. */
export function planText(plan: WrittenPlan): string {
  const { radios, members, repeaters, channels, checkIns, ladder } = plan;
  const named = (entries: object, more: (id: string) => object = () => ({})) =>
    Object.fromEntries(
      Object.entries(entries).map(([id, entry]) => [id, { name: `Name ${id}`, ...entry, ...more(id) }]),
    );
  const lines: readonly [string, object | number][] = [
    ['readback', 1],
    [
      'plan',
      {
        title: 'Made by chance',
        revision: 1,
        effective: '2026-12-01',
        'review-by': '2027-06-01',
        timezone: plan.timezone,
        rules: plan.rules,
        coordinator: 'a0',
      },
    ],
    [
      'places',
      {
        base: { name: 'Base', at: '10.0, -140.0', kind: 'base' },
        ...Object.fromEntries(
          Object.keys(repeaters).map((id, k) => [
            `hill-${id}`,
            { name: `Hill ${k}`, at: `${11 + 4 * k}.0, -140.0`, kind: 'high-ground' },
          ]),
        ),
      },
    ],
    [
      'radios',
      named(radios, () => ({
        receives: ['26-30', '136-174', '400-480'],
        memories: '1-99',
        steps: [5, 6.25, 12.5],
        widths: [25, 12.5],
        tones: ['ctcss', 'dcs'],
        modes: ['fm'],
        antenna: { gain: '0 dBd', height: '1.5 m', carried: 'hand' },
      })),
    ],
    ['members', named(members, () => ({ at: 'base' }))],
    [
      'repeaters',
      named(repeaters, (id) => ({
        call: `W${id.slice(1)}XRR`,
        place: `hill-${id}`,
        power: '5 W',
        'time-out': '3 min',
      })),
    ],
    ['channels', named(channels)],
    [
      'check-ins',
      named(checkIns, (id) => ({
        at: `${String(Number(id.slice(1)) + 6).padStart(2, '0')}:00`,
        lasts: '5 min',
        missed: 'first',
      })),
    ],
    [
      'fallbacks',
      {
        first: {
          name: 'First',
          who: ladder.who,
          reach: ladder.reach,
          rungs: [
            ...ladder.channels.map((channel, k) => ({
              grade: k === 0 ? 'primary' : 'alternate',
              channel,
              calls: 3,
              within: '5 min',
            })),
            { grade: 'emergency', meet: 'base', at: 'next full hour' },
          ],
        },
      },
    ],
  ];
  return lines.map(([key, value]) => `${key}: ${JSON.stringify(value)}\n`).join('');
}

export function megahertz(hz: number): string {
  return (hz / 1e6).toFixed(hz % 1_000 === 0 ? 3 : 5);
}

/** Where voice of FM may be sent by a class: allocations and emissions cut against each other, edges kept off. */
function voiceSpans(country: Country, klass: string | undefined): readonly Span[] {
  const isFor = (row: { readonly classes?: readonly string[] }) =>
    klass === undefined || (row.classes?.includes(klass) ?? true);
  const allocated = merged(
    country.allocations.filter((row) => row.service === 'amateur' && isFor(row)),
  ).flatMap((span) => worked.flatMap((band) => cut(span, band)));
  const emissions = country.emissions.filter((row) => row.service === 'amateur' && isFor(row));
  const voice = emissions.filter(
    (row) =>
      row.kinds.includes('phone') && row.carrierHz === undefined && (row.modulations?.includes('fm') ?? true),
  );
  const spoken = allocated.flatMap((span) =>
    emissions.some((row) => cut(row, span).length > 0)
      ? merged(voice).flatMap((row) => cut(row, span))
      : [span],
  );
  const closed = country.areas.filter((row) => row.service === 'amateur' && row.maxW === undefined);
  return without([...spoken], [...closed, ...country.listenOnly]).filter(
    ({ fromHz, toHz }) => toHz - fromHz > 2 * halfWidthHz,
  );
}

interface Pair {
  readonly outputHz: number;
  readonly offsetHz: number;
}

function pairsOf(country: Country, voice: readonly Span[]): readonly Pair[] {
  const open = without(
    voice,
    country.barredStations.filter((row: BarredStationRow) => row.stations.includes('repeater')),
  );
  const rows: readonly OffsetRow[] = country.offsets.filter((row) => row.service === 'amateur');
  return rows.flatMap((row) =>
    row.usualHz.flatMap((offsetHz) =>
      carriersIn(country, row).flatMap((outputHz) =>
        offsetHz !== 0 && isInside(outputHz, open) && isInside(outputHz + offsetHz, open)
          ? [{ outputHz, offsetHz }]
          : [],
      ),
    ),
  );
}

function simplexPlaces(country: Country, voice: readonly Span[]): readonly number[] {
  return country.bandPlan
    .filter((row) => row.use === 'simplex' && worked.some((band) => cut(band, row).length > 0))
    .flatMap((row) => carriersIn(country, row))
    .filter((hz) => isInside(hz, voice));
}

/** Channels that a hand-held with an aerial like a dipole may use for FM voice at half a watt. */
function channelRows(country: Country): readonly ChannelRow[] {
  return country.channels.filter((row) => {
    const service = country.services.find(({ id }) => id === row.service);
    return (
      service?.channelsOnly === true &&
      (service.licence === 'none' || service.licence === 'family') &&
      row.transmitHz !== undefined &&
      !row.roleOnly &&
      row.transmitHz > 100e6 &&
      row.maxWidthHz >= 11_000 &&
      (row.maxW ?? 1) >= 0.5 &&
      row.kinds.includes('phone') &&
      (row.modulations?.includes('fm') ?? true) &&
      (row.stations?.includes('handheld') ?? true)
    );
  });
}

/** Where a published raster holds, its channels; elsewhere every 12.5 kHz. Calling frequencies are left free. */
function carriersIn(country: Country, { fromHz, toHz }: Span): readonly number[] {
  const within = (row: Span, hz: number) => hz >= row.fromHz && hz <= row.toHz;
  const calling = new Set(country.bandPlan.filter(({ use }) => use === 'calling').map((row) => row.fromHz));
  const first = Math.ceil(fromHz / tuningHz) * tuningHz;
  const count = Math.max(0, Math.floor((toHz - first) / tuningHz) + 1);
  return Array.from({ length: count }, (_, k) => first + k * tuningHz).filter((hz) => {
    const rasters = country.rasters.filter((row) => within(row, hz));
    const fits =
      rasters.length === 0
        ? hz % stepHz === 0
        : rasters.some((row) => row.stepsHz.some((step) => (hz - row.fromHz) % step === 0));
    // A set that goes in steps of 5 and 6.25 kHz reaches these.
    const reached = hz % 5_000 === 0 || hz % 6_250 === 0;
    return fits && reached && !calling.has(hz);
  });
}

function isInside(hz: number, spans: readonly Span[]): boolean {
  return spans.some(({ fromHz, toHz }) => hz - halfWidthHz >= fromHz && hz + halfWidthHz <= toHz);
}

function cut(a: Span, b: Span): readonly Span[] {
  const [fromHz, toHz] = [Math.max(a.fromHz, b.fromHz), Math.min(a.toHz, b.toHz)];
  return fromHz < toHz ? [{ fromHz, toHz }] : [];
}

function merged(spans: readonly Span[]): readonly Span[] {
  const all: { fromHz: number; toHz: number }[] = [];
  for (const { fromHz, toHz } of spans.toSorted((a, b) => a.fromHz - b.fromHz)) {
    const last = all.at(-1);
    if (last && fromHz <= last.toHz) last.toHz = Math.max(last.toHz, toHz);
    else all.push({ fromHz, toHz });
  }
  return all;
}

function without(spans: readonly Span[], closed: readonly Span[]): readonly Span[] {
  return closed.reduce<readonly Span[]>(
    (left, hole) =>
      left.flatMap((span) => [
        ...cut(span, { fromHz: 0, toHz: hole.fromHz }),
        ...cut(span, { fromHz: hole.toHz, toHz: 1e12 }),
      ]),
    spans,
  );
}
