import type { Source } from '../../findings/finding.ts';

export const sources = {
  'ofcom-2023': {
    document: 'Ofcom, Updating the amateur radio licensing framework, statement',
    date: '2023-12-01',
  },
  'uk-guide': {
    document:
      'Unofficial guide to United Kingdom amateur bands and powers, written after the licence of 21 February 2024',
    date: '2024-02-21',
  },
  'uk-licence-21b': {
    document: 'Ofcom amateur radio licence',
    section: 'section 6, clause 21(b)',
    date: '2024-02-21',
  },
  'br68-schedule': {
    document: 'Radiocommunications Agency BR68, schedule (old licence, without a date)',
    section: '431-432 MHz',
  },
  'uk-hf': {
    document: 'Ofcom amateur radio licence, schedule 1',
    section: 'bands below 30 MHz',
    fromMemory: true,
  },
  'rsgb-6m': { document: 'RSGB 6 m band plan', date: '2023-01-01' },
  'rsgb-70cm': { document: 'RSGB 70 cm band plan', date: '2025-01-01' },
  'rsgb-2m': { document: 'RSGB 2 m repeater channels', fromMemory: true },
  'uk-priority': {
    document: 'Unofficial guide to United Kingdom amateur bands',
    section: 'priority channel',
    date: '2024-02-21',
  },
  'ofcom-business': {
    document: 'Ofcom business radio, frequently asked questions: Simple UK Light',
    date: '2024-02-02',
  },
  'simple-uk-light': { document: 'Simple UK Light frequency list', fromMemory: true },
  'uk-cb-27-81': { document: 'United Kingdom 27/81 citizens’ band', fromMemory: true },
} as const satisfies Readonly<Record<string, Source>>;
