/**
 * The frame that holds the axles apart: a beam from behind the fixed axle to an end plate that the tensioner bears on.
 * All that the frame gives is drawn at that plate; where it was before the pull stays as a dashed edge.
 * Units: drawing units.
 */
import { CutPlate } from '../../../figures/CutPlate.tsx';
import { SlidingBlock } from '../../../figures/mill/SlidingBlock.tsx';
import { type CountingPlaces, plateWidth } from './mill-places.ts';

interface BeamFrameProps {
  readonly places: CountingPlaces;
  /** Unique on the page: the hatchings' ids begin with it. */
  readonly id: string;
}

/** The beam, with the slot in which the movable axle slides, and the fixed axle. */
function Beam({ places: { fixed, slot, beamEnds, axis, beam } }: Omit<BeamFrameProps, 'id'>) {
  const [start, end] = beamEnds;
  return (
    <g>
      <rect
        class="outline paper-fill"
        x={start}
        y={axis - beam}
        width={end - start}
        height={2 * beam}
      />
      <rect
        class="thin"
        x={slot[0]}
        y={axis - beam * 0.62}
        width={slot[1] - slot[0]}
        height={beam * 1.24}
      />
      <circle class="outline" cx={fixed} cy={axis} r={beam * 0.5} />
      <path class="centre" d={`M${fixed - beam * 1.4} ${axis}H${fixed + beam * 1.4}`} />
    </g>
  );
}

/** Beam, block of the movable axle, end plate, and where that stood. */
export function BeamFrame({ places, id }: BeamFrameProps) {
  const { moved, plate, plateAtRest, axis, beam } = places;
  const reach = beam * 1.65;
  const width = plateWidth(beam);
  return (
    <g data-sym="frameTravel">
      <Beam places={places} />
      <SlidingBlock x={moved} axis={axis} beam={beam} />
      <CutPlate
        id={id}
        x={plate - width}
        axis={axis}
        width={width}
        hole={beam * 0.3}
        height={reach - beam * 0.3}
      />
      {plateAtRest > plate && (
        <path
          class="hidden-edge"
          d={`M${plate} ${axis - reach}H${plateAtRest}V${axis + reach}H${plate}`}
        />
      )}
    </g>
  );
}
