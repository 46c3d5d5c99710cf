import type { ChannelRow, EmissionKind, OffsetRow, PowerRow, ServiceRow, StationKind } from '../country.ts';
import { mhz } from '../mhz.ts';
import { uhfCbFrequencyHz } from '../uhf-cb-frequency.ts';

/*
 * The UHF citizens' band of Australia: 80 channels under a class licence. Repeaters (which need a licence of
 * their own) transmit on 1-8 and 41-48 and listen 30 channels up; without one in range those channels may be
 * used directly. The schedule of the class licence of 2025 could not be read; roles are as published before it.
 */
const service = 'uhf-cb';

export const uhfCbService: ServiceRow = {
  id: service,
  name: 'UHF Citizens’ Band',
  licence: 'none',
  classes: [],
  certifiedEquipment: true,
  callSigns: false,
  repeaters: true,
  storeAndForward: false,
  channelsOnly: true,
  mustHold: 'nothing but a set that meets the class licence; a repeater needs an apparatus licence',
  source: 'au-class-licence',
};

const emergency = { role: 'emergencies only', roleOnly: true, source: 'acrem' } as const;
const telemetry = {
  role: 'telemetry and telecommand, no speech',
  roleOnly: true,
  kinds: ['data'] as readonly EmissionKind[],
  source: 'acma-cb',
} as const;
const worked: readonly StationKind[] = ['handheld', 'mobile', 'base', 'fixed'];
const input = { role: 'repeater input; direct use only where no repeater is in range' } as const;

/** What is particular to a channel, by number. */
function particulars(n: number): Partial<ChannelRow> {
  if (n === 5 || n === 35) return emergency;
  if (n === 22 || n === 23) return telemetry;
  if ((n >= 31 && n <= 38) || (n >= 71 && n <= 78)) return input;
  if (n === 11) return { role: 'customary calling channel', source: 'acrem' };
  if (n === 18) return { role: 'customary for caravans and campers', note: 'The role is from memory.' };
  if (n === 40) return { role: 'customary road channel', note: 'The role is from memory.' };
  return {};
}

const outputs = (n: number): boolean => (n >= 1 && n <= 8) || (n >= 41 && n <= 48);

function channel(n: number): ChannelRow {
  const atHz = uhfCbFrequencyHz(n);
  const own: ChannelRow = {
    service,
    name: `UHF CB ${n}`,
    receiveHz: atHz,
    maxWidthHz: 12_500,
    kinds: ['phone'],
    modulations: ['fm'],
    stations: outputs(n) ? [...worked, 'repeater'] : worked,
    source: 'acma-cb',
  };
  if (n >= 61 && n <= 63)
    return {
      ...own,
      role: 'held back, not to be transmitted on',
      roleOnly: true,
      fromMemory: true,
      source: 'au-held-back',
    };
  return {
    ...own,
    transmitHz: atHz,
    ...(outputs(n) && { repeaterInputHz: uhfCbFrequencyHz(n + 30) }),
    ...particulars(n),
  };
}

export const uhfCbChannels: readonly ChannelRow[] = Array.from({ length: 80 }, (_, k) => channel(k + 1));

export const uhfCbPower: readonly PowerRow[] = [
  {
    service,
    fromHz: mhz('476.4125'),
    toHz: mhz('477.4125'),
    maxW: 5,
    measure: 'output',
    fromMemory: true,
    source: 'au-power',
  },
];

export const uhfCbOffsets: readonly OffsetRow[] = [
  {
    service,
    band: 'UHF CB',
    fromHz: mhz('476.4250'),
    toHz: mhz('476.6125'),
    usualHz: [mhz('0.75')],
    alsoHz: [],
    fixed: true,
    source: 'acma-cb',
  },
];
