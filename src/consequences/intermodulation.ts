/**
 * Mixing products of transmitters at one place that fall on what is listened to there. Two transmitters mix in
 * each other's last stage or in an overloaded receiver; odd orders fall close to the carriers, where no
 * filter takes them out.
 *
 * Third order: 2A-B of two transmitters, A+B-C of three; fifth order: 3A-2B. Modulation is multiplied with its
 * carrier, so a product swings by the sum of the coefficients times the deviation, and a receiver is reached
 * within half its own width and half the product's (derived from Carson's rule).
 */

import { formatFrequency, formatSpacing } from '../radio/format-quantity.ts';
import { highestVoiceHz, type Site, type SiteStation } from './sites.ts';

interface Transmitter {
  readonly station: SiteStation;
  readonly hz: number;
}

export interface Product {
  readonly receiver: SiteStation;
  /** `2 × 146.640 (South repeater) - 146.940 (North repeater)` */
  readonly text: string;
  readonly hz: number;
  /** Frequencies of the transmitters, the lowest first. */
  readonly of: readonly number[];
}

/** With so many at one place products fall everywhere, and only a survey with instruments tells which matter. */
export const mostTransmitters = 50;

/** Of many products on one receiver, so many are told. */
const mostTold = 3;

export function transmittersAt(site: Site): readonly Transmitter[] {
  const byFrequency = new Map<string, Transmitter>();
  for (const station of site.stations) {
    if (station.transmitHz === undefined) continue;
    const key = `${station.transmitHz} ${station.attended ? station.key : ''}`;
    if (!byFrequency.has(key)) byFrequency.set(key, { station, hz: station.transmitHz });
  }
  return [...byFrequency.values()].sort((a, b) => a.hz - b.hz);
}

/** Products `first` A - `second` B: 2 and 1 for the third order, 3 and 2 for the fifth. */
export function* twoSignalProducts(site: Site, first: number, second: number): Generator<Product> {
  const transmitters = transmittersAt(site);
  if (transmitters.length > mostTransmitters) return;
  for (const receiver of site.stations) {
    let told = 0;
    for (const a of transmitters) {
      for (const b of transmitters) {
        const hz = first * a.hz - second * b.hz;
        const swingHz = first * a.station.deviationHz + second * b.station.deviationHz;
        if (a.hz === b.hz || !reaches(receiver, hz, swingHz) || !together(receiver, [a, b])) continue;
        told += 1;
        if (told <= mostTold)
          yield {
            receiver,
            hz,
            of: rising(a.hz, b.hz),
            text: `${first} × ${named(a)} - ${second === 1 ? '' : `${second} × `}${named(b)}`,
          };
      }
    }
  }
}

/** Products A + B - C. */
export function* threeSignalProducts(site: Site): Generator<Product> {
  const transmitters = transmittersAt(site);
  if (transmitters.length > mostTransmitters) return;
  for (const receiver of site.stations) {
    let told = 0;
    for (const [index, a] of transmitters.entries()) {
      for (const b of transmitters.slice(index + 1)) {
        for (const c of transmitters) {
          const hz = a.hz + b.hz - c.hz;
          const swingHz = a.station.deviationHz + b.station.deviationHz + c.station.deviationHz;
          if (!reaches(receiver, hz, swingHz) || !together(receiver, [a, b, c])) continue;
          if (a.hz === b.hz || a.hz === c.hz || b.hz === c.hz) continue;
          told += 1;
          if (told <= mostTold)
            yield {
              receiver,
              hz,
              of: rising(a.hz, b.hz, c.hz),
              text: `${named(a)} + ${named(b)} - ${named(c)}`,
            };
        }
      }
    }
  }
}

/** Harmonics of one transmitter. */
export function* harmonics(site: Site, orders: readonly number[]): Generator<Product> {
  const transmitters = transmittersAt(site);
  for (const receiver of site.stations) {
    for (const a of transmitters) {
      for (const order of orders) {
        const hz = order * a.hz;
        if (!reaches(receiver, hz, order * a.station.deviationHz) || !together(receiver, [a])) continue;
        if (a.station.attended && receiver.attended) continue;
        yield { receiver, hz, of: [a.hz], text: `${order} × ${named(a)}` };
      }
    }
  }
}

/** `is 146.340 MHz, to which South repeater listens` */
export function whereItFalls({ hz, receiver }: Product): string {
  const offHz = Math.abs(hz - receiver.receiveHz);
  const away = offHz === 0 ? '' : `, ${formatSpacing(offHz)} from ${formatFrequency(receiver.receiveHz)} MHz`;
  return `is ${formatFrequency(hz)} MHz${away}, to which ${receiver.name} listens`;
}

function reaches(receiver: SiteStation, hz: number, swingHz: number): boolean {
  return Math.abs(hz - receiver.receiveHz) <= receiver.occupiedHz / 2 + swingHz + highestVoiceHz;
}

/** Whether they can be on the air at once while the receiver hears, and each alone leaves it alone. */
function together(receiver: SiteStation, transmitters: readonly Transmitter[]): boolean {
  const keys = new Set(transmitters.map(({ station }) => station.key));
  if (keys.size < transmitters.length) return false;
  // People wait for each other; what stands by itself does not.
  if (transmitters.length > 1 && transmitters.filter(({ station }) => station.attended).length > 1)
    return false;
  if (receiver.simplex && keys.has(receiver.key)) return false;
  // So close to one of them the receiver hears that one, product or not.
  return transmitters.every(
    ({ hz, station }) => Math.abs(hz - receiver.receiveHz) >= (station.occupiedHz + receiver.occupiedHz) / 2,
  );
}

function rising(...frequenciesHz: number[]): readonly number[] {
  return frequenciesHz.sort((a, b) => a - b);
}

function named({ hz, station }: Transmitter): string {
  return `${formatFrequency(hz)} (${station.name})`;
}
