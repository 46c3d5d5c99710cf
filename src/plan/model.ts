/**
 * What was written: one group's plan in typed form, units settled, nothing yet worked out from it.
 *
 * Frequencies and widths are whole hertz, lengths metres, powers watts, gains dBi, levels dBm, durations
 * minutes. Everything named in a plan is held in a `Map` in the order of the file, so that no id can
 * collide with a property of an object. Ids are not yet known to lead anywhere: that is for the checks.
 */
import type { Tone } from '../radio/tone.ts';
import type { FeedLine } from '../reach/feed-line.ts';
import type { Heard } from '../reach/heard.ts';

export interface Plan {
  readonly title: string;
  readonly revision: number;
  /** ISO dates. */
  readonly effective: string;
  readonly reviewBy?: string;
  /** Of the documents; English where the plan names none. */
  /** Of the documents, BCP 47; English if left out. */
  readonly language?: string;
  /** IANA name. */
  readonly timezone: string;
  /** A country's code (or a file that describes one), then files of local coordination. */
  readonly rules: readonly [string, ...string[]];
  readonly coordinator?: string;
  /** File of clean audits, beside the plan: which radio holds which revision. */
  readonly record?: string;
  readonly notes: readonly string[];
  readonly places: ReadonlyMap<string, Place>;
  readonly terrain: Terrain;
  readonly radios: ReadonlyMap<string, Radio>;
  readonly members: ReadonlyMap<string, Member>;
  readonly teams: ReadonlyMap<string, readonly string[]>;
  readonly assets: ReadonlyMap<string, Asset>;
  readonly repeaters: ReadonlyMap<string, Repeater>;
  readonly mailboxes: ReadonlyMap<string, PacketStation>;
  readonly digipeaters: ReadonlyMap<string, PacketStation>;
  readonly routes: readonly Route[];
  /** By slot number. */
  readonly channels: ReadonlyMap<number, Channel>;
  readonly checkIns: ReadonlyMap<string, CheckIn>;
  readonly ladders: ReadonlyMap<string, Ladder>;
  readonly trials: readonly Trial[];
  readonly accepted: readonly Acceptance[];
  readonly cards: Cards;
}

export interface Position {
  readonly latitudeDeg: number;
  readonly longitudeDeg: number;
}

export interface Place {
  readonly id: string;
  readonly name: string;
  readonly at: Position;
  readonly elevationM?: number;
  readonly kind: 'base' | 'high-ground' | 'field' | 'relay';
}

export interface Terrain {
  /** Relative to the plan file. */
  readonly files: readonly string[];
  /** Height of the trees met around field places. */
  readonly woodlandM?: number;
  readonly profiles: readonly HandProfile[];
}

/** Ground heights typed from a map. */
export interface HandProfile {
  readonly from: string;
  readonly to: string;
  readonly heights: readonly (readonly [distanceM: number, heightM: number])[];
}

export interface Antenna {
  readonly gainDbi?: number;
  /** Above ground. */
  readonly heightM?: number;
  readonly carried?: Carried;
  /** A hand-held with a counterpoise wire hung below it, or a mobile on a metal roof. */
  readonly counterpoise?: boolean;
  /** Stated outright; else it follows from the feed line. */
  readonly feedLossDb?: number;
  readonly feed?: { readonly line: FeedLine; readonly lengthM: number };
}

export type Carried = 'hand' | 'chest' | 'belt' | 'vehicle' | 'mast';

/** A field that a radio's menu asks for. */
export type EntryField =
  | 'receive'
  | 'transmit'
  | 'step'
  | 'mode'
  | 'offset-direction'
  | 'offset'
  | 'tone-kind'
  | 'tone'
  | 'receive-tone'
  | 'width'
  | 'power'
  | 'name';

export type Mode = 'fm' | 'am' | 'ssb' | 'cw' | 'packet';

export interface HertzSpan {
  readonly fromHz: number;
  readonly toHz: number;
}

/** A kind of radio in the group. */
export interface Radio {
  readonly id: string;
  readonly name: string;
  readonly transmits: readonly HertzSpan[];
  readonly receives: readonly HertzSpan[];
  /** Services it may lawfully transmit in. */
  readonly certified: readonly string[];
  readonly memories: readonly { readonly from: number; readonly to: number }[];
  /** Characters its display shows of a channel name; 0 = none. */
  readonly nameLength: number;
  readonly stepsHz: readonly number[];
  readonly widthsHz: readonly number[];
  /** Kinds of tone it can send, or single tones where it knows only a few. */
  readonly tones: readonly (Tone | 'ctcss' | 'dcs')[];
  readonly modes: readonly Mode[];
  readonly powersW: ReadonlyMap<string, number>;
  readonly antenna: Antenna;
  /** 12 dB SINAD. */
  readonly sensitivityDbm?: number;
  readonly battery?: Battery;
  readonly entryOrder: readonly EntryField[];
}

export interface Battery {
  readonly energyWh: number;
  readonly spares: number;
  readonly volts?: number;
  readonly standbyA?: number;
  readonly receiveA?: number;
  readonly transmitA?: number;
}

export interface Licence {
  readonly class?: string;
  readonly call?: string;
  /** ISO date, the last day it holds. */
  readonly expires?: string;
  /** For services open only with an agency's leave: who gave it and under what reference. */
  readonly authority?: string;
}

export interface Member {
  readonly id: string;
  readonly name: string;
  /** By service. */
  readonly licences: ReadonlyMap<string, Licence>;
  readonly radios: readonly string[];
  readonly at?: string;
  readonly roams: readonly string[];
  /** Private: printed only where a template asks for it by name. */
  readonly contact: ReadonlyMap<string, string>;
  readonly contactShared: boolean;
}

