/**
 * The type every country's rules satisfy: flat tables of rows, each row naming the source it was taken
 * from, so that a table can be held against the published one row by row.
 *
 * Frequencies are whole hertz, ranges include both ends, powers are watts, widths hertz. A row without
 * `classes` holds for every class; a row without `kinds` for every kind of emission.
 */
import type { Source } from '../findings/finding.ts';

/** Kinds of emission in the sense in which allocation tables name them. */
export type EmissionKind =
  | 'cw'
  | 'mcw'
  | 'phone'
  | 'image'
  | 'rtty'
  | 'data'
  | 'spread-spectrum'
  | 'test'
  | 'pulse';

/** How the carrier is modulated, where a rule tells voice by that: `digital` is speech as a stream of bits. */
export type Modulation = 'am' | 'fm' | 'ssb' | 'digital';

/** How a power limit is reckoned: at the transmitter's output, or radiated over a half-wave dipole (ERP) or an isotropic antenna (EIRP). */
export type PowerMeasure = 'output' | 'erp' | 'eirp';

export type StationKind =
  | 'handheld'
  | 'mobile'
  | 'base'
  | 'fixed'
  | 'repeater'
  | 'auxiliary'
  | 'beacon'
  | 'digipeater';

/** Where a figure was read. */
export interface Reading {
  /** A key of the country's `sources`. */
  readonly source: string;
  /** Not found in a text that was read; remembered. */
  readonly fromMemory?: true;
}

/** Fields that every row of every table has. */
export interface Row extends Reading {
  readonly note?: string;
}

export interface Span {
  readonly fromHz: number;
  readonly toHz: number;
}

export interface LicenceClass {
  /** As a plan writes it: `general`. */
  readonly id: string;
  readonly name: string;
}

/** A service a station may transmit in, or one that may only be listened to. */
export interface ServiceRow extends Row {
  readonly id: string;
  readonly name: string;
  /** `personal`: each operator; `family`: covers the licensee's immediate family; `none`: no individual licence; `authority`: only with an agency's leave; `never`: listen only. */
  readonly licence: 'personal' | 'family' | 'none' | 'authority' | 'never';
  /** Licence classes, lowest first; empty where the service knows none. */
  readonly classes: readonly LicenceClass[];
  /** True where the equipment must be certified for the service. */
  readonly certifiedEquipment: boolean;
  readonly callSigns: boolean;
  /** Stations may transmit on the service's published channels only, to the hertz. Absent: anywhere in its allocations. */
  readonly channelsOnly?: true;
  /** What must be held or done before transmitting, as the booklet and an explanation would say it. */
  readonly mustHold: string;
  readonly repeaters: boolean;
  /** False where storing and forwarding (a digipeater or mailbox) is barred. */
  readonly storeAndForward: boolean;
  /** Services in which a transmitter that is certified for this one cannot work as well. */
  readonly certifiedApart?: Reading & { readonly from: readonly string[] };
  /** How high an antenna may stand: above ground, or above what carries it where that is higher. */
  readonly antennaHeight?: Reading & { readonly aboveGroundM: number; readonly aboveSupportM?: number };
  readonly identification?: {
    readonly everyMin?: number;
    readonly atStart: boolean;
    readonly atEnd: boolean;
    /** Words for the roll-call script. */
    readonly how: string;
    /** Where the duty itself was read, when not in the row's own source. */
    readonly source?: string;
    readonly fromMemory?: true;
  };
}

/** Where a service may transmit at all, and which classes may. */
export interface AllocationRow extends Row, Span {
  readonly service: string;
  readonly band: string;
  readonly classes?: readonly string[];
  /** What else the rules ask before anybody transmits here, beyond the licence: notice given, a fixed system… */
  readonly condition?: string;
}

/**
 * Which kinds of emission a segment admits. Rows add up: a kind is admitted where any row that holds for
 * the class admits it. Segments that no such row touches admit every kind.
 */
export interface EmissionRow extends Row, Span {
  readonly service: string;
  readonly kinds: readonly EmissionKind[];
  readonly classes?: readonly string[];
  /** Absent: however modulated. */
  readonly modulations?: readonly Modulation[];
  /** The carrier must stand on exactly this frequency. */
  readonly carrierHz?: number;
}

export interface WidthRow extends Row, Span {
  readonly service: string;
  readonly maxWidthHz: number;
  readonly kinds?: readonly EmissionKind[];
  readonly modulations?: readonly Modulation[];
}

export interface PowerRow extends Row, Span {
  readonly service: string;
  readonly maxW: number;
  readonly measure: PowerMeasure;
  readonly classes?: readonly string[];
  readonly kinds?: readonly EmissionKind[];
  readonly modulations?: readonly Modulation[];
  readonly stations?: readonly StationKind[];
}

