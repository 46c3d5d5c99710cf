import { expect, test } from 'vitest';
import { foundBy } from '../found-by.ts';

const channels =
  'channels:\n  1: { name: GAP, repeater: gap }\n  3: { name: SIMP, simplex: 146.550, width: 25 }\n  9: { name: POS, simplex: 144.390, mode: packet, width: 25 }\n';

// 144.390: positions by 1200-baud packet (ARRL band plan, in public copies).
test('positions may be reported on the frequency for them, and mail may not be sent there', async () => {
  expect(await foundBy('band-plan/packet-outside-plan', channels)).toEqual([]);
  const mailbox =
    'packet:\n  mailboxes:\n    home: { name: Home mailbox, call: KX4XAA-10, place: base, channel: 9 }\n';
  const [found, ...more] = await foundBy('band-plan/packet-outside-plan', channels + mailbox);
  expect(more).toEqual([]);
  expect(found).toMatch(
    /^channels\.9\.simplex: Packet at 144\.390 MHz .* nearest frequency for packet is 144\.910 MHz/,
  );
});
