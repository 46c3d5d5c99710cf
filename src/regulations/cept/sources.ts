import type { Source } from '../../findings/finding.ts';

export const ceptSources = {
  'ecc-dec-15-05': {
    document: 'ECC Decision (15)05, PMR446',
    section: 'decides 9 and annex 1 (as quoted)',
    date: '2015-07-03',
  },
  'en-303-405': { document: 'ETSI EN 303 405 V1.1.1, PMR446', section: 'scope', date: '2017-05-24' },
  'cept-cb': {
    document: 'CEPT citizens’ band, the 40 harmonised channels (public table)',
    date: '2014-06-27',
  },
  'cept-cb-power': {
    document: 'ECC Decision (11)03 and national notices, CEPT citizens’ band',
    date: '2014-06-27',
  },
} as const satisfies Readonly<Record<string, Source>>;
