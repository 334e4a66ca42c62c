/**
 * The travel of the nut or the piston as pieces of one bar, in the order in which they come: slack, band, frame, spring.
 * Units: m in the values; drawing units otherwise.
 */
import { NUT_INPUTS } from '../inputs.ts';
import { countingTurns } from '../model.ts';
import type { CountingPartProps } from './layout.ts';

/** One piece of the bar. */
export interface TravelPiece {
  readonly key: 'slack' | 'band' | 'frame' | 'spring';
  readonly name: string;
  readonly travel: number;
  readonly turns: number;
  readonly from: number;
  readonly to: number;
}

/** Name of the last piece where there is no spring to give. */
export const NO_SPRING = 'no spring';

const SPRINGS = { none: NO_SPRING, discs: 'disc washers', coil: 'spring' } as const;
const MOST_PISTON_TRAVEL = 0.008; // m

/** Drawing units for a metre of travel: the bar's whole width is all that this mill's nut can go. */
export function barScale({ state, layout }: CountingPartProps): number {
  const { tensioner, lead } = state.values;
  const { left, right } = layout.bar;
  if (tensioner === 'oil') return (right - left) / MOST_PISTON_TRAVEL;
  return (right - left) / (countingTurns.inputs[NUT_INPUTS[tensioner]].max * lead);
}

/** The pieces, from the left. */
export function travelPieces(props: CountingPartProps): readonly TravelPiece[] {
  const { values } = props.state;
  const scale = barScale(props);
  let from = props.layout.bar.left;
  return (['slack', 'band', 'frame', 'spring'] as const).map((key) => {
    const travel = values[`${key}Travel`];
    const start = from;
    from += travel * scale;
    const name = key === 'spring' ? SPRINGS[props.places.mill.spring.kind] : key;
    return { key, name, travel, turns: values[`${key}Turns`], from: start, to: from };
  });
}
