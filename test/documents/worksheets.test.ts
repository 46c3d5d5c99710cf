import { expect, test } from 'vitest';
import { english } from '../../src/documents/words.ts';
import { gatherWorksheets } from '../../src/documents/worksheets.ts';
import { demoPlan, subjectOf } from './press.ts';

async function sheetsOf(text: string) {
  const { plan, consequences } = await subjectOf(text);
  return gatherWorksheets(plan, consequences, 'A1A1', english);
}

async function channelOf(text: string, radio: string, slot: number) {
  const sheet = (await sheetsOf(text)).find(({ id }) => id === radio);
  const channel = sheet?.rows
    .flatMap(({ places }) => places)
    .find((place) => !place.empty && place.slot === slot);
  if (sheet === undefined || channel === undefined || channel.empty) throw new Error(`no slot ${slot}`);
  return {
    channel,
    said: new Map([...sheet.same, ...channel.entries].map(({ field, value }) => [field, value])),
  };
}

test('no figure of a worksheet stands without its unit', async () => {
  for (const sheet of await sheetsOf(demoPlan)) {
    const channels = sheet.rows.flatMap(({ places }) =>
      places.flatMap((place) => (place.empty ? [] : place.entries)),
    );
    for (const { field, value } of [...sheet.same, ...channels]) {
      // Names, and codes such as D023N, are no figures.
      if (field === 'Name' || !/^\d/.test(value)) continue;
      expect(`${field} ${value}`).toMatch(/, (?:MHz|Hz) [\d.]+(?: \d+)?$|\d kHz$/);
    }
  }
});

test('an offset has as many decimals as a frequency, and a code has no hertz', async () => {
  const gap = (await channelOf(demoPlan, 'handheld', 1)).said;
  expect([gap.get('Receive, MHz'), gap.get('Offset, MHz'), gap.get('Tone, Hz')]).toEqual([
    '146.940',
    '0.600',
    '100.0',
  ]);
  const piney = (await channelOf(demoPlan, 'handheld', 2)).said;
  expect([piney.get('Offset, MHz'), piney.get('Tone')]).toEqual(['5.000', 'D023N']);
});

test('the frame of a channel is headed by the name that this radio shows', async () => {
  const { channel, said } = await channelOf(
    demoPlan.replace('{ name: SIMP 1, ', '{ name: LONGNAME4, '),
    'handheld',
    3,
  );
  expect(channel.name).toBe(said.get('Name'));
  expect(channel.name.length).toBeLessThanOrEqual(7);
});
