import type { Source } from '../../findings/finding.ts';

/* The Region 1 plans were read in one careful copy; the Belgian society's pages agree for 6 m and 70 cm. */
export const region1Sources = {
  'iaru-r1-vhf': {
    document: 'IARU Region 1 VHF band plan, Novi Sad virtual conference',
    section: '50 to 146 MHz',
    date: '2020-12-02',
  },
  'iaru-r1-uhf': {
    document: 'IARU Region 1 UHF band plan, Novi Sad virtual conference',
    section: '430 to 1300 MHz',
    date: '2021-03-18',
  },
  'iaru-r1-channels': {
    document: 'IARU Region 1 VHF Handbook, FM channel designation system (Tel Aviv 1996)',
    date: '1996-01-01',
  },
  'iaru-r1-emergency': {
    document:
      'IARU Region 1 HF band plan, emergency centres of activity (some from the Norwegian society’s list)',
    date: '2020-10-16',
  },
} as const satisfies Readonly<Record<string, Source>>;
