/**
 * The address of an AX.25 station: a call sign and a secondary station identifier, written `KX4XWE-10`.
 *
 * AX.25 Link Access Protocol for Amateur Packet Radio, version 2.2 revision 4 (27 October 2025), sections
 * 3.12 and 3.12.2: up to six capital letters and digits, and four bits, 0 to 15. That `-0` is not written is
 * common practice.
 */
import { parseCallSign } from './call-sign.ts';

export interface PacketAddress {
  readonly callSign: string;
  /** 0 to 15. */
  readonly ssid: number;
}

export type PacketAddressReading =
  | { readonly ok: true; readonly value: PacketAddress }
  | { readonly ok: false; readonly message: string; readonly suggestion?: string };

/** Reads an address. The call sign must be an amateur one of at most six characters, because the frame has room for no more. */
export function parsePacketAddress(text: string): PacketAddressReading {
  const given = text.trim();
  const match = /^([^-]*)(?:-([^-]*))?$/.exec(given);
  const reading = parseCallSign(match?.[1] ?? given);
  if (match === null || !reading.ok) {
    return reading.ok ? { ok: false, message: `"${given.slice(0, 40)}" has more than one hyphen.` } : reading;
  }
  const { base, visiting, suffix } = reading.value;
  if (visiting !== undefined || suffix !== undefined) {
    return {
      ok: false,
      message: `A packet address has no room for a stroke; this one is "${given}".`,
      suggestion: base,
    };
  }
  if (base.length > 6) {
    return { ok: false, message: `A packet address holds six characters; ${base} has ${base.length}.` };
  }
  const digits = match[2] ?? '0';
  if (!/^(?:[0-9]|1[0-5])$/.test(digits)) {
    return {
      ok: false,
      message: `The number after the hyphen is 0 to 15; this one is "${digits.slice(0, 20)}".`,
    };
  }
  return { ok: true, value: { callSign: base, ssid: Number(digits) } };
}

/** `KX4XWE-10`; the identifier 0 is not written. */
export function formatPacketAddress(address: PacketAddress): string {
  return address.ssid === 0 ? address.callSign : `${address.callSign}-${address.ssid}`;
}

/** The same station: `KX4XWE` and `KX4XWE-0` are one address. */
export function samePacketAddress(a: PacketAddress, b: PacketAddress): boolean {
  return a.callSign === b.callSign && a.ssid === b.ssid;
}
