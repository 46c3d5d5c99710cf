type Written<T> = { -readonly [Key in keyof T]: T[Key] | undefined };

/**
 * Builds a model entry: keys whose value is undefined are left out, so that an absent key is absent and not
 * `undefined`, which the model's types ask for.
 */
export function entry<T extends object>(entries: { [Key in keyof Written<T>]: Written<T>[Key] }): T {
  const present: Partial<T> = {};
  for (const key in entries) {
    const value = entries[key];
    if (value !== undefined) present[key] = value as T[typeof key];
  }
  // Only keys that may be absent can hold undefined, by the type of the argument.
  return present as T;
}
