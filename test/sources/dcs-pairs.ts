/**
 * Digital-coded squelch: which code a receiver reads when the signal of another is turned upside down.
 *
 * Publisher: none; a conversion chart of 104 codes that circulates among radio users and is printed alike in
 * several public tables (read as excerpts). TIA-603-D (2009), clause 1.3.5.5, fixes the bit rate, but its
 * list of codes was not read. Left: code sent normal; right: the code it reads as when inverted. Octal.
 */
export const dcsPairs: readonly (readonly [normal: string, inverted: string])[] = `
  023=047 025=244 026=464 031=627 032=051 036=172 043=445 047=023 051=032 053=452 054=413 065=271
  071=306 072=245 073=506 074=174 114=712 115=152 116=754 122=225 125=365 131=364 132=546 134=223
  143=412 145=274 152=115 155=731 156=265 162=503 165=251 172=036 174=074 205=263 212=356 223=134
  225=122 226=411 243=351 244=025 245=072 246=523 251=165 252=462 255=446 261=732 263=205 265=156
  266=454 271=065 274=145 306=071 311=664 315=423 325=526 331=465 332=455 343=532 346=612 351=243
  356=212 364=131 365=125 371=734 411=226 412=143 413=054 423=315 431=723 432=516 445=043 446=255
  452=053 454=266 455=332 462=252 464=026 465=331 466=662 503=162 506=073 516=432 523=246 526=325
  532=343 546=132 565=703 606=631 612=346 624=632 627=031 631=606 632=624 654=743 662=466 664=311
  703=565 712=114 723=431 731=155 732=261 734=371 743=654 754=116
`
  .trim()
  .split(/\s+/)
  .map((pair) => [pair.slice(0, 3), pair.slice(4)] as const);

/** The further codes met in lists of 112; their pairs follow from the word and were worked out, not found in print. */
export const furtherCodes = ['006', '007', '015', '017', '021', '050', '141', '214'] as const;
