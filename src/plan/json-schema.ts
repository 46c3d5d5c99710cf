/**
 * The plan language as JSON Schema (draft-07, which editors of YAML read), made from the schema that loads
 * plans. What only a program can check, such as a tone's digits, is described in words there.
 */
import * as z from 'zod';
import { planSchema } from './schema.ts';

export function jsonSchema(): object {
  const made = z.toJSONSchema(planSchema, { io: 'input', target: 'draft-07' });
  return { ...made, title: 'A readback plan, version 1' };
}
