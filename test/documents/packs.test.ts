import { extractText, getDocumentProxy } from 'unpdf';
import { expect, test } from 'vitest';
import { documentSet } from '../../src/documents/document-set.ts';
import { english } from '../../src/documents/words.ts';
import { gatherWorksheets } from '../../src/documents/worksheets.ts';
import { demoPlan, press, subjectOf } from './press.ts';

async function textOf(pdf: Uint8Array | undefined): Promise<string> {
  if (pdf === undefined) throw new Error('there is no such file');
  const { text } = await extractText(await getDocumentProxy(pdf.slice()), { mergePages: true });
  return text;
}

test("a member's pack holds their card, a worksheet for each of their radios and their calendar", async () => {
  const { files } = await documentSet(await subjectOf(demoPlan), press(), { packs: true });
  expect([...files.keys()].filter((path) => path.startsWith('packs/ward/')).toSorted()).toEqual([
    'packs/ward/calendar.ics',
    'packs/ward/card.pdf',
    'packs/ward/gmrs-handheld.pdf',
    'packs/ward/handheld.pdf',
  ]);
});

test("a member's pack holds no contact, call sign or whole name of anybody else who shares none", async () => {
  const subject = await subjectOf(demoPlan);
  const { files } = await documentSet(subject, press(), { packs: true });
  const { members } = subject.plan;
  for (const member of members.values()) {
    for (const [path, bytes] of files) {
      if (!path.startsWith(`packs/${member.id}/`) || !path.endsWith('.pdf')) continue;
      // A station on the air is called by its address, whoever keeps it.
      const text = [...subject.plan.mailboxes.values()].reduce(
        (words, { call }) => words.replaceAll(call, ''),
        await textOf(bytes),
      );
      for (const other of members.values()) {
        if (other.id === member.id) continue;
        for (const value of other.contact.values()) expect(text).not.toContain(value);
        expect(text, `${path} names ${other.name}`).not.toContain(other.name);
        const own = [...member.licences.values()].map(({ call }) => call);
        // A family shares one call sign, and a repeater may bear the call of its owner.
        for (const { call } of other.licences.values())
          if (call !== undefined && !own.includes(call)) expect(text).not.toContain(call);
      }
    }
  }
});

test('a private contact is printed nowhere, and one that is shared only in the booklet', async () => {
  const shared = demoPlan.replace(
    'contact: { phone: 555-0142 }',
    'contact: { phone: 555-0142 }\n    contact-shared: true',
  );
  for (const [text, isShared] of [
    [demoPlan, false],
    [shared, true],
  ] as const) {
    const { files } = await documentSet(await subjectOf(text), press(), { packs: true });
    const holding: string[] = [];
    for (const [path, bytes] of files) {
      const words = path.endsWith('.pdf') ? await textOf(bytes) : new TextDecoder().decode(bytes);
      if (words.includes('555-0142')) holding.push(path);
    }
    expect(holding).toEqual(isShared ? ['booklet.pdf', 'booklet.html'] : []);
  }
});

test('on their own worksheet a channel that the member may not transmit on has neutral values', async () => {
  // Hollis without her licence: 47 CFR 97.5 asks one of whoever has the apparatus of an amateur station on the air.
  const licence = 'licences: { amateur: { class: technician, call: KX4XHG, expires: 2035-02-27 } }\n    ';
  const { plan, consequences } = await subjectOf(demoPlan.replace(licence, ''));
  const sheetFor = (id: string) => {
    const sheet = gatherWorksheets(plan, consequences, 'A1A1', english, plan.members.get(id))[0];
    const places = sheet?.rows.flatMap((row) => row.places) ?? [];
    const channel = places.find((place) => !place.empty && place.slot === 1);
    if (sheet === undefined || channel === undefined || channel.empty) throw new Error(`no slot 1 for ${id}`);
    const said = (field: string) =>
      [...sheet.same, ...channel.entries].find((entry) => entry.field.split(',')[0] === field)?.value;
    return { channel, values: ['Offset direction', 'Tone', 'Power'].map(said) };
  };
  const hers = sheetFor('hollis');
  expect(hers.channel.listenOnly).toBe(true);
  // A radio has no setting of no power: it is never keyed there.
  expect(hers.values).toEqual(['none', 'none', expect.stringMatching(/^any\b/)]);
  expect(sheetFor('otis').values).toEqual(['minus', '100.0', 'high 5 W']);
});
