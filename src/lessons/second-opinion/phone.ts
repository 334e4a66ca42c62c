/**
 * What a phone hears.
 * Units: Hz.
 * Source: from memory: a phone's microphone and loudspeaker fade towards low tones.
 */

/** Below this a phone hears little. */
export const PHONE_HEARS_FROM = 80;
