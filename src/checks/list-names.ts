/** Names as a sentence lists them: `Ada, Ben and Cy`; past the most that help a reader, the rest is counted. */
export function listNames(names: readonly string[], most = 5): string {
  const distinct = [...new Set(names)];
  const shown = distinct.length > most ? distinct.slice(0, most - 1) : distinct;
  const rest = distinct.length - shown.length;
  const parts = rest > 0 ? [...shown, `${rest} more`] : shown;
  return parts.length < 2 ? (parts[0] ?? 'nobody') : `${parts.slice(0, -1).join(', ')} and ${parts.at(-1)}`;
}
