/** Pages that are made from the code, by their path in the project. */
import { jsonSchema } from '../../src/plan/json-schema.ts';
import { languageReference } from './language-reference.ts';
import { ruleCatalogue } from './rule-catalogue.ts';

export function generatedPages(): ReadonlyMap<string, string> {
  return new Map([
    ['src/checks/README.md', ruleCatalogue()],
    ['src/plan/README.md', languageReference()],
    ['src/plan/plan.schema.json', `${JSON.stringify(jsonSchema(), null, 2)}\n`],
  ]);
}
