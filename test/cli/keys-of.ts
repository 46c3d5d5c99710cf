/** The names of all fields of something read from JSON, at every depth, each once. */
export function keysOf(json: unknown): readonly string[] {
  if (typeof json !== 'object' || json === null) return [];
  const inner = Object.values(json).flatMap(keysOf);
  return [...new Set(Array.isArray(json) ? inner : [...Object.keys(json), ...inner])];
}
