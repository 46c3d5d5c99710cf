/** What the schema gives, put into the shape of the model: names in code, ids and slots inside their entries. */
import type * as z from 'zod';
import { entry } from './entry.ts';
import type {
  Asset,
  Cards,
  Channel,
  CheckIn,
  Ladder,
  Member,
  PacketStation,
  Place,
  Plan,
  Radio,
  Repeater,
} from './model.ts';
import type { planSchema } from './schema.ts';
import type { channel } from './sections/channels.ts';
import type { radio } from './sections/radios-and-members.ts';
import type { packetStation } from './sections/stations.ts';

export function toPlan(read: z.output<typeof planSchema>): Plan {
  const { plan: head, packet: stations } = read;
  return entry<Plan>({
    title: head.title,
    revision: head.revision,
    effective: head.effective,
    reviewBy: head['review-by'],
    ...(head['language'] !== undefined && { language: head['language'] }),
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