/** A segment where a kind of station may not transmit: a repeater, an auxiliary station, a digipeater. */
export interface BarredStationRow extends Row, Span {
  readonly service: string;
  readonly stations: readonly StationKind[];
}

export type BandPlanUse =
  | 'cw'
  | 'weak-signal'
  | 'beacon'
  | 'satellite'
  | 'calling'
  | 'simplex'
  | 'repeater-output'
  | 'repeater-input'
  /** Outputs and inputs both, by local choice. */
  | 'repeater'
  | 'link'
  | 'packet'
  /** Packet that reports positions, and nothing else. */
  | 'positions'
  | 'digital'
  | 'image'
  | 'model-control'
  | 'guard'
  | 'emergency'
  | 'mixed';

/** What a voluntary band plan keeps a segment for. Narrower rows stand before wider ones in force. */
export interface BandPlanRow extends Row, Span {
  readonly band: string;
  readonly use: BandPlanUse;
  /** In words, as a finding would say it: "FM simplex". */
  readonly label: string;
  readonly maxWidthHz?: number;
}

/** The usual offset (transmit minus receive, as the user's radio sees it) of repeaters whose output lies in the span. */
export interface OffsetRow extends Row, Span {
  readonly service: string;
  readonly band: string;
  readonly usualHz: readonly number[];
  /** Also met; no finding. */
  readonly alsoHz: readonly number[];
  /** True where the rule leaves no choice, and another offset is an error. */
  readonly fixed?: true;
}

/** Where channels stand: at `fromHz` and every step of one of the widths up from it, as far as `toHz`. */
export interface RasterRow extends Row, Span {
  readonly stepsHz: readonly number[];
}

/** A published channel that a plan names by `standard:`. */
export interface ChannelRow extends Row {
  readonly service: string;
  /** As a plan writes it, `GMRS 20`; matched without regard to case and spacing. */
  readonly name: string;
  /** Other names in use for the same row, found like `name`. */
  readonly alsoNamed?: readonly string[];
  readonly receiveHz: number;
  /** Absent: listen only. */
  readonly transmitHz?: number;
  /** The other half of a repeater pair, when the channel may be used through a repeater: what a user then transmits on. */
  readonly repeaterInputHz?: number;
  readonly maxWidthHz: number;
  /** What sets of today are made for, where older and wider ones are still admitted. */
  readonly usualWidthHz?: number;
  readonly maxW?: number;
  readonly measure?: PowerMeasure;
  readonly stations?: readonly StationKind[];
  readonly kinds: readonly EmissionKind[];
  /** Absent: however modulated. */
  readonly modulations?: readonly Modulation[];
  /** A tone that goes with the channel by rule or custom, hertz (CTCSS). */
  readonly toneHz?: number;
  /** `emergency`, `calling`, `telemetry`… : words for findings and the booklet. */
  readonly role?: string;
  /** True where the row may be used for nothing but its role. */
  readonly roleOnly?: true;
}

/** Frequencies that a group may listen to and must not transmit on. */
export interface ListenOnlyRow extends Row, Span {
  readonly label: string;
}

/** A place where a segment is closed or its power lower. Polygon of [latitude, longitude] in degrees. */
export interface AreaRow extends Row, Span {
  readonly service: string;
  readonly area: string;
  readonly polygon: readonly (readonly [number, number])[];
  /** Absent: closed altogether. */
  readonly maxW?: number;
  /** How `maxW` is reckoned; absent: at the transmitter's output. */
  readonly measure?: PowerMeasure;
  /** Custom or a doubtful reading rather than a rule that was read: worth a warning, no more. */
  readonly advisory?: true;
}

export interface Country {
  readonly code: string;
  readonly name: string;
  /** ISO date as of which the rules were read. */
  readonly asOf: string;
  /** One line that every document prints: what these rules are, and that they do not replace the law. */
  readonly caution: string;
  /** BCP 47: in which its caution and its duties to identify are written; absent: English. */
  readonly language?: string;
  /** Which limits of exposure to radio-frequency fields hold. */
  readonly exposure: 'fcc' | 'icnirp';
  readonly mainsHz: 50 | 60;
  readonly sources: Readonly<Record<string, Source>>;
  readonly services: readonly ServiceRow[];
  readonly allocations: readonly AllocationRow[];
  readonly emissions: readonly EmissionRow[];
  readonly widths: readonly WidthRow[];
  readonly powers: readonly PowerRow[];
  readonly barredStations: readonly BarredStationRow[];
  readonly bandPlan: readonly BandPlanRow[];
  readonly offsets: readonly OffsetRow[];
  readonly channels: readonly ChannelRow[];
  /** A numbering of the region that names frequencies beyond the channels. */
  readonly designators?: 'iaru-region-1';
  readonly listenOnly: readonly ListenOnlyRow[];
  readonly areas: readonly AreaRow[];
  /** Tuning rasters by band plan, where a published one exists. */
  readonly rasters: readonly RasterRow[];
}
