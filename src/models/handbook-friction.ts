/**
 * Friction in screw threads and under collars, as a handbook's tables have it.
 * Units: none.
 * Source: Ham and Ryan after Shigley's tables 8-5 and 8-6 (`screw-friction`), from memory.
 */

/** Friction of the thread, by what runs on what and how it is kept. */
export const THREAD_FRICTION = {
  bronze: { low: 0.1, high: 0.16 }, // steel in bronze, oiled
  oiled: { low: 0.11, high: 0.17 }, // steel in steel
  dry: { low: 0.15, high: 0.25 }, // steel in steel
} as const;

/** Friction under a plain collar. */
export const COLLAR_FRICTION = { low: 0.06, high: 0.17 } as const;

/** Those ranges by the names that the models of the lessons give them. */
export const handbookFriction = {
  oiledLow: THREAD_FRICTION.oiled.low,
  oiledHigh: THREAD_FRICTION.oiled.high,
  dryLow: THREAD_FRICTION.dry.low,
  dryHigh: THREAD_FRICTION.dry.high,
  plainCollarLow: COLLAR_FRICTION.low,
  plainCollarHigh: COLLAR_FRICTION.high,
} as const;

/** The kinds of those names. */
export const HANDBOOK_KINDS = {
  oiledLow: 'ratio',
  oiledHigh: 'ratio',
  dryLow: 'ratio',
  dryHigh: 'ratio',
  plainCollarLow: 'ratio',
  plainCollarHigh: 'ratio',
} as const;
