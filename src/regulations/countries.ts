/** The countries there are rules for. Each is loaded only when it is asked for: a plan needs one of them. */
import type { Country } from './country.ts';

interface Entry {
  readonly code: string;
  readonly name: string;
  readonly load: () => Promise<Country>;
}

const entries: readonly Entry[] = [
  { code: 'au', name: 'Australia', load: async () => (await import('./au.ts')).australia },
  { code: 'ca', name: 'Canada', load: async () => (await import('./ca.ts')).canada },
  { code: 'eu', name: 'Europe (CEPT)', load: async () => (await import('./eu.ts')).europe },
  { code: 'gb', name: 'United Kingdom', load: async () => (await import('./gb.ts')).unitedKingdom },
  { code: 'nz', name: 'New Zealand', load: async () => (await import('./nz.ts')).newZealand },
  { code: 'us', name: 'United States', load: async () => (await import('./us.ts')).unitedStates },
];

/** Code and name of every country with rules, by code. */
export const countries: readonly { readonly code: string; readonly name: string }[] = entries.map(
  ({ code, name }) => ({ code, name }),
);

/** The rules of a country by its code as a plan writes it (`rules: us`), or undefined where there are none. */
export async function countryByCode(code: string): Promise<Country | undefined> {
  return entries.find((entry) => entry.code === code)?.load();
}
