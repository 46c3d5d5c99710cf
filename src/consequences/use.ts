/**
 * Who may use what: for each member, radio and channel *transmit*, *listen only* or *not held*. Cards,
 * worksheets, checks and outages all ask this one table.
 */
import type { Source } from '../findings/finding.ts';
import type { Antenna, Licence, Member, Plan, Radio } from '../plan/model.ts';
import { formatPower } from '../radio/format-quantity.ts';
import type { PowerRow, StationKind } from '../regulations/country.ts';
import { type Law, localRulesOf, serviceById, sourceOf } from '../regulations/law.ts';
import { mayTransmit, type TransmitRefusal } from '../regulations/may-transmit.ts';
import { powerLimits } from '../regulations/power-limit.ts';
import type { ChannelParticulars } from './channel-particulars.ts';
import { feedLossDb } from './feed-loss.ts';
import { powerWords } from './power-words.ts';
import { type MisfitCode, radioFit } from './radio-fit.ts';

export type May = 'transmit' | 'listen only' | 'not held';

export type UseReasonCode =
  | MisfitCode
  | TransmitRefusal
  | 'listen-channel'
  | 'no-service'
  | 'not-certified'
  | 'unlicensed'
  | 'expired'
  | 'class-missing'
  | 'power';

/** Why a member may not transmit on a channel with a radio, or not hold it. */
export interface UseReason {
  readonly code: UseReasonCode;
  /** A clause that follows the radio, the member or the channel, with its figures. */
  readonly text: string;
  readonly source?: Source;
}

export interface PowerSetting {
  readonly name: string;
  readonly powerW: number;
}

export interface Use {
  readonly may: May;
  /** The service in which the member transmits. */
  readonly service?: string;
  readonly licence?: Licence;
  /** The setting to use: what the plan says, else the highest within the law. */
  readonly setting?: PowerSetting;
  /** Lawful limits that hold for it. */
  readonly limits: readonly PowerRow[];
  readonly reasons: readonly UseReason[];
}

export function useOf(plan: Plan, law: Law, member: Member, radio: Radio, on: ChannelParticulars): Use {
  const fit = radioFit(radio, on);
  if (!fit.holds) return { may: 'not held', limits: [], reasons: fit.misfits };
  if (on.transmitHz === undefined) {
    return {
      may: 'listen only',
      limits: [],
      reasons: [{ code: 'listen-channel', text: 'is a channel to listen to' }],
    };
  }
  const attempts = on.services.map((service) =>
    inService(plan, law, member, radio, on, on.transmitHz ?? 0, service),
  );
  const best = attempts.find((use) => use.may === 'transmit');
  const misfits: readonly UseReason[] = fit.misfits;
  if (best)
    return misfits.length === 0 ? best : { may: 'listen only', limits: best.limits, reasons: misfits };
  // Of several services the one that the set is for says what stands in the way.
  const own = on.services.findIndex((service) => radio.certified.includes(service));
  const reasons = attempts[Math.max(own, 0)]?.reasons ?? [
    { code: 'no-service' as const, text: 'belongs to no service a member could transmit in' },
  ];
  return { may: 'listen only', limits: [], reasons: [...misfits, ...reasons] };
}

/** How a station counts in the rules, by how its antenna is carried. */
export function stationKind(antenna: Antenna): StationKind {
  return antenna.carried === 'vehicle' ? 'mobile' : antenna.carried === 'mast' ? 'base' : 'handheld';
}

