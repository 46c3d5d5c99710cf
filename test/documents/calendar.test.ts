import ICAL from 'ical.js';
import { expect, test } from 'vitest';
import { gatherCalendars } from '../../src/documents/calendar.ts';
import { type IcsCalendar, ics } from '../../src/documents/formats/ics.ts';
import { english } from '../../src/documents/words.ts';
import { example } from '../consequences/example.ts';

const head = (zone: string, effective = '2026-12-01') => `
plan:
  title: Example; with, signs
  revision: 1
  effective: ${effective}
  review-by: 2027-12-01
  timezone: ${zone}
  rules: us
  coordinator: ada
`;

/** Instants of all events of a calendar within a span, as ical.js finds them, by the zones in the file alone. */
function instants(calendar: IcsCalendar, from: string, to: string): readonly string[] {
  const root = new ICAL.Component(ICAL.parse(new TextDecoder().decode(ics(calendar))));
  ICAL.TimezoneService.reset();
  for (const zone of root.getAllSubcomponents('vtimezone')) ICAL.TimezoneService.register(zone);
  const [fromMs, toMs] = [Date.parse(from), Date.parse(to)];
  return root
    .getAllSubcomponents('vevent')
    .flatMap((component) => {
      const event = new ICAL.Event(component);
      const found: string[] = [];
      const starts = event.iterator();
      for (let next = starts.next(); next; next = starts.next()) {
        const atMs = next.toJSDate().getTime();
        if (atMs >= toMs) break;
        if (atMs >= fromMs) found.push(`${new Date(atMs).toISOString().slice(0, 16)}Z ${event.summary}`);
      }
      return found;
    })
    .toSorted();
}

const all = 'lasts: 15 min, who: all, control: [ada, ben], turn: week, missed: first';
const checkIns = `
check-ins:
  morning: { name: Morning, channel: 1, days: every day, at: "07:30", ${all} }
  round: { name: Round, channel: 1, days: [mon, thu], at: "19:00", ${all} }
  sunday: { name: Sunday, channel: 1, days: "FREQ=MONTHLY;BYDAY=-1SU", at: "20:15", ${all} }
  fortnight: { name: Fortnight, channel: 1, days: "FREQ=WEEKLY;INTERVAL=2;BYDAY=MO,WE;UNTIL=20270630", at: "21:00", ${all} }
  course: { name: Course, channel: 1, days: "FREQ=WEEKLY;COUNT=6;BYDAY=SA", at: "09:00", ${all} }
  world: { name: World, channel: 1, days: every day, at: "01:00Z", ${all} }
  night: { name: Night, listen: true, channel: 3, days: [fri, sat], at: "22:00", until: "04:00", repeats: 3 h, lasts: 5 min, who: all }
`;

// Oracle: ical.js expands the file, its zone rules and its recurrence rules; the plan's own occurrences are found
// through the platform's zone database and another library. A start of the first days before the rule is none.
test.each([
  'America/New_York',
  'Europe/London',
  'Europe/Berlin',
  'Australia/Sydney',
  'Australia/Lord_Howe',
  'Pacific/Auckland',
  'Asia/Kolkata',
  'America/Phoenix',
])(
  'in %s the calendar holds every check-in at its instant, through a year of clock changes, and nothing else',
  async (zone) => {
    const { plan, consequences } = await example(head(zone) + checkIns);
    const calendars = await gatherCalendars(plan, consequences, 'M7J9', english);
    const occurrences = await consequences.occurrences('2026-12-01', '2027-12-05');
    const line = (instantMs: number, name: string) =>
      `${new Date(instantMs).toISOString().slice(0, 16)}Z ${name}`;
    // Readers differ in what they make of a time that does not exist or comes twice: those nights are left out.
    const unsure = new Set(
      occurrences
        .filter(({ moment }) => moment.kind !== 'once')
        .flatMap(({ checkIn, moment }) =>
          [-1, 0, 1].map((hour) => line(moment.instantMs + hour * 3_600_000, checkIn.name)),
        ),
    );
    const held = occurrences
      .map(({ checkIn, moment }) => line(moment.instantMs, checkIn.name))
      .filter((each) => each < '2027-12-01' && !unsure.has(each))
      .toSorted();
    const found = calendars ? instants(calendars.group, '2026-11-01', '2027-12-01') : [];
    expect(held.length).toBeGreaterThan(900);
    expect(found.filter((each) => !unsure.has(each))).toEqual(held);
  },
);

test("a member's calendar has their own turns as net control, each when it is theirs", async () => {
  const { plan, consequences } = await example(head('America/New_York') + checkIns);
  const calendars = await gatherCalendars(plan, consequences, 'M7J9', english);
  const ben = calendars?.members.get('ben');
  const turns = (await consequences.occurrences('2026-12-01', '2027-12-01'))
    .filter(({ control }) => control === 'ben')
    .map(
      ({ checkIn, moment }) =>
        `${new Date(moment.instantMs).toISOString().slice(0, 16)}Z You are net control: ${checkIn.name}`,
    )
    .filter((each) => each < '2027-11-20')
    .toSorted();
  expect(turns.length).toBeGreaterThan(200);
  const found = ben
    ? instants(ben, '2026-11-01', '2027-11-20').filter((each) => each.includes('net control'))
    : [];
  expect(found).toEqual(turns);
});

test("a member's calendar names nobody else and holds nothing private", async () => {
  const { plan, consequences } = await example(`${head('America/New_York')}${checkIns}
members:
  ada: { name: Ada Example, licences: { amateur: { class: general, call: KX4XAA, expires: 2033-02-01 } }, radios: [handheld], at: base, contact: { phone: 555-0142 } }
  ben: { name: Ben Sample, licences: { amateur: { class: technician, call: KX4XBB, expires: 2033-02-01 } }, radios: [handheld], at: base, contact: { phone: 555-0143 } }
`);
  const calendars = await gatherCalendars(plan, consequences, 'M7J9', english);
  const written = (calendar: IcsCalendar | undefined) =>
    (calendar ? new TextDecoder().decode(ics(calendar)) : '').replaceAll('\r\n ', '');
  const ben = written(calendars?.members.get('ben'));
  expect(ben).toContain('Ben Sample');
  for (const other of ['Ada', 'KX4XAA', '555-0142', '555-0143']) expect(ben).not.toContain(other);
  expect(written(calendars?.group)).not.toContain('555-');
});

test('a time that the clocks leave out, or show twice, is said in the entry', async () => {
  const { plan, consequences } = await example(`${head('America/New_York')}
check-ins:
  late: { name: Late, channel: 1, days: every day, at: "02:30", ${all} }
  early: { name: Early, channel: 1, days: every day, at: "01:30", ${all} }
`);
  const [late, early] = (await gatherCalendars(plan, consequences, 'M7J9', english))?.group.events ?? [];
  expect(late?.description).toContain('On 2027-03-14 the clocks leave this time out');
  expect(early?.description).toContain('On 2027-11-07 this time comes twice');
});

test('a plan whose zone is in no database has no calendars', async () => {
  const { plan, consequences } = await example(head('America/New_Yrok'));
  expect(await gatherCalendars(plan, consequences, 'M7J9', english)).toBeUndefined();
});
