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

describe('what was read', () => {
  const without = async (radioId: string, ...left: readonly string[]) => {
    const tested = await planFrom(readFileSync(new URL('hickory-gap.yaml', folder), 'utf8'));
    const radio = tested.plan.radios.get(radioId);
    if (radio === undefined) throw new Error(`the demo has no ${radioId}`);
    const rows = worksheetRows(tested, radio).map(
      (row) => new Map([...row].filter(([column]) => !left.includes(column))),
    );
    return auditOf(tested, radio, tableOf(rows));
  };

  test.each(['receive', 'offset direction', 'offset', 'tone'])(
    'a radio of which nobody read the %s is not known to hold the plan',
    async (column) => {
      const audit = await without('handheld', column);
      expect(audit.differences).toEqual([]);
      expect(audit.clean).toBe(false);
    },
  );

  test('a name, a power or a step that no display shows does not keep a radio from being clean', async () => {
    expect((await without('handheld', 'name', 'power', 'step', 'width')).clean).toBe(true);
  });
});
