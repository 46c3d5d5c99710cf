import { expect, test } from 'vitest';
import { load } from '../../src/plan/load.ts';
import type { Plan } from '../../src/plan/model.ts';
import { everyKey } from './every-key.ts';
import { onlySaid, said, slip } from './slip.ts';

const loaded = load(everyKey, 'plan.yaml');
const plan = loaded.plan as Plan;

test('a plan that uses every key of the language has nothing wrong', () => {
  expect(loaded.findings.map(({ message }) => message)).toEqual([]);
  expect(loaded.plan).toBeDefined();
});

test('the head says what the plan is called, which revision it is, when it holds and under whose rules', () => {
  expect(plan).toMatchObject({
    title: 'Every key',
    revision: 12,
    effective: '2026-12-01',
    reviewBy: '2027-06-01',
    language: 'en',
    timezone: 'America/New_York',
    rules: ['us', 'rules/county.yaml'],
    coordinator: 'ada',
    notes: ['First line', 'Second line'],
  });
});

test('places are held in degrees and metres however they are written', () => {
  expect(plan.places.get('base')).toEqual({
    id: 'base',
    name: 'Base',
    at: { latitudeDeg: 36.6192, longitudeDeg: -84.201 },
    elevationM: 402,
    kind: 'base',
  });
  // 2000 ft, with 1 ft = 0.3048 m exactly (international foot of 1959).
  expect(plan.places.get('hill')?.elevationM).toBeCloseTo(609.6, 9);
  expect(plan.places.get('ford')).not.toHaveProperty('elevationM');
  expect(plan.places.get('ford')?.kind).toBe('field');
});

test('terrain names its files, and profiles typed from a map are held in metres', () => {
  expect(plan.terrain).toEqual({
    files: ['terrain/a.tif', 'terrain/b.hgt'],
    woodlandM: 15,
    profiles: [
      {
        from: 'ford',
        to: 'base',
        heights: [
          [0, 410],
          [1200, 520.5],
          [2400, 402],
        ],
      },
    ],
  });
});

test('a kind of radio is held in whole hertz, watts, amperes and decibels', () => {
  expect(plan.radios.get('handheld')).toEqual({
    id: 'handheld',
    name: 'Handheld',
    transmits: [
      { fromHz: 144_000_000, toHz: 148_000_000 },
      { fromHz: 420_000_000, toHz: 450_000_000 },
    ],
    receives: [
      { fromHz: 136_000_000, toHz: 174_000_000 },
      { fromHz: 400_000_000, toHz: 480_000_000 },
      { fromHz: 118_500_000, toHz: 118_500_000 },
    ],
    certified: ['amateur', 'gmrs'],
    memories: [
      { from: 0, to: 9 },
      { from: 11, to: 128 },
    ],
    nameLength: 7,
    stepsHz: [5000, 6250, 12_500],
    widthsHz: [25_000, 12_500],
    tones: ['ctcss', 'dcs', expect.anything()],
    modes: ['fm', 'packet'],
    powersW: new Map([
      ['high', 5],
      ['low', 0.5],
    ]),
    // A half-wave dipole has 2.15 dBi, so -5 dBd is -2.85 dBi.
    antenna: {
      gainDbi: expect.closeTo(-2.85, 2),
      heightM: 1.5,
      carried: 'hand',
      counterpoise: true,
      feedLossDb: 0.5,
    },
    sensitivityDbm: -119,
    battery: { energyWh: 11, spares: 1, volts: 7.4, standbyA: 0.06, receiveA: 0.18, transmitA: 1.5 },
    entryOrder: [
      'receive',
      'transmit',
      'step',
      'mode',
      'offset-direction',
      'offset',
      'tone-kind',
      'tone',
      'receive-tone',
      'width',
      'power',
      'name',
    ],
  });
});

test('a radio that cannot transmit needs no more than its name, its ranges and its slots', () => {
  expect(plan.radios.get('plain')).toMatchObject({
    transmits: [],
    certified: [],
    nameLength: 0,
    stepsHz: [],
    widthsHz: [],
    tones: [],
    modes: ['fm'],
    powersW: new Map([['high', 25]]),
    antenna: {},
  });
});

test('members have licences by service, radios, places and a contact that is private unless shared', () => {
  expect(plan.members.get('ada')).toEqual({
    id: 'ada',
    name: 'Ada Example',
    licences: new Map([
      ['amateur', { class: 'general', call: 'KX4XAA', expires: '2033-02-01' }],
      ['gmrs', { call: 'WZZZ401', expires: '2031-05-09', authority: 'County leave, 12/7' }],
    ]),
    radios: ['handheld', 'plain'],
    at: 'base',
    roams: ['hill', 'ford'],
    contact: new Map([
      ['phone', '555-0142'],
      ['door', 'Green gate'],
    ]),
    contactShared: true,
  });
  expect(plan.members.get('ben')).toEqual({
    id: 'ben',
    name: 'Ben Example',
    licences: new Map(),
    radios: ['plain'],
    roams: ['hill'],
    contact: new Map(),
    contactShared: false,
  });
});

