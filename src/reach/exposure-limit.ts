/**
 * Limits of exposure to radio-frequency fields, as power density averaged over the whole body and over time.
 *
 * `fcc`: 47 CFR 1.1310, table 1 (as amended by FCC 19-126; the transition ended on 3 May 2023). `icnirp`: ICNIRP Guidelines
 * 2020, Health Physics 118(5), table 5, from memory; below 30 MHz they limit the fields, given here as the density of the plane
 * wave with the lower of them. Occupational limits are for people who know and can control their exposure; a licensed
 * amateur's own trained household may count as such in the United States (97.13(c)(1)), neighbours and passers-by never.
 */
import type { Source } from '../findings/finding.ts';

export type ExposureRules = 'fcc' | 'icnirp';
export type ExposureGroup = 'public' | 'occupational';

export interface ExposureLimit {
  /** W/m²; 1 mW/cm² is 10 W/m². */
  readonly densityWm2: number;
  /** Time over which exposure is averaged, seconds. */
  readonly averagedOverS: number;
  readonly source: Source;
}

interface LimitRow {
  readonly fromMhz: number;
  readonly toMhz: number;
  /** W/m² at a frequency in MHz. */
  readonly density: (mhz: number) => number;
}

const freeSpaceOhm = 376.73;

/** Density of the plane wave with the smaller of an electric (V/m) and a magnetic (A/m) field. */
function ofFields(
  electric: (mhz: number) => number,
  magnetic: (mhz: number) => number,
): (mhz: number) => number {
  return (mhz) => Math.min(electric(mhz) ** 2 / freeSpaceOhm, magnetic(mhz) ** 2 * freeSpaceOhm);
}

const tables: Readonly<Record<ExposureRules, Readonly<Record<ExposureGroup, readonly LimitRow[]>>>> = {
  fcc: {
    occupational: [
      { fromMhz: 0.3, toMhz: 3, density: () => 1000 },
      { fromMhz: 3, toMhz: 30, density: (mhz) => 9000 / mhz ** 2 },
      { fromMhz: 30, toMhz: 300, density: () => 10 },
      { fromMhz: 300, toMhz: 1500, density: (mhz) => mhz / 30 },
      { fromMhz: 1500, toMhz: 100_000, density: () => 50 },
    ],
    public: [
      { fromMhz: 0.3, toMhz: 1.34, density: () => 1000 },
      { fromMhz: 1.34, toMhz: 30, density: (mhz) => 1800 / mhz ** 2 },
      { fromMhz: 30, toMhz: 300, density: () => 2 },
      { fromMhz: 300, toMhz: 1500, density: (mhz) => mhz / 150 },
      { fromMhz: 1500, toMhz: 100_000, density: () => 10 },
    ],
  },
  icnirp: {
    occupational: [
      {
        fromMhz: 0.1,
        toMhz: 30,
        density: ofFields(
          (mhz) => 660 / mhz ** 0.7,
          (mhz) => 4.9 / mhz,
        ),
      },
      { fromMhz: 30, toMhz: 400, density: () => 10 },
      { fromMhz: 400, toMhz: 2000, density: (mhz) => mhz / 40 },
      { fromMhz: 2000, toMhz: 300_000, density: () => 50 },
    ],
    public: [
      {
        fromMhz: 0.1,
        toMhz: 30,
        density: ofFields(
          (mhz) => 300 / mhz ** 0.7,
          (mhz) => 2.2 / mhz,
        ),
      },
      { fromMhz: 30, toMhz: 400, density: () => 2 },
      { fromMhz: 400, toMhz: 2000, density: (mhz) => mhz / 200 },
      { fromMhz: 2000, toMhz: 300_000, density: () => 10 },
    ],
  },
};

const sources: Readonly<Record<ExposureRules, Source>> = {
  fcc: { document: '47 CFR 1.1310', section: 'table 1' },
  icnirp: {
    document: 'ICNIRP Guidelines for limiting exposure to electromagnetic fields (100 kHz to 300 GHz)',
    section: 'table 5',
    date: '2020-03-02',
    fromMemory: true,
  },
};

const averagedOverS: Readonly<Record<ExposureRules, Readonly<Record<ExposureGroup, number>>>> = {
  fcc: { occupational: 360, public: 1800 },
  icnirp: { occupational: 1800, public: 1800 },
};

/** The limit at a frequency; at a boundary the tighter row. `undefined` outside the table. */
export function exposureLimit(
  rules: ExposureRules,
  group: ExposureGroup,
  frequencyHz: number,
): ExposureLimit | undefined {
  const mhz = frequencyHz / 1e6;
  const densities = tables[rules][group]
    .filter((row) => mhz >= row.fromMhz && mhz <= row.toMhz)
    .map((row) => row.density(mhz));
  if (densities.length === 0) return undefined;
  return {
    densityWm2: Math.min(...densities),
    averagedOverS: averagedOverS[rules][group],
    source: sources[rules],
  };
}
