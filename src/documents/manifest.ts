/** What a build wrote: each file with its SHA-256, the plan check and the revision. */
import { createHash } from 'node:crypto';
import type { Plan } from '../plan/model.ts';

export function manifest(plan: Plan, check: string, files: ReadonlyMap<string, Uint8Array>): Uint8Array {
  const listed = [...files]
    .map(([path, bytes]) => ({
      path,
      bytes: bytes.length,
      sha256: createHash('sha256').update(bytes).digest('hex'),
    }))
    .toSorted((a, b) => (a.path < b.path ? -1 : 1));
  const { title, revision, effective } = plan;
  return new TextEncoder().encode(
    `${JSON.stringify({ title, revision, effective, check, files: listed }, null, 2)}\n`,
  );
}
