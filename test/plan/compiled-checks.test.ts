import fc from 'fast-check';
import { expect, test } from 'vitest';
import { readYaml } from '../../src/plan/read-yaml.ts';
import { planSchema } from '../../src/plan/schema.ts';
import { everyKey } from './every-key.ts';

const values = fc.oneof(
  fc.string(),
  fc.integer(),
  fc.boolean(),
  fc.constant(null),
  fc.constant([]),
  fc.constant({}),
);

/** Writes something else at one place of a tree, or under a key that is not known there. */
function change(tree: unknown, steps: readonly number[], value: unknown, asNewKey: boolean): void {
  let here = tree as Record<string, unknown>;
  for (const step of steps) {
    const keys = Object.keys(here);
    const key = keys[step % keys.length];
    if (key === undefined) return;
    const inner = here[key];
    if (typeof inner !== 'object' || inner === null || step === steps.at(-1)) {
      here[asNewKey ? 'unheard-of' : key] = value;
      return;
    }
    here = inner as Record<string, unknown>;
  }
}

test('a large plan, whose checks are compiled, is read just as a small one', () => {
  fc.assert(
    fc.property(
      fc.array(fc.tuple(fc.array(fc.nat(40), { minLength: 1, maxLength: 5 }), values, fc.boolean()), {
        maxLength: 3,
      }),
      (changes) => {
        const tree = readYaml(everyKey).root;
        for (const [steps, value, asNewKey] of changes) change(tree, steps, value, asNewKey);
        const [plain, compiled] = [true, false].map((jitless) => planSchema.safeParse(tree, { jitless }));
        expect(compiled?.data).toEqual(plain?.data);
        expect(compiled?.error?.issues).toEqual(plain?.error?.issues);
      },
    ),
    { numRuns: 300 },
  );
});
