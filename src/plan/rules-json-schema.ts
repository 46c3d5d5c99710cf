/** The language of rules files as JSON Schema (draft-07), made from the schema that loads them. */
import * as z from 'zod';
import { rulesSchema } from './rules-schema.ts';

export function rulesJsonSchema(): object {
  const made = z.toJSONSchema(rulesSchema, { io: 'input', target: 'draft-07' });
  return { ...made, title: 'Rules of a country, or of a local coordinator, for readback plans, version 1' };
}