test('teams and assets', () => {
  expect(plan.teams).toEqual(new Map([['trail', ['ada', 'ben']]]));
  expect(plan.assets.get('feeder')).toEqual({
    id: 'feeder',
    name: 'Valley feeder',
    dependsOn: ['mill'],
    backupMin: 90,
  });
});

test('a repeater is held by both its frequencies in whole hertz, and remembers which was written', () => {
  expect(plan.repeaters.get('gap')).toMatchObject({
    call: 'W4XGP',
    outputHz: 146_940_000,
    inputHz: 146_340_000,
    writtenAs: 'offset',
    service: 'amateur',
    widthHz: 25_000,
    place: 'hill',
    powerW: 25,
    sensitivityDbm: -119,
    timeOutMin: 3,
    coordinated: true,
    dependsOn: ['feeder'],
    backupMin: 720,
  });
  expect(plan.repeaters.get('gap')?.tone).toMatchObject({ kind: 'ctcss' });
  expect(plan.repeaters.get('gap')?.outputTone).toMatchObject({ kind: 'dcs' });
  expect(plan.repeaters.get('by-input')).toMatchObject({
    outputHz: 444_325_000,
    inputHz: 449_325_000,
    writtenAs: 'input',
  });
});

test('mailboxes, digipeaters and the routes between them', () => {
  expect(plan.mailboxes.get('home')).toMatchObject({
    id: 'home',
    name: 'Home mailbox',
    call: 'KX4XAA-10',
    place: 'base',
    channel: 19,
    powerW: 25,
    sensitivityDbm: -120,
    dependsOn: ['feeder'],
    backupMin: 1440,
  });
  expect(plan.digipeaters.get('ridge')).toMatchObject({ name: 'ridge', call: 'KX4XRG-3', channel: 19 });
  expect(plan.routes).toEqual([{ from: 'ford', to: 'home', through: ['ridge'] }]);
});

test('channels are held by slot number, each of one kind', () => {
  expect([...plan.channels.keys()]).toEqual([1, 3, 7, 9, 19, 21]);
  expect(plan.channels.get(1)).toEqual({
    slot: 1,
    name: 'GAP',
    use: 'First call',
    mode: 'fm',
    power: 'high',
    kind: 'repeater',
    repeater: 'gap',
  });
  expect(plan.channels.get(3)).toMatchObject({
    kind: 'simplex',
    frequencyHz: 146_550_000,
    widthHz: 12_500,
    power: 0.5,
    service: 'amateur',
    tone: { kind: 'ctcss' },
    receiveTone: { kind: 'dcs' },
  });
  expect(plan.channels.get(7)).toMatchObject({ kind: 'standard', standard: 'GMRS 20' });
  expect(plan.channels.get(9)).toMatchObject({ kind: 'listen', frequencyHz: 162_550_000 });
  expect(plan.channels.get(19)).toMatchObject({ mode: 'packet' });
  expect(plan.channels.get(21)).toMatchObject({
    kind: 'split',
    receiveHz: 147_505_000,
    transmitHz: 146_505_000,
  });
});

test('check-ins are held in minutes, days as ISO 8601 numbers them, and UTC told from local time', () => {
  expect(plan.checkIns.get('morning')).toEqual({
    id: 'morning',
    name: 'Morning',
    channel: 1,
    listen: false,
    days: { kind: 'weekdays', isoDays: [1, 2, 3, 4, 5, 6, 7] },
    at: { minute: 450, utc: false },
    lastsMin: 15,
    who: 'all',
    control: ['ada', 'ben'],
    turn: 'day',
    missed: 'trail',
  });
  expect(plan.checkIns.get('watch')).toEqual({
    id: 'watch',
    name: 'Watch',
    channel: 3,
    listen: true,
    days: { kind: 'weekdays', isoDays: [1, 4] },
    at: { minute: 870, utc: true },
    until: { minute: 1140, utc: true },
    repeatsMin: 180,
    lastsMin: 5,
    who: ['trail'],
    control: ['ada'],
    turn: 'time',
  });
  expect(plan.checkIns.get('first-monday')).toMatchObject({
    days: { kind: 'recurrence', rrule: 'FREQ=MONTHLY;BYDAY=1MO' },
    lastsMin: 10,
    who: ['ada', 'trail'],
    control: [],
    turn: 'week',
  });
});

