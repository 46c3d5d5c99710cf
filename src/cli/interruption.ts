/**
 * Ctrl-C, and being asked to end. Both end the program at once with the status shells expect, except while something
 * is being moved into place: then they wait for the end of that, a few milliseconds, so that no two revisions are
 * left side by side.
 */
let holding = 0;
let asked: number | undefined;

for (const [signal, status] of [
  ['SIGINT', 130],
  ['SIGTERM', 143],
] as const) {
  process.on(signal, () => {
    if (holding === 0) process.exit(status);
    asked = status;
  });
}

export async function uninterrupted<Result>(work: () => Promise<Result>): Promise<Result> {
  holding += 1;
  try {
    return await work();
  } finally {
    holding -= 1;
    if (holding === 0 && asked !== undefined) process.exit(asked);
  }
}
