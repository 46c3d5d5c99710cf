import { extractText, getDocumentProxy } from 'unpdf';
import { expect, test } from 'vitest';
import { documentSet } from '../../src/documents/document-set.ts';
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
  // Juno holds a MURS handheld and no amateur licence; Bram a GMRS one.
  const { files } = await documentSet(await subjectOf(demoPlan), press(), { packs: true });
  const text = await textOf(files.get('packs/bram/gmrs-handheld.pdf'));
  expect(text).toContain('Listen only');
});