test('a ladder has its rungs in order, each with one thing to do', () => {
  expect(plan.ladders.get('trail')).toEqual({
    id: 'trail',
    name: 'From the trail',
    who: ['trail'],
    reach: ['ada'],
    rungs: [
      { grade: 'primary', channel: 1, calls: 3, withinMin: 5, through: [], dependsOn: [] },
      { grade: 'alternate', channel: 3, from: 'hill', through: [], dependsOn: [] },
      { grade: 'contingency', channel: 19, mailbox: 'home', through: ['ridge'], dependsOn: [] },
      { grade: 'emergency', meet: 'ford', at: 'next even hour', through: [], dependsOn: [] },
      { grade: 'emergency', other: 'Runner to the base', through: [], dependsOn: ['mill'] },
    ],
  });
});

test('trials, accepted findings and cards', () => {
  expect(plan.trials).toEqual([
    {
      date: '2026-11-14',
      from: 'ford',
      to: 'gap',
      channel: 1,
      radio: 'handheld',
      member: 'ada',
      heard: 'readable',
      report: '5 by 7',
    },
  ]);
  expect(plan.accepted).toEqual([
    {
      rule: 'offset/unusual',
      at: 'repeaters.gap',
      because: 'Coordinated as an odd split',
      until: '2027-06-01',
    },
  ]);
  expect(plan.cards).toEqual({
    size: 'fold',
    sheet: 'a4',
    flip: 'short-edge',
    qr: true,
    notes: ['Any channel when life is at risk.'],
    backShiftMm: [0.5, -1],
  });
});

test('a plan of two lines is whole: every section but the head may be left out', () => {
  const head = everyKey.slice(everyKey.indexOf('plan:'), everyKey.indexOf('places:'));
  const { plan: small, findings } = load(`readback: 1\n${head}`, 'plan.yaml');
  expect(findings).toEqual([]);
  expect(small?.channels.size).toBe(0);
  expect(small?.cards).toEqual({
    size: 'id-1',
    sheet: 'letter',
    flip: 'long-edge',
    notes: [],
    backShiftMm: [0, 0],
  });
});

test('an id may be the name of something every object of the language has', () => {
  const text = everyKey.replaceAll(/\bben\b/g, 'constructor');
  expect(load(text, 'plan.yaml').plan?.members.get('constructor')?.name).toBe('Ben Example');
});

test.each([
  [
    'offset: -0.6\n    service',
    'service',
    'A repeater needs an offset or an input, so that members know what to transmit on.',
  ],
  [
    'offset: -0.6',
    'offset: -0.6\n    input: 146.340',
    'A repeater has an offset or an input, not both: one of them could contradict the other.',
  ],
  [
    'offset: -0.6',
    'offset: -600',
    'An offset of -600 MHz would put the input below 0 MHz, for the output is 146.94 MHz.',
  ],
  [
    'output: 146.940',
    'output: 146.9400001',
    'A frequency is a whole number of hertz; "146.9400001" is finer than 1 Hz.',
  ],
  ['output: 146.940', 'output: 0', 'A frequency is more than zero; this one is "0".'],
  [
    'output: 146.940',
    'output: 146,940',
    'A frequency has a point, not a comma, before its decimals; this one is "146,940".',
  ],
  ['output: 146.940', 'output:', 'Expected a frequency in MHz, such as 146.940; found nothing.'],
  ['gain: -5 dBd', 'gain: -5 W', 'An antenna gain is written in dBi or dBd, not in "W".'],
  ['elevation: 402 m', 'elevation: 402 W', 'A length is written in m, km, ft, mi or cm, not in "W".'],
  ['high: 5 W', 'high: 5 kHz', 'A power is written in W, mW or kW, not in "kHz".'],
  [
    'simplex: 146.550, ',
    '',
    'The channel has no frequency: write one of repeater, simplex, standard, listen, or receive and transmit.',
  ],
  [
    'listen: 162.550',
    'receive: 162.550',
    'The channel has `receive` without `transmit`; a frequency only listened to is written `listen`.',
  ],
  [
    'simplex: 145.010',
    'simplex: 145.010, repeater: gap',
    'The channel says `repeater` and `simplex`; one of them decides its frequency, so the others must go.',
  ],
  ['repeats: 3 h, ', '', '`until` needs `repeats`: how long from one start to the next.'],
  ['meet: ford, ', '', 'The rung says nothing to do: write channel, meet or other.'],
  [
    'grade: emergency, meet',
    'grade: last, meet',
    'Expected one of primary, alternate, contingency, emergency; found `last`.',
  ],
  ['heights: [[0, 410]', 'heights: [[0.1, 410]', 'A profile begins at distance 0.'],
  ['[1.2, 520.5]', '[3.2, 520.5]', 'The distances of a profile rise from one end to the other.'],
  ['memories: 1-16', 'memories: 16-1', 'The range `16-1` runs backwards.'],
  ['receives: 136-174', 'receives: 174-136', 'The range `174-136` runs backwards.'],
  ['effective: 2026-12-01', 'effective: 2026-02-30', 'There is no day 2026-02-30 in the calendar.'],
  [
    'effective: 2026-12-01',
    'effective: 12/1/2026',
    '`12/1/2026` is not a date; dates are written year-month-day, such as 2026-12-01.',
  ],
  ['days: [thu, Monday]', 'days: [thu, mun]', '`mun` is not a day of the week.'],
  [
    'FREQ=MONTHLY;BYDAY=1MO',
    'FREQ=MONTHLY;COUNT=abc',
    '`COUNT=abc` is not a valid part of a recurrence rule (RFC 5545, 3.3.10).',
  ],
  ['FREQ=MONTHLY;BYDAY=1MO', 'BYDAY=1MO', 'A recurrence rule needs FREQ, such as FREQ=WEEKLY.'],
  ['back-shift: [0.5, -1]', 'back-shift: [0.5, -50]', 'Expected at most 10 mm; found the number -50.'],
  ['readback: 1', 'readback: 2', 'Expected 1, the version of the plan language; found the number 2.'],
  [
    '  ben: {',
    '  Ben: {',
    '`Ben` is not an id: a small letter, then small letters, digits and hyphens, 32 at most.',
  ],
  ['name: WX', 'name: 9', 'Expected a name; found the number 9.'],
  [
    'name: WX',
    'name: "W\\e[31mX"',
    'This text holds a control character, which can be neither seen nor printed.',
  ],
])('instead of %j, %j is met with words', (piece, written, message) => {
  expect(onlySaid(slip(piece, written)).message).toBe(message);
});

