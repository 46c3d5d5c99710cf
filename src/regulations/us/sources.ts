import type { Source } from '../../findings/finding.ts';

/*
 * Part 97 was read section by section in published study sheets that quote the eCFR text of 28 July 2026;
 * most of part 95 in single eCFR sections as law libraries copy them, or in a public handbook that links
 * each statement to its section. A key names the section; nothing else may be cited under it.
 */
const part97 = (section: string): Source => ({
  document: '47 CFR part 97, Amateur Radio Service (eCFR, as quoted in published study sheets)',
  section,
  date: '2026-07-28',
});
const part95 = (section: string): Source => ({
  document: '47 CFR part 95, Personal Radio Services (eCFR, as quoted in public copies)',
  section,
  date: '2026-06-20',
});
const memory97 = (section: string): Source => ({ document: '47 CFR part 97', section, fromMemory: true });

export const sources = {
  'cfr-97.7': part97('97.7 and 97.105'),
  'cfr-97.119': part97('97.119'),
  'cfr-97.201': part97('97.201'),
  'cfr-97.203': part97('97.203'),
  'cfr-97.205': part97('97.205(b)'),
  'cfr-97.221': part97('97.221(b)'),
  'cfr-97.301-a': part97('97.301(a)'),
  'cfr-97.301-b': part97('97.301(b)'),
  'cfr-97.301-c': part97('97.301(c)'),
  'cfr-97.301-d': part97('97.301(d)'),
  'cfr-97.301-e': part97('97.301(e)'),
  'cfr-97.301-f': memory97('97.301(f)'),
  'cfr-97.303-h': part97('97.303(h)'),
  'cfr-97.303-l': part97('97.303(l)'),
  'cfr-97.303-m': part97('97.303(m)(1); Line A as in 97.3(a)(30)'),
  'cfr-97.303-n': part97('97.303(n)'),
  'cfr-97.305-a': part97('97.305(a)'),
  'cfr-97.305-c': part97('97.305(c)'),
  'cfr-97.307-f1': part97('97.307(f)(1)'),
  'cfr-97.307-f3': part97('97.307(f)(3)'),
  'cfr-97.307-f5': part97('97.307(f)(5)'),
  'cfr-97.307-f6': part97('97.307(f)(6)'),
  'cfr-97.307-f10': part97('97.307(f)(10)'),
  'cfr-97.307-f13': part97('97.307(f)(13)'),
  'cfr-97.307-f14': part97('97.307(f)(14)'),
  'cfr-97.313-b': part97('97.313(b)'),
  'cfr-97.313-c': part97('97.313(c)'),
  'cfr-97.313-d': {
    document: '47 CFR part 97, edition of 1997',
    section: '97.313(d) and (e)',
    date: '1997-10-01',
  },
  'cfr-97.313-f': part97('97.313(f); 47 CFR 2.106(c)(270)'),
  'cfr-97.313-g': part97('97.313(g)'),
  'cfr-97.313-h': part97('97.313(h)'),
  'cfr-97.313-i': part97('97.313(i)'),
  'cfr-97.313-j': part97('97.313(j)'),
  'cfr-95.935': part95('95.935'),
  'cfr-95.941': part95('95.941'),
  'cfr-95-cb': part95('95.931 to 95.941'),
  'cfr-95.963': part95('95.963'),
  'cfr-95.967': part95('95.967'),
  'cfr-95.973': part95('95.973'),
  'cfr-95.587': part95('95.587(a) and (b)'),
  'cfr-95-frs': part95('95.531 to 95.587'),
  'cfr-95.563': part95('95.563 and 95.567'),
  'cfr-95.1761': part95('95.1761'),
  'cfr-95-gmrs': part95('95.1701 to 95.1787'),
  'cfr-95.1751': part95('95.1751'),
  'cfr-95.1763': part95('95.1763, 95.1767 and 95.1773'),
  // The number of the section is from memory, its figures are not.
  'cfr-95.2741': part95('95.2741'),
  'cfr-95-murs': part95('95.2701 to 95.2773'),
  'cfr-95.2763': part95('95.2763, 95.2767, 95.2771 and 95.2773'),
  'line-a-gmrs': {
    document: 'Condition printed on General Mobile Radio Service licences',
    section: 'channels 462.650 and 462.700 MHz near Canada',
    fromMemory: true,
  },
  'arrl-plan': {
    document: 'ARRL Band Plan (published page, read in public copies without a date)',
    section: 'by band',
  },
  'arrl-plan-33cm': {
    document: 'ARRL Band Plan, 902-928 MHz',
    section: 'table and notes',
    date: '2013-01-01',
  },
  'rac-23cm': {
    document: 'Radio Amateurs of Canada, 1240-1300 MHz band plan, which the United States plan follows',
    date: '1997-01-01',
  },
  'packet-usage': {
    document: 'State coordinators’ plans (Arizona, Texas), without a date: packet channels in common use',
  },
  'coordinator-15khz': {
    document: 'Minnesota repeater coordinator, 2 m channel list (15 kHz raster, without a date)',
  },
  'coordinator-20khz': {
    document: 'Texas and Arizona repeater coordinators, 2 m channel lists (20 kHz raster, without a date)',
  },
  'ncvec-shifts': {
    document: 'NCVEC Technician question pool 2026-2030',
    section: 'T2A01 and T2A03',
    date: '2026-07-01',
  },
  'coordinator-shifts': {
    document: 'Published repeater coordinators’ plans (Minnesota, Texas, New England; without a date)',
  },
  'nws-nwr': {
    document: 'National Weather Service, NOAA Weather Radio station frequencies, page without a date',
  },
  nifog: {
    document: 'National Interoperability Field Operations Guide 2.02 (CISA)',
    section: 'pages 28-64',
    date: '2025-01-01',
  },
  'fcc-121.5': {
    document: 'FCC Enforcement Advisory 2017-01, DA 17-747; 47 CFR 87.421(d)',
    date: '2017-08-01',
  },
  'fcc-marine': {
    document: '47 CFR part 80, maritime VHF channels',
    section: '80.115 and 80.371',
    date: '2016-12-01',
  },
  'itu-ap18': { document: 'ITU Radio Regulations', section: 'Appendix 18', fromMemory: true },
  'cfr-87': { document: '47 CFR part 87, Aviation Services', section: '87.173', fromMemory: true },
} as const satisfies Readonly<Record<string, Source>>;

/** A key of the table above, so that a row that cites nothing does not compile. */
export type UsSource = keyof typeof sources;
