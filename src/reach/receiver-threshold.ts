/**
 * The signal a receiver needs at its socket for speech that can be followed or for packets that arrive, with the noise of the
 * place where it stands.
 *
 * A receiver's sensitivity is measured with a signal generator, which is as quiet as a resistor at 290 K. On an antenna
 * the noise from outside comes on top; a poor antenna or line weakens that noise as it weakens the signal (ITU-R
 * P.372 §2: f = fa + l fr - 1, from memory, here seen from the receiver's side).
 */
import { dbOfRatio, ratioOfDb } from './decibels.ts';
import { externalNoiseDb, type NoisePlace, noisePowerDbm, noiseSpreadDb } from './noise.ts';
import { packetFrameShare } from './packet-signal.ts';

export type RadioService = 'fm-voice' | 'packet-1200';

export interface Receiver {
  readonly service: RadioService;
  readonly frequencyHz: number;
  /** Channel spacing the receiver is set to, 25 000 or 12 500 (20 000 counts as wide). */
  readonly widthHz: number;
  /** For 12 dB SINAD, dBm at the socket; {@link usualSensitivityDbm} unless stated. */
  readonly sensitivityDbm?: number;
  readonly place: NoisePlace;
  /** Loss of antenna and line together, dB: what noise from outside suffers before it reaches the socket. */
  readonly antennaLossDb: number;
}

export interface ReceiverThreshold {
  /** Least signal at the socket, dBm. */
  readonly thresholdDbm: number;
  /** Carrier over noise that it stands for, dB. */
  readonly carrierToNoiseDb: number;
  /** By how much noise from outside raises the receiver's own, dB. */
  readonly noiseRiseDb: number;
  /** One standard deviation of that rise over places and times, dB. */
  readonly spreadDb: number;
  /** In words: what the threshold is for. */
  readonly meaning: string;
}

/** 0.25 microvolt, what FM receivers of this kind are commonly rated for 12 dB SINAD (common practice). */
const usualSensitivityDbm = -119;

/**
 * Carrier over noise at the discriminator for 12 dB SINAD, for 20 dB of quieting, and the bandwidth of the noise, by channel width. Wide: a
 * repeater builders' list quoting coverage practice. Narrow, and the bandwidths: TIA TSB-88, from memory.
 */
const wide = { sinad12Db: 4, quieting20Db: 7, noiseBandwidthHz: 12_600 };
const narrow = { sinad12Db: 7, quieting20Db: 10, noiseBandwidthHz: 7_800 };

/**
 * Carrier over noise density at which nine frames in ten arrive, dBHz. With a margin on top, the share that arrives in a
 * steady signal is `packetFrameShare(packetCarrierToNoiseDbHz + marginDb)`.
 */
export const packetCarrierToNoiseDbHz = 53.3;

export function receiverThreshold(receiver: Receiver): ReceiverThreshold {
  const width = receiver.widthHz > 15_000 ? wide : narrow;
  const bandwidthHz = width.noiseBandwidthHz;
  const ratedDbm = receiver.sensitivityDbm ?? usualSensitivityDbm;
  // The receiver's own noise with the generator's 290 K in it. None is quieter than the generator.
  const ownDbm = Math.max(ratedDbm - width.sinad12Db, noisePowerDbm(0, bandwidthHz));
  const beyondThermal = ratioOfDb(externalNoiseDb(receiver.place, receiver.frequencyHz)) - 1;
  const fromOutside =
    (ratioOfDb(noisePowerDbm(0, bandwidthHz)) * beyondThermal) / ratioOfDb(receiver.antennaLossDb);
  const totalDbm = dbOfRatio(ratioOfDb(ownDbm) + fromOutside);
  const isVoice = receiver.service === 'fm-voice';
  const carrierToNoiseDb = isVoice ? width.quieting20Db : packetCarrierToNoiseDbHz - dbOfRatio(bandwidthHz);
  return {
    thresholdDbm: totalDbm + carrierToNoiseDb,
    carrierToNoiseDb,
    noiseRiseDb: totalDbm - ownDbm,
    // The rise follows the outside noise only as far as that makes up the whole.
    spreadDb: noiseSpreadDb(receiver.place) * (fromOutside / ratioOfDb(totalDbm)),
    meaning: isVoice
      ? 'speech with 20 dB of quieting, a steady signal'
      : `${Math.round(100 * packetFrameShare(packetCarrierToNoiseDbHz))} % of frames arriving, a steady signal`,
  };
}
