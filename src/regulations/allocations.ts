import type { AllocationRow, ListenOnlyRow } from './country.ts';
import type { Law } from './law.ts';
import { nearby } from './nearby.ts';
import { byWidth, holds } from './span.ts';

/** The rows that allocate a frequency to a service, whatever the class. */
export function allocationsAt(law: Law, frequencyHz: number): readonly AllocationRow[] {
  return nearby(law.country.allocations, frequencyHz).filter((row) => holds(row, frequencyHz));
}

/** The classes of a service whose operators may use a frequency, lowest first; empty where nobody may, or where the service has no classes. */
export function classesAt(law: Law, service: string, frequencyHz: number): readonly string[] {
  const rows = allocationsAt(law, frequencyHz).filter((row) => row.service === service);
  const classes = law.country.services.find((row) => row.id === service)?.classes ?? [];
  return classes.map(({ id }) => id).filter((id) => rows.some((row) => row.classes?.includes(id) ?? true));
}

/** What a frequency is listened to for and never transmitted on, the most exact first. */
export function listenOnlyAt(law: Law, frequencyHz: number): readonly ListenOnlyRow[] {
  return nearby(law.country.listenOnly, frequencyHz)
    .filter((row) => holds(row, frequencyHz))
    .toSorted(byWidth);
}
