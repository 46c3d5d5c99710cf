import { describe, expect, test } from 'vitest';
import {
  type AuditEntry,
  holdings,
  holdingsText,
  readAuditRecord,
  writeAuditRecord,
} from '../../src/audit/audit-record.ts';
import { Refusal } from '../../src/findings/refusal.ts';

const entry = (change: Partial<AuditEntry>): AuditEntry => ({
  date: '2026-11-25',
  radio: 'handheld',
  for: 'inez',
  by: 'ward',
  revision: 3,
  check: 'N5L3',
  slots: 8,
  ...change,
});

describe('the record of clean audits', () => {
  test('is read back as it was written', () => {
    const entries = [entry({}), entry({ for: 'otis', date: '2026-11-26' })];
    expect(readAuditRecord(writeAuditRecord(entries), 'r.json')).toEqual(entries);
  });

  test.each(['', '[]', '{}', '{"readback-record":1,"audits":[{}]}', '{"readback-record":2,"audits":[]}'])(
    '%j is not taken for one, so that it is not overwritten',
    (text) => {
      expect(() => readAuditRecord(text, 'r.json')).toThrow(Refusal);
    },
  );

  test('the last audit of a radio counts, and one with another plan check holds another plan', () => {
    const held = holdings(
      [
        entry({ revision: 2, check: 'A2C4' }),
        entry({ date: '2026-11-26' }),
        entry({ for: 'otis', revision: 2, check: 'A2C4' }),
      ],
      'N5L3',
    );
    expect(held.map((each) => [each.for, each.current])).toEqual([
      ['inez', true],
      ['otis', false],
    ]);
    expect(holdingsText(held)).toBe(
      'The record: 1 radio holds this plan; 1 holds another (otis: revision 2, A2C4).',
    );
  });
});
