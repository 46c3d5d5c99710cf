import { describe, expect, test } from 'vitest';
import { readEntries } from '../../src/audit/read-entries.ts';
import { Refusal } from '../../src/findings/refusal.ts';
import { faultPlan } from './fault-plan.ts';
import { auditOf, planFrom, radioOf } from './worksheet-rows.ts';

const tested = await planFrom(faultPlan);
const handheld = radioOf(tested, 'handheld');
const differences = (table: string) => auditOf(tested, handheld, table).differences;

describe('the table of what was read', () => {
  test('columns go by their words in any spelling, and a unit in the head is no part of them', () => {
    const { channels } = readEntries(
      'Slot;Receive MHz;Offset_Direction;receive-tone;Notes\n1;146,940;-;off;windy\n',
      'a.csv',
      handheld,
    );
    expect([...(channels[0]?.typed.keys() ?? [])]).toEqual(['receive', 'offset-direction', 'receive-tone']);
  });

  test.each(['slot,recieve\n1,146.94', 'receive\n146.94', '', 'slot,tone,tone\n1,2,3'])(
    '%j is refused with a remedy',
    (table) => {
      expect(() => readEntries(table, 'a.csv', handheld)).toThrow(Refusal);
    },
  );

  test('blank cells and missing columns were not read, and are no difference', () => {
    const audit = auditOf(tested, handheld, 'slot,receive,tone\n1,146.94,\n');
    expect(audit.differences).toEqual([]);
    expect(audit.unread.find(({ slot }) => slot === 1)?.fields).toContain('tone');
    expect(audit.clean).toBe(false);
  });

  test('a cell that cannot be read is told with its line and keeps the audit from being clean', () => {
    expect(auditOf(tested, handheld, 'slot,receive\n1,146.9x\n').unclear).toMatchObject([
      { slot: 1, field: 'receive', line: 2 },
    ]);
  });

  test('a slot given twice, and a slot that is no number, are told', () => {
    expect(auditOf(tested, handheld, 'slot,receive\n1,146.94\n1,146.94\nx,1\n').unclear).toHaveLength(2);
  });
});

describe('what an audit says', () => {
  test('a swapped sign: what is, what should be, what to press, and that nobody would hear it', () => {
    expect(differences('slot,offset direction\n1,plus\n')).toMatchObject([
      {
        slot: 1,
        field: 'offset-direction',
        message: 'the offset direction is plus; the plan has minus',
        press: 'set offset direction to minus',
        cause: { code: 'sign-swapped' },
        effect: { noticed: 'unheard' },
      },
    ]);
  });

  test('a missing tone is heard at the first call, a wrong width by all', () => {
    const found = differences('slot,tone,width\n1,off,narrow\n');
    expect(found.map(({ field, effect }) => [field, effect.noticed])).toEqual([
      ['tone', 'heard'],
      ['width', 'heard'],
    ]);
  });

  test('a display that cuts the last figures of a frequency is not wrong', () => {
    expect(differences('slot,receive\n6,444.325\n')).toEqual([]);
    expect(differences('slot,receive\n6,444.32\n')).toHaveLength(1);
  });

  test('a channel to listen to that can transmit is found', () => {
    expect(differences('slot,receive,transmit\n12,162.550,162.550\n')).toMatchObject([
      { field: 'transmit', cause: { code: 'can-transmit' } },
    ]);
  });

  test('a name may be typed whole where the display cuts it', () => {
    const plain = 'slot,name\n13,RANGERS\n';
    expect(differences(plain)).toEqual([]);
    expect(differences('slot,name\n13,RANGRES\n')).toMatchObject([
      { cause: { code: 'letters-exchanged' }, effect: { noticed: 'harmless' } },
    ]);
  });
});
