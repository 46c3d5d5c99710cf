/**
 * The plan that `readback new` writes: small, valid, with every name and figure plainly to be replaced. The
 * call signs are of a form that is never assigned (in the United States the letter X after the digit is kept
 * for experimental stations).
 */
export const starterPlan = `# A communications plan. Replace every name, call sign, place and frequency with your own,
# then run:  readback check FILE
readback: 1

plan:
  title: Our group
  revision: 1                      # goes up each time cards are issued
  effective: 2027-01-01
  review-by: 2027-07-01
  timezone: America/New_York
  rules: us                        # us, ca, gb, eu, au or nz
  coordinator: alex

places:
  hall: { name: Village Hall, at: "36.6192, -84.2010", kind: base }
  hill: { name: The Hill,     at: "36.6258, -84.2725", kind: high-ground }

radios:
  handheld:                        # figures from its own manual
    name: Dual-band handheld
    transmits: [144-148, 420-450]
    receives: [136-174, 400-480]
    certified: [amateur]
    memories: 1-128
    name-length: 7
    steps: [5, 6.25, 12.5, 25]
    widths: [25, 12.5]
    tones: [ctcss, dcs]
    powers: { high: 5 W, low: 1 W }
    antenna: { gain: -5 dBd, height: 1.5 m, carried: hand }
    sensitivity: -119 dBm
    entry-order: [receive, step, offset-direction, offset, tone, width, power, name]

members:
  alex:
    name: Alex Example
    licences: { amateur: { class: general, call: KX4XAA, expires: 2033-02-01 } }
    radios: [handheld]
    at: hall
  sam:
    name: Sam Example
    licences: { amateur: { class: technician, call: KX4XBB, expires: 2034-05-01 } }
    radios: [handheld]
    at: hall
    roams: [hill]

repeaters:
  hilltop: { name: Hilltop repeater, call: W4XAB, output: 146.940, offset: -0.6, tone: 100.0, width: 25, place: hill, power: 25 W }

channels:                          # the key is the slot, the same in every radio
  1: { name: HILL,   repeater: hilltop,  use: First call for everyone }
  2: { name: DIRECT, simplex: 146.550, width: 25, use: When the Hill is silent }
  3: { name: WX,     listen: 162.550,  use: "Weather broadcast, never transmit" }

check-ins:
  evening: { name: Evening check-in, channel: 1, days: every day, at: "19:00", lasts: 15 min, who: all, control: [alex, sam], missed: usual }

fallbacks:
  usual:
    name: When nobody answers
    who: all
    reach: [alex, sam]
    rungs:
      - { grade: primary,   channel: 1, calls: 3, within: 5 min }
      - { grade: alternate, channel: 2, calls: 3, within: 10 min }
      - { grade: emergency, meet: hall, at: next full hour }

cards: { size: id-1, sheet: letter, flip: long-edge }
`;
