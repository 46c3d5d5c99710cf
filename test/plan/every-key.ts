/** An invented plan in which every key of the language is written once at least. */
export const everyKey = `# Every key of the language, with figures of nobody's.
readback: 1

plan:
  title: Every key
  revision: 12
  effective: 2026-12-01
  review-by: 2027-06-01
  timezone: America/New_York
  language: en
  rules: [us, rules/county.yaml]
  coordinator: ada
  notes: [First line, Second line]

places:
  base: { name: Base, at: "36.6192, -84.2010", elevation: 402 m, kind: base }
  hill: { name: The Hill, at: EM76uo, elevation: 2000 ft, kind: high-ground }
  ford: { name: Slate Ford, at: 16SGF3424 }

terrain:
  files: [terrain/a.tif, terrain/b.hgt]
  woodland: 15 m
  profiles:
    - { from: ford, to: base, heights: [[0, 410], [1.2, 520.5], [2.4, 402]] }

radios:
  handheld:
    name: Handheld
    transmits: [144-148, 420-450 MHz]
    receives: [136-174, 400-480, 118.5]
    certified: [amateur, gmrs]
    memories: [0-9, 11-128]
    name-length: 7
    steps: [5, 6.25, 12.5 kHz]
    widths: [25, 12.5]
    tones: [ctcss, dcs, 100.0]
    modes: [fm, packet]
    powers: { high: 5 W, low: 500 mW }
    antenna: { gain: -5 dBd, height: 1.5 m, carried: hand, counterpoise: true, feed-loss: 0.5 dB }
    sensitivity: -119 dBm
    battery: { energy: 11 Wh, spares: 1, volts: 7.4, standby: 60 mA, receive: 180 mA, transmit: 1.5 A }
    entry-order: [receive, transmit, step, mode, offset-direction, offset, tone-kind, tone, receive-tone, width, power, name]
  plain:
    name: Plain radio
    receives: 136-174
    memories: 1-16
    powers: 25 W

members:
  ada:
    name: Ada Example
    licences:
      amateur: { class: General, call: kx4xaa, expires: 2033-02-01 }
      gmrs: { call: WZZZ401, expires: 2031-05-09, authority: "County leave, 12/7" }
    radios: [handheld, plain]
    at: base
    roams: [hill, ford]
    contact: { phone: "555-0142", door: Green gate }
    contact-shared: true
  ben: { name: Ben Example, radios: plain, roams: hill }

teams:
  trail: [ada, ben]

assets:
  feeder: { name: Valley feeder, depends-on: [mill], backup: 90 min }
  mill: { name: Mill race }

repeaters:
  gap:
    name: Gap repeater
    call: w4xgp
    output: 146.940
    offset: -0.6
    service: amateur
    tone: 100.0
    output-tone: D023I
    width: 25
    place: hill
    antenna: { gain: 3 dBd, height: 12 m }
    power: 25 W
    sensitivity: -119 dBm
    time-out: 3 min
    coordinated: true
    depends-on: [feeder]
    backup: 12 h
  by-input: { name: By its input, output: 444.325, input: 449325 kHz }

packet:
  mailboxes:
    home: { name: Home mailbox, call: kx4xaa-10, place: base, channel: 19, power: 25 W, antenna: { gain: 3 dBd, feed: rg-213, feed-length: 20 m }, sensitivity: -120 dBm, depends-on: [feeder], backup: 24 h }
  digipeaters:
    ridge: { call: KX4XRG-3, channel: 19 }
  routes:
    - { from: ford, to: home, through: [ridge] }

channels:
  1:  { name: GAP, use: First call, repeater: gap, power: high }
  3:  { name: SIMP, simplex: 146.550, width: 12.5 kHz, tone: 88.5, receive-tone: D031N, power: 500 mW, service: amateur }
  7:  { name: FAMILY, standard: GMRS 20 }
  9:  { name: WX, listen: 162.550 }
  19: { name: PACKET, simplex: 145.010, mode: packet }
  21: { name: ODD, receive: 147.505, transmit: 146.505 }

check-ins:
  morning: { name: Morning, channel: 1, days: every day, at: "07:30", lasts: 15 min, who: all, control: [ada, ben], turn: day, missed: trail }
  watch: { name: Watch, listen: true, channel: 3, days: [thu, Monday], at: "14:30Z", until: "19:00Z", repeats: 3 h, lasts: 5 min, who: trail, control: ada, turn: time }
  first-monday: { name: First Monday, channel: 1, days: FREQ=MONTHLY;BYDAY=1MO, at: "19:00", who: [ada, trail] }

fallbacks:
  trail:
    name: From the trail
    who: trail
    reach: ada
    rungs:
      - { grade: primary, channel: 1, calls: 3, within: 5 min }
      - { grade: alternate, channel: 3, from: hill }
      - { grade: contingency, channel: 19, mailbox: home, through: [ridge] }
      - { grade: emergency, meet: ford, at: next even hour }
      - { grade: emergency, other: Runner to the base, depends-on: [mill] }

trials:
  - { date: 2026-11-14, from: ford, to: gap, channel: 1, radio: handheld, member: ada, heard: readable, report: "5 by 7" }

accepted:
  - { rule: offset/unusual, at: repeaters.gap, because: Coordinated as an odd split, until: 2027-06-01 }

cards:
  size: fold
  sheet: a4
  flip: short-edge
  notes: [Any channel when life is at risk.]
  qr: true
  back-shift: [0.5, -1]
`;
