/**
 * Where the travel of the chosen mill's nut or piston went: one bar, as long as this mill's nut can go.
 * Units: SI in the state; drawing units otherwise.
 */
import { formatParts, formatQuantity } from '../../../units/format-quantity.ts';
import { NUT_INPUTS } from '../inputs.ts';
import { countingTurns } from '../model.ts';
import type { CountingPartProps } from './layout.ts';
import { PieceBar } from './PieceBar.tsx';
import { type TravelPiece, travelPieces } from './travel-pieces.ts';

const MOST_PISTON_TRAVEL = 0.008; // m

/** The longest travel that the bar shows, m. */
function mostTravel({ tensioner, lead }: CountingPartProps['state']['values']): number {
  if (tensioner === 'oil') return MOST_PISTON_TRAVEL;
  return countingTurns.inputs[NUT_INPUTS[tensioner]].max * lead;
}

/** The turns and the length of a piece, or on a phone the number of one of the two. */
function amount({ key, travel }: TravelPiece, { state, layout }: CountingPartProps): string {
  const { system, values } = state;
  const length = formatQuantity(travel, 'length', system, { digits: 3 });
  if (values.lead === 0) return length;
  const turns = values[`${key}Turns`];
  if (layout.narrow) return formatParts(turns, 'turns', system).number;
  return `${formatQuantity(turns, 'turns', system)}, ${length}`;
}

/** Heading and bar. */
export function TravelBar(props: CountingPartProps) {
  const { state, layout, places } = props;
  const { bar, narrow } = layout;
  const { slackTravel, bandTravel, frameTravel, springTravel, lead } = state.values;
  const travels = {
    slack: slackTravel,
    band: bandTravel,
    frame: frameTravel,
    spring: springTravel,
  };
  const scale = (bar.right - bar.left) / mostTravel(state.values);
  return (
    <g>
      <text class="note" x={bar.left} y={bar.y - 9}>
        {lead === 0 ? 'where the piston’s travel went' : 'where the turns went'}
      </text>
      <PieceBar
        id={state.idPrefix}
        bar={bar}
        narrow={narrow}
        pieces={travelPieces(travels, places.mill.spring.kind, bar.left, scale)}
        say={(piece) => [piece.name, amount(piece, props)]}
      />
    </g>
  );
}
