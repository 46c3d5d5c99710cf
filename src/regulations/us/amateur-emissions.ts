import type { EmissionKind, EmissionRow, WidthRow } from '../country.ts';
import { mhz } from '../mhz.ts';
import type { UsSource } from './sources.ts';

/*
 * 47 CFR 97.305 and 97.307(f): the kinds of emission each segment admits, and how wide they may be.
 * Morse (CW) is admitted on every frequency the control operator holds, so it has rows of its own.
 */
const generalAndUp = ['general', 'advanced', 'extra'];
const belowGeneral = ['novice', 'technician'];
const narrow: readonly EmissionKind[] = ['rtty', 'data'];
const voice: readonly EmissionKind[] = ['phone', 'image'];
const vhf: readonly EmissionKind[] = ['mcw', 'phone', 'image', 'rtty', 'data'];
const vhfTest: readonly EmissionKind[] = [...vhf, 'test'];
const uhf: readonly EmissionKind[] = [...vhfTest, 'spread-spectrum'];

type Extra = Partial<Pick<EmissionRow, 'classes' | 'modulations' | 'carrierHz' | 'note' | 'fromMemory'>>;

const admits = (
  from: string,
  to: string,
  kinds: readonly EmissionKind[],
  extra: Extra = {},
  source: UsSource = 'cfr-97.305-c',
): EmissionRow => ({ service: 'amateur', fromHz: mhz(from), toHz: mhz(to), kinds, source, ...extra });

const morse = (from: string, to: string): EmissionRow => admits(from, to, ['cw'], {}, 'cfr-97.305-a');

/** A channel of 60 m: Morse on its centre alone, the rest anywhere inside. */
const channel60 = (from: string, centre: string, to: string): EmissionRow[] => [
  admits(from, to, ['phone', 'rtty', 'data'], {}, 'cfr-97.307-f14'),
  admits(
    from,
    to,
    ['cw'],
    { carrierHz: mhz(centre), note: 'Morse on the centre of the channel' },
    'cfr-97.303-h',
  ),
];

const g = { classes: generalAndUp };
const abroad = 'Phone and image on 7.075-7.100 MHz only from outside the contiguous 48 states (from memory).';

export const amateurEmissions: readonly EmissionRow[] = [
  morse('1.8', '2'),
  morse('3.5', '4'),
  morse('7', '7.3'),
  morse('10.1', '10.15'),
  morse('14', '14.35'),
  morse('18.068', '18.168'),
  morse('21', '21.45'),
  morse('24.89', '24.99'),
  morse('28', '29.7'),
  morse('50', '54'),
  morse('144', '148'),
  morse('222', '225'),
  morse('420', '450'),
  morse('902', '928'),
  morse('1240', '1300'),

  admits('1.800', '2.000', [...narrow, ...voice], g),
  admits('3.500', '3.600', narrow, g),
  admits('3.600', '4.000', voice, g),
  ...channel60('5.3305', '5.332', '5.3335'),
  ...channel60('5.3465', '5.348', '5.3495'),
  admits('5.3515', '5.3665', ['cw', 'phone', 'rtty', 'data'], {}, 'cfr-97.307-f14'),
  ...channel60('5.3715', '5.373', '5.3745'),
  ...channel60('5.4035', '5.405', '5.4065'),
  admits('7.000', '7.125', narrow, { ...g, note: abroad }),
  admits('7.125', '7.300', voice, g),
  admits('10.100', '10.150', narrow, g),
  admits('14.000', '14.150', narrow, g),
  admits('14.150', '14.350', voice, g),
  admits('18.068', '18.110', narrow, g),
  admits('18.110', '18.168', voice, g),
  admits('21.000', '21.200', narrow, g),
  admits('21.200', '21.450', voice, g),
  admits('24.890', '24.930', narrow, g),
  admits('24.930', '24.990', voice, g),
  admits('28.000', '28.300', narrow, g),
  admits('28.300', '28.500', voice, g),
  admits('28.500', '29.000', voice, { ...g, fromMemory: true }),
  admits('29.000', '29.700', voice, { ...g, fromMemory: true }),
  // Below General, 80, 40 and 15 m are Morse alone (97.307(f)(9)): no further row. On 10 m there is more.
  admits('28.000', '28.300', narrow, { classes: belowGeneral }, 'cfr-97.307-f10'),
  admits('28.300', '28.500', ['phone'], { classes: belowGeneral, modulations: ['ssb'] }, 'cfr-97.307-f10'),

  // No row but Morse on 50.0-50.1 and 144.0-144.1: nothing else is admitted there.
  admits('50.1', '54', vhf),
  admits('51', '54', ['test']),
  admits('144.1', '148', vhfTest),
  admits('219', '220', ['data'], {}, 'cfr-97.303-l'),
  admits('222', '225', uhf),
  admits('420', '450', uhf),
  admits('902', '928', [...uhf, 'pulse']),
  admits('1240', '1300', uhf),
];

const width = (
  from: string,
  to: string,
  maxWidthHz: number,
  source: UsSource,
  extra: Partial<WidthRow> = {},
): WidthRow => ({ service: 'amateur', fromHz: mhz(from), toHz: mhz(to), maxWidthHz, source, ...extra });

const carson =
  'Modulation index at most 1 at the highest audio frequency: with 3 kHz audio, 3 kHz deviation and 12 kHz in all (arithmetic).';

const angleModulated = (from: string, to: string): WidthRow =>
  width(from, to, 12_000, 'cfr-97.307-f1', { kinds: ['phone'], modulations: ['fm'], note: carson });

export const amateurWidths: readonly WidthRow[] = [
  width('1.8', '29.7', 2_800, 'cfr-97.307-f3', { kinds: narrow }),
  width('5.3305', '5.4065', 2_800, 'cfr-97.307-f14'),
  // The phone segments below 29 MHz; 60 m has a limit of its own.
  angleModulated('1.8', '2.0'),
  angleModulated('3.6', '4.0'),
  angleModulated('7.075', '7.3'),
  angleModulated('14.15', '14.35'),
  angleModulated('18.11', '18.168'),
  angleModulated('21.2', '21.45'),
  angleModulated('24.93', '24.99'),
  angleModulated('28.3', '29.0'),
  width('50.1', '54', 20_000, 'cfr-97.307-f5', { kinds: narrow }),
  width('144.1', '148', 20_000, 'cfr-97.307-f5', { kinds: narrow }),
  width('219', '220', 100_000, 'cfr-97.307-f13', { kinds: ['data'], fromMemory: true }),
  width('222', '225', 100_000, 'cfr-97.307-f6', {
    kinds: narrow,
    fromMemory: true,
    note: 'The figure was read; that 222-225 MHz goes by it is from memory.',
  }),
  width('420', '450', 100_000, 'cfr-97.307-f6', { kinds: narrow }),
];
