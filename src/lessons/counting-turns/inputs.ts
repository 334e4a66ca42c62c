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
  turnsStiff: {
    kind: 'turns',
    symbol: 'n',
    label: 'turns of the nut',
    default: 1,
    min: 0,
    max: 1.25,
    step: clicks,
  },
  turnsDiscs: {
    kind: 'turns',
    symbol: 'n',
    label: 'turns of the nut',
    default: 69 / 24,
    min: 0,
    max: 3.5,
    step: clicks,
  },
  turnsSoft: {
    kind: 'turns',
    symbol: 'n',
    label: 'turns of the nut',
    default: 9,
    min: 0,
    max: 10,
    step: clicks,
  },
  pressure: {
    kind: 'pressure',
    symbol: 'p',
    label: 'pressure, pumping up',
    default: 10.3e6,
    min: 0,
    max: 14e6,
    step: { metric: 1e5, us: 50 * 6894.757 },
  },
  slack: {
    kind: 'length',
    symbol: 'x_0',
    label: 'slack at the wheel',
    default: 0.002,
    min: 0,
    max: 0.003,
    step: { metric: 1e-4, us: 1.27e-4 },
  },
  tensioner: {
    kind: 'count',
    symbol: '',
    label: 'at which mill, and what stands between nut and frame',
    default: 0,
    min: 0,
    max: 3,
    step: { metric: 1, us: 1 },
    options: [
      'Ottersleigh: nothing',
      'Hobsend: disc washers',
      'Yarrock: soft spring',
      'Dunmarrow: oil, no nut',
    ],
  },
  readTurns: {
    kind: 'turns',
    symbol: '\\Delta n',
    label: 'turns between the two readings',
    default: 23 / 72,
    min: 6 / 72,
    max: 1,
    step: { metric: 1 / 72, us: 1 / 72 },
  },
  readStretch: {
    kind: 'stretch',
    symbol: '\\Delta D',
    label: 'rise of the dial between them',
    default: 0.135e-3,
    min: 0.05e-3,
    max: 0.3e-3,
    step: { metric: 5e-6, us: 5.08e-6 },
  },
  turnStep: {
    kind: 'count',
    symbol: '',
    label: 'turns read to',
    default: 0,
    min: 0,
    max: 3,
    step: { metric: 1, us: 1 },
    options: ['1/72 (5°)', '1/24 (15°)', '1/8', '1/4'],
  },
} as const;
