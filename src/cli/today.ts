/**
 * The date a plan is checked on: the one given, else SOURCE_DATE_EPOCH (reproducible-builds.org,
 * specification 1.1: whole seconds since 1970), else the clock.
 */
import { Refusal } from '../findings/refusal.ts';

export function today(given: string | undefined): string {
  if (given !== undefined) {
    const parsed = new Date(`${given}T00:00:00Z`);
    if (
      !/^\d{4}-\d{2}-\d{2}$/.test(given) ||
      Number.isNaN(parsed.getTime()) ||
      parsed.toISOString().slice(0, 10) !== given
    ) {
      throw new Refusal(`--today ${given} is not a date.`, 'Write it year-month-day, such as 2026-12-01.');
    }
    return given;
  }
  const epoch = process.env['SOURCE_DATE_EPOCH'];
  if (epoch !== undefined && epoch !== '') {
    if (!/^\d{1,11}$/.test(epoch))
      throw new Refusal(
        `SOURCE_DATE_EPOCH is ${epoch}, not a whole number of seconds.`,
        'Unset it, or give seconds since 1970.',
      );
    return new Date(Number(epoch) * 1000).toISOString().slice(0, 10);
  }
  return new Date().toISOString().slice(0, 10);
}
