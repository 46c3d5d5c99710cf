/** Every rule, by id. A test holds that none is missing and that each id is the path of its file. */
import { offsetUnusual } from './offset/unusual.ts';
import { referenceUnknown } from './reference/unknown.ts';
import type { Rule } from './rule.ts';

export const allRules: readonly Rule[] = [offsetUnusual, referenceUnknown];
