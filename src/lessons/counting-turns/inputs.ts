/**
 * What the reader sets in the model `counting-turns`: turns or pressure for each of the four mills, slack, and two
 * readings as differences.
 * Units: SI.
 * Source: definition.
 */

/** The smallest turn that a chalk mark shows: fifteen degrees. */
export const CLICK = 1 / 24;

const clicks = { metric: CLICK, us: CLICK } as const;

/** Every input of the model. */
export const INPUTS = {
  turnsStiff: { kind: 'turns', default: 1, min: 0, max: 1.25, step: clicks },
  turnsDiscs: { kind: 'turns', default: 69 / 24, min: 0, max: 3.5, step: clicks },
  turnsSoft: { kind: 'turns', default: 9, min: 0, max: 10, step: clicks },
  pressure: {
    kind: 'pressure',
    default: 10.3e6,
    min: 0,
    max: 14e6,
    step: { metric: 1e5, us: 50 * 6894.757 },
  },
  slack: {
    kind: 'length',
    default: 0.002,
    min: 0,
    max: 0.003,
    step: { metric: 1e-4, us: 1.27e-4 },
  },
  tensioner: {
    options: ['stiffFrame', 'discWashers', 'softSpring', 'oil'],
    default: 'stiffFrame',
    counted: ['stiffFrame', 'discWashers', 'softSpring', 'oil'],
  },
  readTurns: {
    kind: 'turns',
    default: 23 / 72,
    min: 6 / 72,
    max: 1,
    step: { metric: 1 / 72, us: 1 / 72 },
  },
  readStretch: {
    kind: 'stretch',
    default: 0.135e-3,
    min: 0.05e-3,
    max: 0.3e-3,
    step: { metric: 5e-6, us: 5.08e-6 },
  },
  turnStep: {
    options: ['fiveDegrees', 'fifteenDegrees', 'eighth', 'quarter'],
    default: 'fiveDegrees',
    counted: ['fiveDegrees', 'fifteenDegrees', 'eighth', 'quarter'],
  },
} as const;

/** The input that turns the nut of each mill that has one. */
export const NUT_INPUTS = {
  stiffFrame: 'turnsStiff',
  discWashers: 'turnsDiscs',
  softSpring: 'turnsSoft',
} as const;