/** Something outside the radios that can fail and take stations with it. */
export interface Asset {
  readonly id: string;
  readonly name: string;
  readonly dependsOn: readonly string[];
  readonly backupMin?: number;
}

export interface Repeater {
  readonly id: string;
  readonly name: string;
  readonly call?: string;
  /** What members listen to. */
  readonly outputHz: number;
  /** What members transmit on. */
  readonly inputHz: number;
  /** How the input was written: the offset added to the output, or the input itself. */
  readonly writtenAs: 'offset' | 'input';
  readonly service?: string;
  readonly tone?: Tone;
  readonly outputTone?: Tone;
  readonly widthHz?: number;
  readonly place?: string;
  readonly antenna: Antenna;
  readonly powerW?: number;
  readonly sensitivityDbm?: number;
  readonly timeOutMin?: number;
  readonly coordinated?: boolean;
  readonly dependsOn: readonly string[];
  /** How long it runs after what it depends on is lost. */
  readonly backupMin?: number;
}

/** A mailbox or a digipeater. */
export interface PacketStation {
  readonly id: string;
  readonly name: string;
  readonly call: string;
  readonly place?: string;
  readonly channel: number;
  readonly powerW?: number;
  readonly antenna: Antenna;
  readonly sensitivityDbm?: number;
  readonly dependsOn: readonly string[];
  readonly backupMin?: number;
}

export interface Route {
  readonly from: string;
  readonly to: string;
  readonly through: readonly string[];
}

/** What every channel has; {@link Channel} adds how its frequencies are given. */
interface ChannelBasics {
  readonly slot: number;
  readonly name: string;
  readonly use?: string;
  readonly mode: Mode;
  readonly widthHz?: number;
  /** Sent when transmitting. */
  readonly tone?: Tone;
  /** Needed to open the squelch when receiving. */
  readonly receiveTone?: Tone;
  /** A radio's power setting by name, or watts. */
  readonly power?: string | number;
  /** The service meant, where a frequency belongs to several. */
  readonly service?: string;
}

export type Channel = ChannelBasics &
  (
    | { readonly kind: 'repeater'; readonly repeater: string }
    | { readonly kind: 'simplex'; readonly frequencyHz: number }
    | { readonly kind: 'standard'; readonly standard: string }
    | { readonly kind: 'listen'; readonly frequencyHz: number }
    | { readonly kind: 'split'; readonly receiveHz: number; readonly transmitHz: number }
  );

export interface TimeOfDay {
  /** Minutes after midnight, 0 to 1439. */
  readonly minute: number;
  /** In UTC rather than in the plan's time zone. */
  readonly utc: boolean;
}

/** `mon` is 1 and `sun` 7, as in ISO 8601. */
export type Days =
  | { readonly kind: 'weekdays'; readonly isoDays: readonly number[] }
  | { readonly kind: 'recurrence'; readonly rrule: string };

/** `all`, or ids of teams and members. */
export type Who = 'all' | readonly string[];

export interface CheckIn {
  readonly id: string;
  readonly name: string;
  readonly channel: number;
  /** Nobody calls the roll; everybody listens. */
  readonly listen: boolean;
  readonly days: Days;
  readonly at: TimeOfDay;
  /** Last start of a listening watch that repeats through the day. */
  readonly until?: TimeOfDay;
  readonly repeatsMin?: number;
  readonly lastsMin: number;
  readonly who: Who;
  /** Net control, taking turns in this order. */
  readonly control: readonly string[];
  readonly turn: 'day' | 'week' | 'time';
  /** The ladder to start when someone does not answer. */
  readonly missed?: string;
}

export interface Ladder {
  readonly id: string;
  readonly name: string;
  readonly who: Who;
  /** Any one of them will do. */
  readonly reach: readonly string[];
  readonly rungs: readonly Rung[];
}

export type Grade = 'primary' | 'alternate' | 'contingency' | 'emergency';

export interface Rung {
  readonly grade: Grade;
  readonly channel?: number;
  /** Go there first. */
  readonly from?: string;
  readonly calls?: number;
  readonly withinMin?: number;
  readonly mailbox?: string;
  readonly through: readonly string[];
  /** No radio: a place, and when. */
  readonly meet?: string;
  readonly at?: string;
  readonly other?: string;
  readonly dependsOn: readonly string[];
}

export interface Trial {
  /** ISO date. */
  readonly date: string;
  readonly from: string;
  /** A place, a member, a repeater, a digipeater or a mailbox. */
  readonly to: string;
  readonly channel?: number;
  readonly radio?: string;
  readonly member?: string;
  readonly heard: Heard;
  readonly report?: string;
}

/** A finding the group has looked at and keeps. */
export interface Acceptance {
  readonly rule: string;
  /** Path in the plan, words joined by dots. */
  readonly at: string;
  readonly because: string;
  /** ISO date, the last day it holds. */
  readonly until: string;
}

export type CardSize = 'id-1' | 'index' | 'a7' | 'a6' | 'fold';

export interface Cards {
  readonly size: CardSize;
  readonly sheet: 'letter' | 'a4';
  /** The edge about which the printer turns the sheet. */
  readonly flip: 'long-edge' | 'short-edge';
  readonly notes: readonly string[];
  /** A code on the back that a telephone can read: the channels and the plan check. */
  readonly qr?: true;
  /** How far this printer sets the back of a sheet off its front, millimetres right and down. */
  readonly backShiftMm: readonly [right: number, down: number];
}
