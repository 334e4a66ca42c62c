/**
 * What the reader sets in the lesson `where-is-zero`.
 * Units: SI.
 * Source: definition.
 */
import { LOT, MOST_REPEATS, SERIES } from './taking.ts';
import { atRest } from './toe/rest.worked.ts';

const TORQUE_STEP = { metric: 0.1, us: 0.13558179483 } as const;
const MOST_FIRST = 6; // N·m, highest torque at which the dial may be set
const READING_REACH = 0.2e-3; // m, on either side of the first reading

/** Every input of the model. */
export const INPUTS = {
  load: {
    kind: 'torque',
    default: 2,
    min: atRest.drag,
    max: atRest.topTorque,
    step: TORQUE_STEP,
  },
  side: { options: ['hollow', 'outer'], default: 'hollow', counted: ['hollow', 'outer'] },
  setAt: { kind: 'torque', default: 4, min: atRest.drag, max: MOST_FIRST, step: TORQUE_STEP },
  series: { kind: 'count', default: 1, min: 1, max: SERIES, step: { metric: 1, us: 1 } },
  eyeZero: {
    kind: 'stretch',
    default: 0,
    min: -READING_REACH,
    max: READING_REACH,
    step: { metric: 1e-6, us: 1.27e-6 },
  },
  way: {
    options: ['eye', 'classroom', 'full'],
    default: 'eye',
    counted: ['eye', 'classroom', 'full'],
  },
  rule: {
    options: ['needle', 'ruler', 'classroom'],
    default: 'ruler',
    counted: ['needle', 'ruler', 'classroom'],
  },
  repeats: {
    kind: 'count',
    default: LOT,
    min: LOT,
    max: MOST_REPEATS,
    step: { metric: LOT, us: LOT },
  },
} as const;
