import { readdirSync, readFileSync } from 'node:fs';
import { describe, expect, test } from 'vitest';
import { auditOf, planFrom, type TestedPlan, tableOf, worksheetRows } from './worksheet-rows.ts';

const folder = new URL('../../plans/', import.meta.url);
const plans = readdirSync(folder).filter((name) => name.endsWith('.yaml'));

function radiosWithChannels({ plan, consequences }: TestedPlan) {
  return [...plan.radios.values()].filter((radio) => consequences.slotsOf(radio.id).length > 0);
}

describe.each(plans)('%s', (name) => {
  test('a radio filled in as its worksheet says is audited clean, whichever kind it is', async () => {
    const tested = await planFrom(readFileSync(new URL(name, folder), 'utf8'));
    const radios = radiosWithChannels(tested);
    expect(radios.length).toBeGreaterThan(0);
    for (const radio of radios) {
      const audit = auditOf(tested, radio, tableOf(worksheetRows(tested, radio)));
      expect(audit.differences, radio.id).toEqual([]);
      expect(audit.unclear, radio.id).toEqual([]);
      expect(audit.unread, radio.id).toEqual([]);
      expect(audit.clean).toBe(true);
    }
  });

  test('a sheet with one channel left out is not clean', async () => {
    const tested = await planFrom(readFileSync(new URL(name, folder), 'utf8'));
    for (const radio of radiosWithChannels(tested)) {
      const rows = worksheetRows(tested, radio).slice(1);
      if (rows.length === 0) continue;
      const audit = auditOf(tested, radio, tableOf(rows));
      expect(audit.clean).toBe(false);
      expect(audit.unread.map(({ whole }) => whole)).toEqual([true]);
    }
  });
});
