/**
 * Two dials as they are sold: a hundred marks to a turn, of a hundredth of a millimeter or a thousandth of an inch.
 * Units: m.
 * Source: common practice, no source.
 */
import type { UnitSystem } from '../../units/kinds.ts';
import { MARKS } from './hands.ts';

/** What the reader chooses. */
export const FACES = ['metric', 'inch'] as const;

/** One of them. */
export type Face = (typeof FACES)[number];

const MARK = { metric: 1e-5, inch: 25.4e-6 } as const;

/** One mark of a dial. */
export const markOf = (face: Face): number => MARK[face];

/** One turn of its hand. */
export const turnOf = (face: Face): number => MARKS * MARK[face];

/** The units in which it is read. */
export const unitsOfFace = (face: Face): UnitSystem => (face === 'inch' ? 'us' : 'metric');
