/** The version of the package, as the compiler put it in. */
declare const READBACK_VERSION: string | undefined;

export const version: string = typeof READBACK_VERSION === 'string' ? READBACK_VERSION : 'source';
