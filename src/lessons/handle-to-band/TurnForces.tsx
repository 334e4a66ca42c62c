/**
 * The forces of the chain on the drawing, all to one scale, with the numerals of the list; the travel of wheel and frame
 * as dimensions.
 * Units: SI in the values; drawing units.
 */

import { Dimension } from '../../figures/dimension.tsx';
import { ForceArrow } from '../../figures/ForceArrow.tsx';
import { teller } from '../../figures/teller.ts';
import type { QuantityOf } from '../../models/define-model.ts';
import { handleToBand } from './model.ts';
import type { State } from './state.ts';
import { isStageShown, type TurnPartProps } from './turn-layout.ts';

const tell = teller(handleToBand);

interface StageMarkProps {
  readonly state: State;
  readonly stage: number;
  readonly name: QuantityOf<typeof handleToBand>;
  readonly x: number;
  readonly y: number;
  readonly ink: 'ink' | 'hand' | 'steel';
  readonly anchor?: 'start' | 'middle' | 'end';
  /** What follows the number on a wide sheet, and what stands in its place on a phone. */
  readonly words?: string;
  readonly short?: string;
}

/** A stage's numeral with, on a wide sheet, its number. */
export function StageMark(props: StageMarkProps) {
  const { state, stage, name, x, y, ink, anchor = 'start', words = '', short = '' } = props;
  if (!isStageShown(state, stage)) return null;
  const number = tell(state, name);
  return (
    <text class={`halo ${ink}`} x={x} y={y} text-anchor={anchor} data-sym={name}>
      <tspan font-weight="600">{stage}</tspan>
      {state.narrow ? short && ` ${short}` : `  ${number}${words}`}
    </text>
  );
}

/** How far the wheel came out and the plate came in, between where they stood and where they stand. */
function Travel({ state, layout, places }: TurnPartProps) {
  const { axis, beam, narrow, plate } = layout;
  const { wheelAtRest, wheel, radius } = places;
  const plateEnd = axis + (narrow ? beam * 2.8 : -beam * 2.8);
  return (
    <g>
      <Dimension
        from={wheelAtRest}
        to={wheel}
        y={axis + radius + (narrow ? 20 : 46)}
        edge={axis + radius + 2}
        text={`${narrow ? 'wheel out' : 'wheel comes out'} ${tell(state, 'wheelTravel')}`}
        ink="steel"
        id="wheelTravel"
        side={narrow ? 'left' : 'right'}
        beside
      />
      <Dimension
        from={places.plate}
        to={plate}
        y={plateEnd + (narrow ? 56 : -22)}
        edge={plateEnd}
        text={`${narrow ? '' : 'frame gives '}${tell(state, 'frameTravel')}`}
        id="frameTravel"
      />
      {narrow && (
        <text x={plate + 28} y={plateEnd + 46}>
          frame gives
        </text>
      )}
    </g>
  );
}

/** The arrows of screw, wheel and strands, their numerals, and the travel. */
export function TurnForces(props: TurnPartProps) {
  const { state, layout, places } = props;
  const { axis, beam, perForce, narrow } = layout;
  const { wheel, plate, radius } = places;
  const { thrust, wheelForce, strandForce } = state.values;
  const near = narrow ? 8 : 12;
  const head = narrow ? 8 : 11;
  const lift = axis - beam - near;
  const drop = axis + beam + near;
  return (
    <g>
      <Travel {...props} />
      <g data-sym="thrust">
        <ForceArrow
          x={plate - 6 - thrust * perForce}
          y={lift}
          length={thrust * perForce}
          ink="ink"
          head={head}
        />
      </g>
      <StageMark
        state={state}
        stage={2}
        name="thrust"
        x={plate - (narrow ? 6 : 1)}
        y={lift - near * (narrow ? 0.7 : 1.25)}
        ink="ink"
        anchor="end"
      />
      <g data-sym="wheelForce">
        <ForceArrow x={wheel} y={drop} length={wheelForce * perForce} ink="ink" head={head} />
      </g>
      <StageMark
        state={state}
        stage={3}
        name="wheelForce"
        x={narrow ? wheel + Math.max(wheelForce * perForce, radius) + 4 : wheel}
        y={narrow ? drop + 5 : drop + near + 6}
        ink="ink"
        anchor={narrow ? 'start' : 'middle'}
      />
      <g data-sym="strandForce">
        {[axis - radius - near, axis + radius + near * 0.8].map((y) => (
          <ForceArrow
            key={y}
            x={wheel}
            y={y}
            length={-strandForce * perForce}
            ink="steel"
            head={head}
          />
        ))}
      </g>
      <StageMark
        state={state}
        stage={4}
        name="strandForce"
        x={narrow ? wheel - strandForce * perForce - 8 : wheel + 4}
        y={axis - radius - near - (narrow ? -4 : 12)}
        ink="steel"
        anchor="end"
        words=" in each"
      />
    </g>
  );
}
