import { describe, expect, it } from 'vitest';
import { packetBitErrorRate, packetFrameShare } from '../../src/reach/packet-signal.ts';
import { receiverThreshold } from '../../src/reach/receiver-threshold.ts';

const receiver = {
  service: 'fm-voice',
  frequencyHz: 146e6,
  widthHz: 25_000,
  place: 'quiet-rural',
  antennaLossDb: 0,
} as const;

describe('what a receiver needs', () => {
  it('is 3 dB above its rating for speech that needs no second asking, where nothing disturbs it', () => {
    // 12 dB SINAD at 4 dB and 20 dB quieting at 7 dB carrier over noise: a repeater builders' list quoting coverage practice.
    const quiet = receiverThreshold({ ...receiver, sensitivityDbm: -119, antennaLossDb: 20 });
    expect(quiet.thresholdDbm).toBeCloseTo(-116, 1);
    expect(quiet.noiseRiseDb).toBeLessThan(0.05);
  });

  it('rises with the noise of the place', () => {
    const rise = (place: 'city' | 'residential' | 'rural' | 'quiet-rural') =>
      receiverThreshold({ ...receiver, place }).noiseRiseDb;
    expect(rise('city')).toBeGreaterThan(rise('residential'));
    expect(rise('residential')).toBeGreaterThan(rise('rural'));
    expect(rise('rural')).toBeGreaterThan(rise('quiet-rural'));
    // P.372 §2 with a receiver of 7 dB noise figure: noise in 12.6 kHz is -125.97 dBm alone; a residential place (fa 12.55 + galactic 2.2 dB) brings
    // k T0 b (18.0 + 1.7 - 1) on top.
    const rated = -132.97 + 7 + 4;
    const fa = 10 ** 1.255 + 10 ** 0.222;
    const wanted = 10 * Math.log10((10 ** 0.7 + fa - 1) / 10 ** 0.7);
    expect(
      receiverThreshold({ ...receiver, place: 'residential', sensitivityDbm: rated }).noiseRiseDb,
    ).toBeCloseTo(wanted, 1);
  });

  it('hears less noise through a poor antenna', () => {
    const good = receiverThreshold({ ...receiver, place: 'city' });
    expect(receiverThreshold({ ...receiver, place: 'city', antennaLossDb: 10 }).thresholdDbm).toBeLessThan(
      good.thresholdDbm,
    );
  });

  it('is never better than thermal noise allows, whatever a leaflet claims', () => {
    const claimed = receiverThreshold({ ...receiver, sensitivityDbm: -150, antennaLossDb: 30 });
    expect(claimed.thresholdDbm).toBeGreaterThan(-133 + 7 - 0.5);
  });

  it('asks 5 dB more for packets than for speech on the same channel', () => {
    const voice = receiverThreshold(receiver);
    const packet = receiverThreshold({ ...receiver, service: 'packet-1200' });
    // 53.3 dBHz in 12.6 kHz is 12.3 dB, against 7 dB.
    expect(packet.thresholdDbm - voice.thresholdDbm).toBeCloseTo(53.3 - 10 * Math.log10(12_600) - 7, 6);
    expect(packet.meaning).toMatch(/92 % of frames/);
  });
});

describe('packets of 1200 baud', () => {
  // S. Goode (K9NG) as tabulated by R. Wallio (W0RPK); shares of 800-bit frames by (1 - rate)^800.
  it.each([
    [17.5, 1e-2, 0.0003],
    [19.5, 1e-3, 0.45],
    [22.5, 1e-4, 0.92],
    [24, 1.6e-5, 0.99],
  ])('at Eb/N0 %f dB have a bit error rate of %f', (ebN0, rate, share) => {
    const density = ebN0 + 10 * Math.log10(1200);
    expect(packetBitErrorRate(density)).toBeCloseTo(rate, 8);
    expect(Math.abs(packetFrameShare(density) - share)).toBeLessThan(0.006);
  });

  it('never arrive more often in a weaker signal', () => {
    for (let density = 30; density < 70; density += 0.5) {
      expect(packetFrameShare(density + 0.5)).toBeGreaterThanOrEqual(packetFrameShare(density));
    }
  });
});