test('a position in no known form is answered with a good example of each form', () => {
  const { message } = onlySaid(slip('at: EM76uo', 'at: by the big oak'));
  expect(message).toMatch(/-?\d+\.\d+, -?\d+\.\d+/);
  expect(message).toMatch(/\b[A-R]{2}\d{2}[a-x]{2}\b/);
  expect(message).toMatch(/\b\d{1,2}[C-X][A-Z]{2}\s?\d+/);
});

test('each unit that fits is accepted, and means the same', () => {
  const powers = ['5 W', '5000 mW', '0.005 kW', '5W', '5'].map((written) =>
    load(slip('high: 5 W', `high: ${written}`), 'plan.yaml')
      .plan?.radios.get('handheld')
      ?.powersW.get('high'),
  );
  expect(powers).toEqual([5, 5, 5, 5, 5]);
  const offsets = ['-0.6', '-0.6 MHz', '-600 kHz', '-600kHz', '"-0.600"'].map(
    (written) =>
      load(slip('offset: -0.6', `offset: ${written}`), 'plan.yaml').plan?.repeaters.get('gap')?.inputHz,
  );
  expect(offsets).toEqual(offsets.map(() => 146_340_000));
});

test('a repeater frequency is never off by a hertz, at any step of the two-metre band', () => {
  for (let khz = 144_000; khz <= 148_000; khz += 115) {
    const written = `${Math.floor(khz / 1000)}.${String(khz % 1000).padStart(3, '0')}`;
    const { plan: one } = load(slip('output: 146.940', `output: ${written}`), 'plan.yaml');
    expect(one?.repeaters.get('gap')).toMatchObject({ outputHz: khz * 1000, inputHz: khz * 1000 - 600_000 });
  }
});

test('all errors of a file are said at once', () => {
  const text = everyKey
    .replace('revision: 12', 'revision: twelve')
    .replace('    output: 146.940\n', '')
    .replace('tone: 88.5', 'tonne: 88.5')
    .replace('mode: packet', 'mode: pocket')
    .replace('lasts: 5 min', 'lasts: 5 W')
    .replace('sheet: a4', 'sheet: a5');
  expect(said(text).map(({ rule, at }) => `${rule} ${at}`)).toEqual([
    'plan/wrong-value plan.revision',
    'plan/missing-entry repeaters.gap.output',
    'plan/unknown-key channels.3.tonne',
    'plan/wrong-value channels.19.mode',
    'plan/wrong-value check-ins.watch.lasts',
    'plan/wrong-value cards.sheet',
  ]);
});
