/**
 * The chain on the mill's drawing: a numeral at each stage, beside it what is written there.
 * Units: drawing units; forces in N.
 */
import type { Ink } from '../../models/words.ts';
import { ForceArrow } from '../ForceArrow.tsx';
import type { MillLayout } from './layout.ts';
import { type Stage, type StagePlace, screwLeader } from './stage-places.ts';

/** A stage as it is written on a drawing. */
export interface Callout {
  readonly stage: Stage;
  readonly ink: Ink;
  readonly place: StagePlace;
  /** What is written behind the numeral; nothing where the numeral is enough. */
  readonly words?: string | undefined;
}

interface CalloutsProps {
  readonly layout: MillLayout;
  /** As many of the chain's stages as are shown, in its order. */
  readonly callouts: readonly Callout[];
}

/** Numerals with their words, and the line from the screw to its own. */
export function Callouts({ layout, callouts }: CalloutsProps) {
  const { x, from, to } = screwLeader(layout);
  return (
    <g>
      {callouts.some(({ stage }) => stage === 'thrust') && (
        <path class="thin" d={`M${x} ${from}V${to}`} />
      )}
      {callouts.map(({ stage, ink, place, words }, index) => (
        <text
          key={stage}
          class={`halo ${ink}`}
          x={place.x}
          y={place.y}
          text-anchor={place.anchor}
          data-sym={stage}
        >
          <tspan class="numeral">{index + 1}</tspan>
          {words !== undefined && <tspan dx={7}>{words}</tspan>}
        </text>
      ))}
    </g>
  );
}

interface PullProps {
  readonly layout: MillLayout;
  /** Where the movable wheel's centre stands now. */
  readonly wheel: number;
  /** The force in one strand. */
  readonly strandForce: number;
}

/** The pull of the two strands on the movable wheel, as long as it is strong. */
export function Pull({ layout, wheel, strandForce }: PullProps) {
  const { axis, radius, narrow, perForce } = layout;
  const offset = narrow ? 7 : 10;
  return (
    <g data-sym="strandForce">
      {[axis - radius - offset, axis + radius + offset].map((y) => (
        <ForceArrow
          key={y}
          x={wheel}
          y={y}
          length={-strandForce * perForce}
          ink="steel"
          head={narrow ? 8 : 11}
        />
      ))}
    </g>
  );
}
