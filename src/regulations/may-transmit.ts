/**
 * Whether a station may transmit a signal in a service at all: the one place where allocation, class,
 * emission, width, segment edges and places are put together. Power is asked apart ({@link ./power-limit.ts}).
 */
import { formatFrequency, formatSpacing } from '../radio/format-quantity.ts';
import { areasAt } from './areas-at.ts';
import { barredStation } from './barred-station.ts';
import { channelsSentOn } from './channels.ts';
import type {
  AllocationRow,
  ChannelRow,
  EmissionKind,
  Modulation,
  Row,
  ServiceRow,
  Span,
  StationKind,
} from './country.ts';
import type { Point } from './ground.ts';
import { type Law, serviceById } from './law.ts';
import { nearby } from './nearby.ts';
import { occupiedSpan, type Signal } from './signal.ts';
import { covered, holds, overlaps } from './span.ts';
import { widthLimit } from './width-limit.ts';

export interface Transmission extends Signal {
  readonly service: string;
  /** Absent: whether an operator of any class may. */
  readonly licenceClass?: string;
  readonly kind: EmissionKind;
  /** Absent: however modulated; a rule about the modulation is then taken as met. */
  readonly modulation?: Modulation;
  /** Absent: an ordinary station under its operator's hand. */
  readonly station?: StationKind;
  /** Where the station stands; without it the rules of places are not looked at. */
  readonly at?: Point;
  /** The agency that holds the licence has given leave in writing. */
  readonly authorised?: boolean;
}

export type TransmitRefusal =
  | 'unknown-service'
  | 'listen-only'
  | 'needs-authority'
  /** No class and no channel of the service has the frequency. */
  | 'outside'
  /** Other classes have it. */
  | 'class'
  /** The carrier is inside, a part of the signal is not. */
  | 'edge'
  | 'kind'
  | 'modulation'
  | 'width'
  | 'station'
  /** Closed at this place. */
  | 'area'
  /** Closed by a local coordinator. */
  | 'closed';

export type TransmitAnswer =
  | { readonly may: true; readonly row: AllocationRow | ChannelRow }
  | {
      readonly may: false;
      readonly why: TransmitRefusal;
      /** What is and what the rules have, with the figures: a clause to follow the channel's name. */
      readonly text: string;
      /** The row that refuses, for its source. */
      readonly row?: Row;
    };

export function mayTransmit(law: Law, asked: Transmission): TransmitAnswer {
  const service = serviceById(law, asked.service);
  if (!service) return refuse('unknown-service', `${asked.service} is no service of ${law.country.name}`);
  if (service.licence === 'never')
    return refuse('listen-only', `${service.name} may only be listened to`, service);
  if (service.licence === 'authority' && !asked.authorised) {
    return refuse('needs-authority', `${service.name} need ${service.mustHold}`, service);
  }
  const onSegments = law.country.allocations.some((row) => row.service === service.id);
  const answer =
    onSegments && !service.channelsOnly ? inSegments(law, service, asked) : onChannels(law, service, asked);
  if (!answer.may) return answer;
  return restricted(law, service, asked) ?? answer;
}

function inSegments(law: Law, service: ServiceRow, asked: Transmission): TransmitAnswer {
  const { frequencyHz, licenceClass, kind, modulation } = asked;
  const occupied = occupiedSpan(asked);
  const at = `${formatFrequency(frequencyHz)} MHz`;
  const rows = nearby(law.country.allocations, occupied.fromHz, occupied.toHz).filter(
    (row) => row.service === service.id,
  );
  const anybodys = rows.find((row) => holds(row, frequencyHz));
  if (!anybodys) return refuse('outside', `${at} lies outside every segment of the ${service.name}`);

  const own = rows.filter((row) => isFor(row, licenceClass));
  const row = own.find((candidate) => holds(candidate, frequencyHz));
  if (!row) {
    const may = service.classes.filter(({ id }) => rows.some((r) => holds(r, frequencyHz) && isFor(r, id)));
    const who = may.map(({ name }) => name).join(', ');
    return refuse(
      'class',
      `${at} is not open to class ${className(service, licenceClass)}, only to ${who}`,
      anybodys,
    );
  }
  if (!covered(occupied, own)) return refuse('edge', `${spill(asked)} ${span(row)}`, row);

  const kinds = nearby(law.country.emissions, occupied.fromHz, occupied.toHz).filter(
    (r) => r.service === service.id && isFor(r, licenceClass) && overlaps(r, occupied),
  );
  if (kinds.length > 0) {
    const ofKind = kinds.filter(
      (r) => r.kinds.includes(kind) && (r.carrierHz === undefined || r.carrierHz === frequencyHz),
    );
    const admitting = ofKind.filter(
      (r) => modulation === undefined || (r.modulations?.includes(modulation) ?? true),
    );
    if (!covered(occupied, admitting)) {
      const here = admitting.find((r) => holds(r, frequencyHz));
      if (here) return refuse('edge', `${spill(asked)} the part for ${kind}, ${span(here)}`, here);
      const otherwise = ofKind.find((r) => holds(r, frequencyHz));
      if (otherwise) {
        const how = otherwise.modulations?.join(' or ') ?? '';
        return refuse(
          'modulation',
          `${kind} at ${at} is admitted as ${how} only, not as ${modulation}`,
          otherwise,
        );
      }
      const admitted = [...new Set(kinds.filter((r) => holds(r, frequencyHz)).flatMap((r) => r.kinds))];
      const forClass = licenceClass ? ` for class ${className(service, licenceClass)}` : '';
      return refuse(
        'kind',
        `${kind} is not admitted at ${at}${forClass}, only ${admitted.join(', ')}`,
        kinds.find((r) => holds(r, frequencyHz)),
      );
    }
  }
  return tooWide(law, asked) ?? { may: true, row };
}

