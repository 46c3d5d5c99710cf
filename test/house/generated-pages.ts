/** Pages that are made from the code, by their path in the project. */
import { findingsSchema } from '../../src/findings/findings-schema.ts';
import { jsonSchema } from '../../src/plan/json-schema.ts';
import { rulesJsonSchema } from '../../src/plan/rules-json-schema.ts';
import { languageReference } from './language-reference.ts';
import { ruleCatalogue } from './rule-catalogue.ts';
import { wordsPage } from './words-page.ts';

export function generatedPages(): ReadonlyMap<string, string> {
  return new Map([
    ['src/checks/README.md', ruleCatalogue()],
    ['src/plan/README.md', languageReference()],
    ['src/plan/plan.schema.json', `${JSON.stringify(jsonSchema(), null, 2)}\n`],
    ['src/plan/rules.schema.json', `${JSON.stringify(rulesJsonSchema(), null, 2)}\n`],
    ['templates/words.yaml', wordsPage()],
    ['src/findings/findings.schema.json', `${JSON.stringify(findingsSchema, null, 2)}\n`],
  ]);
}
