import { writeFileSync } from 'node:fs';
import { describe, expect, test } from 'vitest';
import { examplePlan } from '../checks/example-plan.ts';
import { demo, emptyFolder, readback } from './readback.ts';

const night = `
check-ins:
  late: { name: Late, channel: 1, days: every day, at: "02:30", lasts: 15 min, who: all, control: [ada, ben], missed: first }
  early: { name: Early, channel: 1, days: "FREQ=WEEKLY;BYDAY=SU", at: "01:30", lasts: 15 min, who: all, control: [ada] }
`;

function planFile(piece: string): string {
  const path = `${emptyFolder()}/plan.yaml`;
  writeFileSync(path, examplePlan(piece));
  return path;
}

describe('readback times', () => {
  test('shows each check-in on the clocks and in UTC with its net control, and who reads the plan check out', () => {
    const { status, out, err } = readback(['times', demo, '--days', '1']);
    expect({ status, err }).toEqual({ status: 0, err: '' });
    // The demo takes effect on Tuesday 1 December 2026, after the day of the tests.
    expect(out).toContain('Tue 2026-12-01, UTC-5\n');
    expect(out).toMatch(/ {2}07:30 {2}12:30Z {3}1 GAP +Morning check-in; net control Ward Ellison/);
    expect(out).toContain('Inez Varela reads the plan check out');
    expect(out).toMatch(/ {2}19:00 {2}00:00Z\+1 3 SIMP 1 {2}Trail listening watch, listen 5 min\n/);
  });

  test('fits eighty columns, and has no colour in a pipe', () => {
    const { out } = readback(['times', demo]);
    expect(Math.max(...out.split('\n').map((line) => line.length))).toBeLessThanOrEqual(80);
    expect(out).not.toContain('\u001b');
    expect(readback(['times', demo], { env: { FORCE_COLOR: '1' } }).out).toContain('\u001b[1m');
  });

  // IANA time zone database: New York goes forward on 14 March 2027 and back on 7 November 2027, at 02:00.
  test('says of a check-in that the clocks leave out, or show twice, that they do', () => {
    const path = planFile(night);
    expect(
      readback(['times', path, '--from', '2027-03-14', '--days', '1']).out.replace(/\s+/g, ' '),
    ).toContain('the clocks leave 02:30 out');
    const back = JSON.parse(readback(['times', path, '--from', '2027-11-07', '--days', '1', '--json']).out);
    expect(back.occurrences[0]).toMatchObject({
      checkIn: 'early',
      onClocks: 'overlap',
      utc: '2027-11-07T05:30Z',
      secondUtc: '2027-11-07T06:30Z',
    });
  });

  test('shows one member their own alone', () => {
    const { occurrences, silences } = JSON.parse(readback(['times', demo, '--member', 'juno', '--json']).out);
    expect(new Set(occurrences.map(({ checkIn }: { checkIn: string }) => checkIn))).toEqual(
      new Set(['yard']),
    );
    // From Friday 08:15 to Monday 08:15 over the night in November on which the clocks go back.
    expect(silences).toMatchObject([{ member: 'juno', longest: { gapMin: 73 * 60, ladder: 'yard' } }]);
  });

  test.each([
    [['--days', '0'], /days from 1 to 366/],
    [['--from', '2027-02-29'], /not a date/],
    [['--member', 'inz'], /Did you mean inez/],
  ])('refuses %j in words', (args, words) => {
    const { status, out, err } = readback(['times', demo, ...args]);
    expect({ status, out }).toEqual({ status: 2, out: '' });
    expect(err).toMatch(words);
  });

  test('refuses a zone that is in no database', () => {
    const path = planFile('');
    writeFileSync(path, examplePlan('').replace('America/New_York', 'America/New_Yrok'));
    expect(readback(['times', path])).toMatchObject({
      status: 2,
      err: expect.stringContaining('is no time zone'),
    });
  });
});