function onChannels(law: Law, service: ServiceRow, asked: Transmission): TransmitAnswer {
  const { frequencyHz, kind, modulation, station } = asked;
  const at = `${formatFrequency(frequencyHz)} MHz`;
  // The input of a pair is where users send; a repeater sends on the output alone.
  const here = channelsSentOn(law, frequencyHz).filter(
    (row) =>
      row.service === service.id &&
      row.transmitHz !== undefined &&
      (row.transmitHz === frequencyHz || station !== 'repeater'),
  );
  if (here.length === 0) {
    const near = law.country.channels
      .filter((row) => row.service === service.id && row.transmitHz !== undefined)
      .toSorted((a, b) => apart(a, frequencyHz) - apart(b, frequencyHz))[0];
    const nearest = near
      ? `; the nearest is ${near.name}, ${formatFrequency(near.transmitHz ?? near.receiveHz)} MHz`
      : '';
    return refuse('outside', `${at} is no channel of the ${service.name}${nearest}`, near);
  }
  const forStation = here.filter((row) => station === undefined || (row.stations?.includes(station) ?? true));
  const first = here[0];
  if (forStation.length === 0) {
    return refuse(
      'station',
      `${first?.name ?? at} is not open to a ${station} station, only to ${first?.stations?.join(', ')}`,
      first,
    );
  }
  const ofKind = forStation.filter((row) => row.kinds.includes(kind));
  if (ofKind.length === 0) {
    return refuse(
      'kind',
      `${kind} is not admitted on ${first?.name ?? at}, only ${first?.kinds.join(', ')}`,
      first,
    );
  }
  const row = ofKind.find((r) => modulation === undefined || (r.modulations?.includes(modulation) ?? true));
  if (!row) {
    return refuse(
      'modulation',
      `${kind} on ${first?.name ?? at} is admitted as ${first?.modulations?.join(' or ')} only, not as ${modulation}`,
      first,
    );
  }
  return tooWide(law, asked) ?? { may: true, row };
}

function tooWide(law: Law, asked: Transmission): TransmitAnswer | undefined {
  const limit = widthLimit(law, asked);
  if (!limit || asked.widthHz <= limit.maxWidthHz) return undefined;
  const figures = `${formatSpacing(asked.widthHz)} wide at ${formatFrequency(asked.frequencyHz)} MHz; at most ${formatSpacing(limit.maxWidthHz)}`;
  return refuse('width', figures, limit);
}

/** What bars a station that has the frequency, the kind and the width: what it is, where it stands, who closed the segment. */
function restricted(law: Law, service: ServiceRow, asked: Transmission): TransmitAnswer | undefined {
  const { frequencyHz, station, at } = asked;
  const occupied = occupiedSpan(asked);
  if (
    (station === 'repeater' && !service.repeaters) ||
    (station === 'digipeater' && !service.storeAndForward)
  ) {
    return refuse('station', `the ${service.name} has no ${station}s`, service);
  }
  const barred = station && barredStation(law, station, occupied.fromHz, occupied.toHz, service.id);
  if (barred)
    return refuse(
      'station',
      `a ${station} at ${formatFrequency(frequencyHz)} MHz lies in ${span(barred)}, where it may not transmit`,
      barred,
    );
  const closed = law.local
    .flatMap((rules) => rules.closed)
    .find((row) => row.service === service.id && overlaps(row, occupied));
  if (closed)
    return refuse(
      'closed',
      holds(closed, frequencyHz)
        ? `${formatFrequency(frequencyHz)} MHz lies in ${span(closed)}: ${closed.label}`
        : `the signal at ${formatFrequency(frequencyHz)} MHz reaches into ${span(closed)}: ${closed.label}`,
      closed,
    );
  const area =
    at &&
    areasAt(law, at[0], at[1], frequencyHz).find(
      (row) => row.service === service.id && row.maxW === undefined && !row.advisory,
    );
  if (area) return refuse('area', `${formatFrequency(frequencyHz)} MHz is closed ${area.area}`, area);
  return undefined;
}

function refuse(why: TransmitRefusal, text: string, row?: Row): TransmitAnswer {
  return { may: false, why, text, ...(row && { row }) };
}

function isFor(row: { readonly classes?: readonly string[] }, licenceClass: string | undefined): boolean {
  return licenceClass === undefined || (row.classes?.includes(licenceClass) ?? true);
}

function className(service: ServiceRow, id: string | undefined): string {
  return service.classes.find((row) => row.id === id)?.name ?? id ?? 'none';
}

function span({ fromHz, toHz }: Span): string {
  return `${formatFrequency(fromHz)}-${formatFrequency(toHz)} MHz`;
}

function spill(asked: Transmission): string {
  const { fromHz, toHz } = occupiedSpan(asked);
  return `the signal fills ${span({ fromHz: Math.floor(fromHz), toHz: Math.ceil(toHz) })} and spills out of`;
}

function apart(row: ChannelRow, frequencyHz: number): number {
  return Math.abs((row.transmitHz ?? row.receiveHz) - frequencyHz);
}
