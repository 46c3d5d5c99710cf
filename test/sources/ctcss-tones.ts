/**
 * CTCSS tones: frequency in hertz, the smallest set that has it, the group.
 *
 * TIA-603-D, Land Mobile FM or PM Communications Equipment, June 2009, clause 1.3.5.2 (contents page read).
 * The 38 and their groups: public tone tables (an installation handbook, a tone list of 2004), read as
 * excerpts and in agreement. The four that make 42 and the eight that make 50, and the groups of 97.4 and
 * of 233.6 to 250.3 Hz: from memory.
 */
export const publishedTones = [
  ['67.0', 38, 'A'],
  ['69.3', 42, ''],
  ['71.9', 38, 'B'],
  ['74.4', 38, 'C'],
  ['77.0', 38, 'A'],
  ['79.7', 38, 'C'],
  ['82.5', 38, 'B'],
  ['85.4', 38, 'C'],
  ['88.5', 38, 'A'],
  ['91.5', 38, 'C'],
  ['94.8', 38, 'B'],
  ['97.4', 38, 'C'],
  ['100.0', 38, 'A'],
  ['103.5', 38, 'B'],
  ['107.2', 38, 'A'],
  ['110.9', 38, 'B'],
  ['114.8', 38, 'A'],
  ['118.8', 38, 'B'],
  ['123.0', 38, 'A'],
  ['127.3', 38, 'B'],
  ['131.8', 38, 'A'],
  ['136.5', 38, 'B'],
  ['141.3', 38, 'A'],
  ['146.2', 38, 'B'],
  ['151.4', 38, 'A'],
  ['156.7', 38, 'B'],
  ['159.8', 50, ''],
  ['162.2', 38, 'A'],
  ['165.5', 50, ''],
  ['167.9', 38, 'B'],
  ['171.3', 50, ''],
  ['173.8', 38, 'A'],
  ['177.3', 50, ''],
  ['179.9', 38, 'B'],
  ['183.5', 50, ''],
  ['186.2', 38, 'A'],
  ['189.9', 50, ''],
  ['192.8', 38, 'B'],
  ['196.6', 50, ''],
  ['199.5', 50, ''],
  ['203.5', 38, 'A'],
  ['206.5', 42, ''],
  ['210.7', 38, 'B'],
  ['218.1', 38, 'A'],
  ['225.7', 38, 'B'],
  ['229.1', 42, ''],
  ['233.6', 38, 'A'],
  ['241.8', 38, 'B'],
  ['250.3', 38, 'A'],
  ['254.1', 42, ''],
] as const;

/** Tones a published table stars for possible false decoding from 50 or 60 Hz power. */
export const starredTones = ['100.0', '118.8', '151.4', '179.9'] as const;
