/**
 * Where the turns go: how far the wheel comes out and the frame gives way, from where they were before any turn, and
 * how the thread is kept that takes most of the work.
 * Units: SI in the values; drawing units.
 */
import { Dimension } from '../../figures/dimension.tsx';
import { teller } from '../../figures/teller.ts';
import { handleToBand } from './model.ts';
import { placesOn } from './StageList.tsx';
import { stagesShown } from './stages.ts';
import type { State } from './state.ts';
import { threadWord } from './thread-word.ts';
import type { TurnedMill, TurnLayout } from './turn-layout.ts';

const tell = teller(handleToBand);

/** The outer face of the end plate before any turn, dashed. */
export function PlateAtRest({ mill: { plate, axis, beam } }: Pick<TurnLayout, 'mill'>) {
  const half = beam * 1.65;
  return <path class="hidden-edge" d={`M${plate + beam * 0.7} ${axis - half}V${axis + half}`} />;
}

interface TravelProps {
  readonly state: State;
  readonly turned: TurnedMill;
}

/** What only a wide sheet has room for, once the screw pulls: the wheel's travel, the screw's, and the thread. */
function WideTravel({ state, turned }: TravelProps) {
  const { mill, wheel } = turned;
  const { right, axis, radius, end } = mill;
  const { thrust } = placesOn(turned);
  return (
    <g>
      <Dimension
        from={right}
        to={wheel}
        y={axis + radius + 36}
        edge={axis + radius + 2}
        text={`wheel comes out ${tell(state, 'wheelTravel')}`}
        ink="steel"
        id="wheelTravel"
        side="left"
        beside
      />
      <text class="note" x={thrust.x} y={thrust.y + 19} text-anchor="middle" data-sym="friction">
        thread {threadWord(state.values.friction)}
      </text>
      <text
        x={end.x}
        y={end.y + end.reach + 61}
        text-anchor="middle"
        data-sym="screwTravel"
      >{`screw moves ${tell(state, 'screwTravel')}`}</text>
    </g>
  );
}

/** The frame's give on its beam, and the rest where there is room. */
export function Travel(props: TravelProps) {
  const { state, turned } = props;
  const { beamStart, axis, right, left, beam, narrow } = turned.mill;
  const middle = narrow ? (left + beam + right - beam * 2.6) / 2 : (beamStart + right) / 2;
  return (
    <g>
      <text
        x={middle}
        y={axis + 5}
        text-anchor="middle"
        data-sym="frameTravel"
      >{`frame gives ${tell(state, 'frameTravel')}`}</text>
      {!narrow && stagesShown(state).length > 1 && <WideTravel {...props} />}
    </g>
  );
}
