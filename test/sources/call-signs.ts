/**
 * Call signs that follow or break the pattern of ITU Radio Regulations, Article 19, Nos. 19.50 to 19.69 (after
 * WRC-07). Whether a country holds a series: Appendix 42. The call signs are made up on suffixes that are not
 * given out (Q codes, and X in the United States), so they are nobody's.
 */
export const validCallSigns = [
  'KX4XWE',
  'W1XAW',
  'KX4X',
  'G3QRB',
  'M7QSA',
  '2E0QRM',
  'VK2QTH',
  'VE3QRZ',
  'A33QRA',
  '9A1QRL',
  'S59QRA',
  'E51QSL',
  '3DA0QR',
  'GB13QRM',
  'SSB1QRA',
  'R9QRA',
] as const;

/** With the reason. */
export const invalidCallSigns = [
  ['W1X2', 'the last character is a letter'],
  ['WXA', 'a figure stands after the prefix'],
  ['W1XBCDE', 'at most four characters follow the figure'],
  ['AX1234', 'the last character is a letter'],
  ['VE3', 'a suffix follows the figure'],
  ['1A0QRM', 'no series begins with 1'],
  ['Q1XBC', 'no country holds a series that begins with Q'],
  ['QA1XBC', 'no country holds a series that begins with Q'],
  ['H1QRA', 'H alone is not one of the nine single letters'],
  ['3DA0QRMX', 'a half series has at most three characters after its figure'],
  ['WXZZ401', 'a GMRS call sign is no amateur one'],
  ['', 'nothing'],
  ['KX4XWÉ', 'no accents (19.45)'],
  ['KX4 XWE', 'no spaces'],
] as const;
