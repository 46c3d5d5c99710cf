/** The allocation or the channels that hold a repeater's output, as a sentence names them. */
import { formatFrequency } from '../radio/format-quantity.ts';
import { allocationsAt } from './allocations.ts';
import type { Row } from './country.ts';
import { type Law, serviceById } from './law.ts';

export interface BandNamed {
  /** `144.000-148.000 MHz (2 m)`, or the channels of a service. */
  readonly text: string;
  readonly row?: Row;
}

export function bandOf(law: Law, services: readonly string[], frequencyHz: number): BandNamed {
  const row = allocationsAt(law, frequencyHz).find(({ service }) => services.includes(service));
  if (row) {
    const { fromHz, toHz, band } = row;
    return { text: `${formatFrequency(fromHz)}-${formatFrequency(toHz)} MHz (${band})`, row };
  }
  const service = services.map((id) => serviceById(law, id)).find((found) => found !== undefined);
  return service
    ? { text: `the channels of the ${service.name}`, row: service }
    : { text: 'every service that the country has for a group' };
}
