/** The head of an example under the rules of another country, whose members need no licence of the United States. */
export function underRules(rules: string, timezone: string, certified = 'amateur'): string {
  return `
plan: { title: Example, revision: 1, effective: 2026-12-01, review-by: 2027-12-01, timezone: ${timezone}, rules: ${rules}, coordinator: ada }
radios:
  handheld: { name: Handheld, transmits: [1-1300], receives: [1-1300], certified: [${certified}], memories: 1-128, name-length: 9, tones: [ctcss, dcs], modes: [fm, am, ssb, packet], powers: { high: 5 W, low: 500 mW } }
members:
  ada: { name: Ada Example, radios: [handheld], at: base }
  ben: { name: Ben Example, radios: [handheld], at: base }
`;
}
