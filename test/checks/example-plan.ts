/** The smallest valid plan, and how a rule's example becomes a whole one: its sections take the place of the plan's own. */

const smallest = `readback: 1
plan:
  title: Example
  revision: 1
  effective: 2026-12-01
  review-by: 2027-12-01
  timezone: America/New_York
  rules: us
  coordinator: ada
places:
  base: { name: Base, at: "36.6192, -84.2010", kind: base }
  hill: { name: Hill, at: "36.6258, -84.2725", kind: high-ground }
radios:
  handheld:
    name: Handheld
    transmits: [144-148, 420-450]
    receives: [136-174, 400-480]
    certified: [amateur]
    memories: 1-128
    name-length: 7
    steps: [5, 6.25, 12.5, 25]
    widths: [25, 12.5]
    tones: [ctcss, dcs]
    modes: [fm, packet]
    powers: { high: 5 W, low: 1 W }
    antenna: { gain: -5 dBd, height: 1.5 m, carried: hand }
members:
  ada: { name: Ada Example, licences: { amateur: { class: general, call: KX4XAA, expires: 2033-02-01 } }, radios: [handheld], at: base }
  ben: { name: Ben Example, licences: { amateur: { class: technician, call: KX4XBB, expires: 2033-02-01 } }, radios: [handheld], at: base }
repeaters:
  gap: { name: Gap repeater, call: W4XGP, output: 146.940, offset: -0.6, tone: 100.0, width: 25, place: hill, power: 25 W }
channels:
  1: { name: GAP, repeater: gap }
  3: { name: SIMP, simplex: 146.550, width: 25 }
check-ins:
  morning: { name: Morning check-in, channel: 1, days: every day, at: "07:30", lasts: 15 min, who: all, control: [ada], missed: first }
fallbacks:
  first:
    name: First
    who: all
    reach: [ada]
    rungs:
      - { grade: primary, channel: 1, calls: 3, within: 5 min }
      - { grade: alternate, channel: 3, calls: 3, within: 10 min }
      - { grade: emergency, meet: base, at: next full hour }
`;

export function examplePlan(piece: string): string {
  const sections = sectionsOf(smallest);
  for (const [name, text] of sectionsOf(piece)) sections.set(name, text);
  return [...sections.values()].join('\n');
}

/** Lines of a text that are marked as wrong, counted from 1. */
export function markedLines(text: string, mark = /#\s*finding\b/): number[] {
  return text.split('\n').flatMap((line, index) => (mark.test(line) ? [index + 1] : []));
}

function sectionsOf(text: string): Map<string, string> {
  const sections = new Map<string, string[]>();
  let current: string[] | undefined;
  for (const line of text.replace(/^\n/, '').trimEnd().split('\n')) {
    const name = /^([a-z-]+):/.exec(line)?.[1];
    if (name !== undefined) {
      current = [];
      sections.set(name, current);
    }
    current?.push(line);
  }
  return new Map([...sections].map(([name, lines]) => [name, lines.join('\n')]));
}
