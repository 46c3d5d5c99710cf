import { describe, expect, test } from 'vitest';
import { load } from '../../src/plan/load.ts';
import { starterPlan } from '../../src/plan/starter-plan.ts';
import { readTrialLine } from '../../src/plan/trial-line.ts';

const { plan } = load(starterPlan, 'starter.yaml');
if (plan === undefined) throw new Error('the starter plan does not load');
const read = (line: string) => readTrialLine(line, plan, '2026-11-25');

describe('one line that says what was tried and heard', () => {
  test('with all its parts', () => {
    expect(read('2026-11-21 hall to hilltop on 1 with handheld by sam heard readable: 5 by 7')).toEqual({
      ok: true,
      trial: {
        date: '2026-11-21',
        from: 'hall',
        to: 'hilltop',
        channel: 1,
        radio: 'handheld',
        member: 'sam',
        heard: 'readable',
        report: '5 by 7',
      },
    });
  });

  test('with the least, dated today; names do for ids, and the parts stand in any order', () => {
    expect(read('Village Hall to hilltop REPEATER heard nothing')).toEqual({
      ok: true,
      trial: { date: '2026-11-25', from: 'hall', to: 'hilltop', heard: 'nothing' },
    });
    expect(read('from hall to Sam Example by alex on HILL heard weak')).toMatchObject({
      ok: true,
      trial: { to: 'sam', channel: 1, member: 'alex' },
    });
  });

  test.each([
    ['halle to hilltop heard weak', 'hall'],
    ['hall to hiltop heard weak', 'hilltop'],
    ['hall to hilltop with handhled heard weak', 'handheld'],
    ['hall to hilltop by smm heard weak', 'sam'],
    ['hall to hilltop on HIL heard weak', 'HILL'],
    ['hall to hilltop heard readible', 'readable'],
  ])('%s: the nearest known is offered', (line, near) => {
    expect(read(line)).toMatchObject({ ok: false, remedy: expect.stringContaining(`Did you mean ${near}?`) });
  });

  test.each([
    '',
    'hall to hilltop',
    'hall heard weak',
    'hall to hilltop on 9 heard weak',
    '2026-02-30 hall to hilltop heard weak',
    '2026-12-01 hall to hilltop heard weak',
    'hall to hilltop on 1 on 2 heard weak',
  ])('"%s" is refused', (line) => {
    expect(read(line).ok).toBe(false);
  });
});
