/**
 * What share of its time a channel carries when stations send without hearing each other.
 *
 * N. Abramson, The ALOHA System, AFIPS Fall Joint Computer Conference, 1970: S = G e^(-2G), at most 1/(2e) at
 * G = 0.5. L. G. Roberts, ALOHA packet system with and without slots and capture, 1975: S = G e^(-G), at most
 * 1/e at G = 1. Stations that all hear each other do better; behind a digipeater they do not, and the first
 * bound is the one to plan with.
 */

/** Share of the time carried, for an offered load G: attempts, in transmission times for each transmission time. */
export function pureAloha(load: number): number {
  return load * Math.exp(-2 * load);
}

export function slottedAloha(load: number): number {
  return load * Math.exp(-load);
}

export const mostPureAloha = pureAloha(0.5);
export const mostSlottedAloha = slottedAloha(1);

/** Messages that get through in a window at best, from stations that do not hear each other. */
export function sharedCapacity(windowS: number, channelS: number): number {
  return Math.floor((mostPureAloha * windowS) / channelS);
}
