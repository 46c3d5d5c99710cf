/**
 * The distance to keep from each transmitter of a plan: repeaters, digipeaters, mailboxes and the radios that
 * members use in vehicles and at masts; for hand-helds, that their certification governs and no distance does.
 *
 * The cautious case throughout: the greatest power the plan lets it use, the key held down all the time the
 * averaging counts, the main beam, ground reflection. A station on several bands stands once for each band.
 */
import type { Antenna, Mode, Plan, Radio } from '../plan/model.ts';
import { antennaSituation } from '../reach/antenna-situation.ts';
import { dutyFactors, type ExposureAnswer, exposure } from '../reach/exposure.ts';
import type { Law } from '../regulations/law.ts';
import type { ChannelParticulars } from './channel-particulars.ts';
import type { Consequences } from './consequences.ts';
import { feedLossDb } from './feed-loss.ts';
import { memberKinds } from './member-kinds.ts';

export interface ExposureRow {
  readonly kind: 'repeater' | 'digipeater' | 'mailbox' | 'radio';
  readonly id: string;
  readonly name: string;
  readonly slot: number;
  readonly frequencyHz: number;
  readonly powerW: number;
  readonly gainDbi: number;
  /** Of the antenna above ground, where the plan says it. */
  readonly heightM?: number;
  readonly carried: NonNullable<Antenna['carried']>;
  readonly answer: ExposureAnswer;
}

/** @param radios the kinds of radio to look at besides the stations */
export function exposuresOf(
  plan: Plan,
  consequences: Consequences,
  law: Law,
  radios: Iterable<Radio> = plan.radios.values(),
): readonly ExposureRow[] {
  const rows: ExposureRow[] = [];
  const add = (
    kind: ExposureRow['kind'],
    station: { id: string; name: string; antenna: Antenna },
    on: ChannelParticulars,
    frequencyHz: number,
    powerW: number,
  ) => {
    const { antenna } = station;
    const carried = antenna.carried ?? (kind === 'radio' ? 'hand' : 'mast');
    // The body's loss is left out: it is no protection to count on.
    const gainDbi = antenna.gainDbi ?? antennaSituation({ carried }, frequencyHz).gainDbi;
    const answer = exposure(
      {
        carried,
        powerW,
        gainDbi,
        feedLossDb: feedLossDb(antenna, frequencyHz),
        frequencyHz,
        dutyFactor: dutyFactors[dutyOf(on.mode)],
      },
      law.country.exposure,
    );
    rows.push({
      kind,
      id: station.id,
      name: station.name,
      slot: on.slot,
      frequencyHz,
      powerW,
      gainDbi,
      ...(antenna.heightM !== undefined && { heightM: antenna.heightM }),
      carried,
      answer,
    });
  };
  for (const on of consequences.channels.values()) {
    if (on.repeater?.powerW !== undefined) add('repeater', on.repeater, on, on.receiveHz, on.repeater.powerW);
  }
  for (const [kind, stations] of [
    ['digipeater', plan.digipeaters],
    ['mailbox', plan.mailboxes],
  ] as const) {
    for (const station of stations.values()) {
      const on = consequences.channels.get(station.channel);
      if (on?.transmitHz !== undefined && station.powerW !== undefined)
        add(kind, station, on, on.transmitHz, station.powerW);
    }
  }
  for (const radio of radios) {
    // Members alike in licences and place use the same setting, so one of each kind is asked.
    const kinds = memberKinds({ plan, law }).flatMap(([member]) =>
      member.radios.includes(radio.id) ? [member.id] : [],
    );
    for (const on of consequences.channels.values()) {
      if (on.transmitHz === undefined) continue;
      const settings = kinds.flatMap((member) => {
        const use = consequences.use(member, radio.id, on.slot);
        return use?.may === 'transmit' && use.setting ? [use.setting.powerW] : [];
      });
      if (settings.length > 0) add('radio', radio, on, on.transmitHz, Math.max(...settings));
    }
  }
  return worstOfEachBand(rows);
}

/** Speech with heavy processing is the cautious case of single sideband; AM has a carrier all the time. */
function dutyOf(mode: Mode): keyof typeof dutyFactors {
  const duties = {
    fm: 'fm voice',
    packet: 'data',
    am: 'carrier',
    ssb: 'ssb voice with heavy processing',
    cw: 'cw',
  } as const;
  return duties[mode];
}

/** Of a station's channels in one band only the one that asks for the greatest distance. */
function worstOfEachBand(rows: readonly ExposureRow[]): readonly ExposureRow[] {
  const worst = new Map<string, ExposureRow>();
  for (const row of rows) {
    const band =
      row.answer.kind === 'at the body' ? 'body' : Math.floor(Math.log2(row.frequencyHz / 1e6) * 2);
    const key = `${row.kind} ${row.id} ${band}`;
    const known = worst.get(key);
    if (!known || keepM(row) > keepM(known)) worst.set(key, row);
  }
  return [...worst.values()];
}

function keepM({ answer }: ExposureRow): number {
  return answer.kind === 'distance' ? answer.public.keepM : 0;
}
