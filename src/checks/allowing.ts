import type { Row } from '../regulations/country.ts';
import { type Law, localRulesOf } from '../regulations/law.ts';

/** Who allows what a row has, as the beginning of a clause: the law is `the rules`, a local coordinator has a name. */
export function allowing(law: Law, row: Row): string {
  const local = localRulesOf(law, row);
  return local ? `the rules of ${local.name} allow` : 'the rules allow';
}