function inService(
  plan: Plan,
  law: Law,
  member: Member,
  radio: Radio,
  on: ChannelParticulars,
  transmitHz: number,
  serviceId: string,
): Use {
  const refuse = (code: UseReasonCode, text: string, source?: Source): Use => ({
    may: 'listen only',
    limits: [],
    reasons: [source ? { code, text, source } : { code, text }],
  });
  const service = serviceById(law, serviceId);
  if (!service)
    return refuse('unknown-service', `${serviceId} is no service of these rules (${law.country.name})`);
  const source = sourceOf(law, service);
  if (service.licence === 'never')
    return refuse('listen-only', `${service.name} may only be listened to`, source);
  if (service.certifiedEquipment && !radio.certified.includes(serviceId)) {
    return refuse('not-certified', `is not certified for ${service.name}`, source);
  }
  const licence = member.licences.get(serviceId);
  if (service.licence !== 'none') {
    if (!licence)
      return refuse('unlicensed', `holds no licence for ${service.name}; ${service.mustHold}`, source);
    if (licence.expires !== undefined && licence.expires < plan.effective) {
      return refuse(
        'expired',
        `holds a licence for ${service.name} that ended on ${licence.expires}`,
        source,
      );
    }
    if (service.classes.length > 0 && licence.class === undefined) {
      return refuse('class-missing', `has a licence for ${service.name} without its class`, source);
    }
  }
  const place = member.at === undefined ? undefined : plan.places.get(member.at);
  const answer = mayTransmit(law, {
    service: serviceId,
    ...(licence?.class !== undefined && { licenceClass: licence.class }),
    frequencyHz: transmitHz,
    widthHz: on.occupiedHz,
    kind: on.kind,
    ...(on.modulation && { modulation: on.modulation }),
    ...(on.sideband && { sideband: on.sideband }),
    station: stationKind(radio.antenna),
    ...(place && { at: [place.at.latitudeDeg, place.at.longitudeDeg] as const }),
    authorised: licence?.authority !== undefined,
  });
  if (!answer.may) return refuse(answer.why, answer.text, answer.row && sourceOf(law, answer.row));
  const limits = powerLimits(law, {
    service: serviceId,
    frequencyHz: transmitHz,
    station: stationKind(radio.antenna),
    kind: on.kind,
    ...(on.modulation && { modulation: on.modulation }),
    ...(licence?.class !== undefined && { licenceClass: licence.class }),
    ...(place && { at: [place.at.latitudeDeg, place.at.longitudeDeg] as const }),
  });
  const [lowest] = [...radio.powersW].toSorted((a, b) => a[1] - b[1]);
  const broken =
    lowest && limits.find((row) => !localRulesOf(law, row) && !within(row, lowest[1], radio, on));
  if (lowest && broken) {
    const radiated = radiatedW(lowest[1], radio.antenna, broken.measure, transmitHz);
    const how =
      broken.measure === 'output' ? '' : ` (${powerWords(radiated, broken.measure)} with its antenna)`;
    return refuse(
      'power',
      `has no power setting within ${powerWords(broken.maxW, broken.measure)}; its lowest is ${formatPower(lowest[1])}${how}`,
      sourceOf(law, broken),
    );
  }
  // Where local rules leave no setting the lowest is the nearest to them.
  const setting = settingFor(radio, on, limits) ?? (lowest && { name: lowest[0], powerW: lowest[1] });
  return {
    may: 'transmit',
    service: serviceId,
    ...(licence && { licence }),
    ...(setting && { setting }),
    limits,
    reasons: [],
  };
}

function settingFor(
  radio: Radio,
  on: ChannelParticulars,
  limits: readonly PowerRow[],
): PowerSetting | undefined {
  const settings = [...radio.powersW]
    .map(([name, powerW]) => ({ name, powerW }))
    .toSorted((a, b) => b.powerW - a.powerW);
  const wanted = on.channel.power;
  const lawful = settings.filter(({ powerW }) => limits.every((row) => within(row, powerW, radio, on)));
  if (wanted === undefined) return lawful[0];
  return typeof wanted === 'string'
    ? (lawful.find(({ name }) => name === wanted) ?? lawful[0])
    : (lawful.find(({ powerW }) => powerW <= wanted) ?? lawful.at(-1));
}

function within({ measure, maxW }: PowerRow, powerW: number, radio: Radio, on: ChannelParticulars): boolean {
  return radiatedW(powerW, radio.antenna, measure, on.transmitHz ?? on.receiveHz) <= maxW * tolerance;
}

/** Gains are known to a tenth of a decibel at best, so a setting that is over by less is taken as meeting the limit. */
const tolerance = 1.025;

/**
 * Power as a limit reckons it. ERP is the output times the antenna's gain over a half-wave dipole, less what
 * the feed loses (47 CFR 2.1 and 95.303; RR No. 1.162); an antenna of unknown gain counts as a dipole.
 */
export function radiatedW(
  outputW: number,
  antenna: Antenna,
  measure: PowerRow['measure'],
  frequencyHz: number,
): number {
  if (measure === 'output') return outputW;
  const gainDbi = (antenna.gainDbi ?? 2.15) - feedLossDb(antenna, frequencyHz);
  return outputW * 10 ** ((measure === 'erp' ? gainDbi - 2.15 : gainDbi) / 10);
}
