/**
 * A plan as large as wished: so many channels and so many members, a tenth of the channels through
 * repeaters of their own. Always the same text for the same size. It keeps the rules of the United States.
 */

/** CTCSS tones that stand well apart from each other. */
const tones = ['77.0', '88.5', '100.0', '110.9', '123.0', '136.5', '151.4', '167.9', '186.2', '210.7'];

/** @param size how many channels and how many members, 20 to 10,000 (slots run to 9999) */
export function largePlan(size: number): string {
  const numbers = (count: number) => Array.from({ length: count }, (_, k) => k);
  const repeaters = Math.floor(size / 10);
  const worked = Math.min(simplexes.length * tones.length, Math.floor(size / 4));
  const teams = Math.ceil(size / 20);
  const places = numbers(repeaters).map(
    (k) => `  h${k}: { name: Hill ${k}, at: "${latitude(k)}, ${longitude(k)}", kind: high-ground }`,
  );
  const pairs = numbers(repeaters).map(
    (k) =>
      `  r${k}: { name: Repeater ${k}, call: ${call('W', k)}, ${pair(k)}, tone: ${tone(k % 4 === 0 ? Math.floor((k >> 2) / 26) : Math.floor(k / 113))}, width: 25, place: h${k}, power: 25 W, time-out: 3 min, backup: 12 h }`,
  );
  const channels = numbers(size).map((k) =>
    k < repeaters
      ? `  ${k}: { name: ${name('R', k)}, repeater: r${k} }`
      : k < repeaters + worked
        ? `  ${k}: { name: ${name('S', k)}, ${simplex(k - repeaters)}, width: 25 }`
        : `  ${k}: { name: ${name('L', k)}, listen: ${heard(k - repeaters - worked)}, use: Heard at times }`,
  );
  const members = numbers(size).map(
    (k) =>
      `  m${k}: { name: Member ${k}, licences: { amateur: { class: ${k % 3 === 0 ? 'general' : 'technician'}, call: ${call('K', k)}, expires: 2034-01-01 } }, radios: [${k % 2 === 0 ? 'handheld' : 'mobile'}], at: h${k % repeaters}, roams: [h${(k * 7 + 1) % repeaters}] }`,
  );
  const ofTeam = (team: number) => numbers(20).map((k) => `m${(team * 20 + k) % size}`);
  const groups = numbers(teams).map((k) => `  t${k}: [${ofTeam(k).join(', ')}]`);
  const checkIns = numbers(teams).map(
    (k) =>
      `  c${k}: { name: Round ${k}, channel: ${(k * 2) % repeaters}, days: every day, at: "${clock(k)}", lasts: 5 min, who: t${k}, control: [m${(k * 20) % size}], missed: l${k} }`,
  );
  const ladders = numbers(teams).map(
    (k) => `  l${k}:
    name: Ladder ${k}
    who: t${k}
    reach: [m${(k * 20) % size}, m${(k * 20 + 1) % size}]
    rungs:
      - { grade: primary, channel: ${(k * 2 + 1) % repeaters}, calls: 3, within: 5 min }
${numbers(5)
  .map(
    (rung) =>
      `      - { grade: alternate, channel: ${repeaters + ((k * 5 + rung) % worked)}, calls: 3, within: 10 min }`,
  )
  .join('\n')}
      - { grade: emergency, meet: h${(k * 11) % repeaters}, at: next full hour }`,
  );
  return `# Generated: a plan with ${size} channels and ${size} members, of nobody.
readback: 1
plan:
  title: Large plan of ${size}
  revision: 1
  effective: 2026-12-01
  review-by: 2027-06-01
  timezone: America/Chicago
  rules: us
  coordinator: m0
places:
${places.join('\n')}
radios:
  handheld: { name: Handheld, transmits: [144-148, 420-450], receives: [136-174, 400-480], certified: [amateur], memories: 0-9999, name-length: 8, steps: [5, 25], widths: [25, 12.5], tones: [ctcss, dcs], powers: { high: 5 W, low: 1 W }, antenna: { gain: -5 dBd, height: 1.5 m, carried: hand } }
  mobile: { name: Mobile, transmits: [144-148, 420-450], receives: [118-174, 400-480], certified: [amateur], memories: 0-9999, name-length: 8, steps: [5, 25], widths: [25, 12.5], tones: [ctcss, dcs], powers: { high: 50 W, low: 5 W }, antenna: { gain: 2.15 dBi, height: 1.8 m, carried: vehicle } }
members:
${members.join('\n')}
teams:
${groups.join('\n')}
repeaters:
${pairs.join('\n')}
channels:
${channels.join('\n')}
check-ins:
${checkIns.join('\n')}
fallbacks:
${ladders.join('\n')}
`;
}

const tone = (k: number): string => tones[k % tones.length] ?? '100.0';

/** Seventy to a row. */
const latitude = (k: number): string => (38 + Math.floor(k / 70) * 0.02).toFixed(4);
const longitude = (k: number): string => (-100 + (k % 70) * 0.02).toFixed(4);

/** Outputs and offsets of the band plans of 2 m and 70 cm. */
function pair(k: number): string {
  return k % 4 === 0
    ? `output: ${(146.61 + 0.015 * ((k >> 2) % 26)).toFixed(3)}, offset: -0.6`
    : `output: ${(442.1 + 0.025 * (k % 113)).toFixed(3)}, offset: 5`;
}

const simplexes = ['146.415', '146.430', '146.445', '146.460', '146.475', '146.490', '146.505', '146.535'];

/** No two with one frequency and one tone. */
const simplex = (k: number): string =>
  `simplex: ${simplexes[k % simplexes.length]}, tone: ${tone(Math.floor(k / simplexes.length))}`;

/** 5000 frequencies above 2 m, then those above 70 cm. */
const heard = (k: number): string => (k < 5000 ? 148.6 + 0.005 * k : 450 + 0.005 * (k - 5000)).toFixed(3);

/** X after the figure of a call sign of the United States is kept for experimental stations: these are nobody's. */
function call(first: string, k: number): string {
  const letter = (n: number) => String.fromCharCode(65 + (n % 26));
  return `${first}${letter(Math.floor(k / 6760))}${Math.floor(k / 676) % 10}X${letter(Math.floor(k / 26))}${letter(k)}`;
}

/** Consonants and figures that no ear and no eye takes for one another. */
function name(first: string, k: number): string {
  return `${first} ${String(k).padStart(4, '0')}`;
}

const clock = (k: number): string =>
  `${String((k * 5) % 24).padStart(2, '0')}:${String((k * 7) % 60).padStart(2, '0')}`;
