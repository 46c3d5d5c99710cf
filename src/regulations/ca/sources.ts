import type { Source } from '../../findings/finding.ts';

export const sources = {
  'rbr-4-4': {
    document: 'ISED RBR-4 Issue 3 (as quoted)',
    section: 'section 4 and Schedule I',
    date: '2022-07-01',
  },
  'rbr-4-9': { document: 'ISED RBR-4 Issue 3 (as quoted)', section: 'section 9', date: '2022-07-01' },
  'rbr-4-10': { document: 'ISED RBR-4 Issue 3 (as quoted)', section: 'section 10', date: '2022-07-01' },
  'rbr-4-hf': {
    document: 'ISED RBR-4 Issue 3',
    section: 'Schedule I, edges of the bands below 30 MHz',
    fromMemory: true,
  },
  'rbr-4-11': { document: 'ISED RBR-4 Issue 3 (as quoted)', section: 'section 11', date: '2022-07-01' },
  'rac-2m': { document: 'Radio Amateurs of Canada, 2 m band plan', date: '1995-09-01' },
  'rac-70cm': { document: 'Radio Amateurs of Canada, 70 cm band plan', date: '1995-09-01' },
  'rss-210': { document: 'ISED RSS-210 Issue 10, Annex E; SP 462/467 MHz Issue 2', date: '2020-04-01' },
  'frs-channels': {
    document: 'Family Radio Service channels, as in the United States (public tables without a date)',
  },
  'frs-power': { document: 'ISED RSS-210 Issue 10, Annex E', section: 'power', fromMemory: true },
  'ric-18': { document: 'ISED RIC-18 Issue 4, General Radio Service (corrected 2021)', date: '2021-11-01' },
  'ric-18-power': {
    document: 'ISED RIC-18 Issue 4, General Radio Service',
    section: 'power',
    fromMemory: true,
  },
} as const satisfies Readonly<Record<string, Source>>;
