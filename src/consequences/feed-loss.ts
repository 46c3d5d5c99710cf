import type { Antenna } from '../plan/model.ts';
import { feedLineLossDb } from '../reach/feed-line.ts';

/** What is lost between a radio and its antenna, dB: as stated, or by its line at that frequency; nothing where neither is known. */
export function feedLossDb({ feedLossDb: stated, feed }: Antenna, frequencyHz: number): number {
  return stated ?? (feed ? feedLineLossDb(feed.line, feed.lengthM, frequencyHz) : 0);
}
