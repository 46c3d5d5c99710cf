/** An invented group in German, with letters that the first typeface lacks; call signs of the form OE0 are not given to amateurs (common practice). */
export const germanPlan = `readback: 1
plan:
  title: Funkgruppe Weißenbachtal
  revision: 2
  effective: 2026-12-01
  timezone: Europe/Vienna
  language: de
  rules: eu
  coordinator: anna
places:
  huette: { name: Schutzhütte, at: "47.6192, 13.2010", elevation: 1338 m, kind: base }
  tal: { name: Talstation, at: "47.6000, 13.2200", elevation: 620 m, kind: base }
radios:
  handgeraet:
    name: Handfunkgerät
    transmits: [144-146, 430-440]
    receives: [136-174, 400-480]
    certified: [amateur, pmr446]
    memories: 1-128
    name-length: 7
    steps: [5, 6.25, 12.5, 25]
    widths: [25, 12.5]
    tones: [ctcss, dcs]
    modes: [fm]
    powers: { hoch: 5 W, tief: 500 mW }
    entry-order: [receive, step, offset-direction, offset, tone, width, power, name]
members:
  anna: { name: Anna Größl, licences: { amateur: { class: cept, call: OE0XAN, expires: 2033-02-01 } }, radios: [handgeraet], at: huette, contact: { telefon: 000-111 }, contact-shared: true }
  jiri: { name: Jiří Łoś, licences: { amateur: { class: cept, call: OE0XJI, expires: 2033-02-01 } }, radios: [handgeraet], at: tal }
channels:
  1: { name: TAL, simplex: 145.500, width: 12.5, use: Erster Ruf }
  2: { name: BERG, simplex: 433.500, width: 12.5, use: Wenn das Tal schweigt }
  3: { name: HÖREN, listen: 446.00625 }
check-ins:
  abend: { name: Abendrunde, channel: 1, days: every day, at: "19:00", lasts: 15 min, who: all, control: [anna, jiri], turn: day, missed: tal }
fallbacks:
  tal:
    name: Aus dem Tal
    who: all
    reach: [anna, jiri]
    rungs:
      - { grade: primary, channel: 1, calls: 3, within: 5 min }
      - { grade: alternate, channel: 2, calls: 3, within: 10 min }
      - { grade: emergency, meet: huette, at: volle Stunde }
cards: { size: id-1, sheet: a4 }
`;
