/**
 * The names of the tensioner's parts on leader lines, and in a word how the thread is kept.
 * Units: drawing units; friction has no unit.
 * Source: ranges of friction, `screw-friction`, from memory.
 */
import { THREAD_FRICTION } from '../../models/handbook-friction.ts';
import type { TurnPartProps } from './turn-layout.ts';

/** A word for a steel thread with so much friction; two of them where the handbook's ranges overlap. */
export function threadWord(friction: number): string {
  const { oiled, dry } = THREAD_FRICTION;
  if (friction < oiled.low) return 'greased';
  if (friction < dry.low) return 'oiled';
  return friction <= oiled.high ? 'oiled or dry' : 'dry';
}

interface NameProps {
  readonly words: string;
  /** Where the leader touches the part, and where the words stand. */
  readonly part: readonly [number, number];
  readonly at: readonly [number, number];
  readonly anchor?: 'middle' | 'end';
}

/** Words on a leader that ends on the part; the words stand above or below their part. */
function Name({ words, part: [x, y], at: [wordsX, wordsY], anchor = 'middle' }: NameProps) {
  const end = wordsY < y ? wordsY + 4 : wordsY - 12;
  return (
    <g>
      <path class="axis" d={`M${x} ${y}L${anchor === 'end' ? wordsX - 8 : wordsX} ${end}`} />
      <text class="note halo" x={wordsX} y={wordsY} text-anchor={anchor}>
        {words}
      </text>
    </g>
  );
}

function WideNames({ state, layout, places }: TurnPartProps) {
  const { axis, beam, plateWidth, left } = layout;
  const { wheel, plate } = places;
  const bearing = plate + plateWidth + beam * 0.4;
  const screw = plate - 36;
  return (
    <g>
      <text class="note" x={(left + places.wheelAtRest) / 2} y={axis + 5} text-anchor="middle">
        frame
      </text>
      <Name words="slide" part={[wheel - 10, axis - 11]} at={[wheel - 6, axis - 25]} anchor="end" />
      <Name words="screw" part={[screw, axis + 6]} at={[screw, axis + 60]} />
      <text class="note" x={screw} y={axis + 77} text-anchor="middle" data-sym="friction">
        {threadWord(state.values.friction)}
      </text>
      <Name words="bearing" part={[bearing, axis + 17]} at={[bearing + 18, axis + 77]} />
    </g>
  );
}

function NarrowNames({ layout, places }: TurnPartProps) {
  const { axis, beam, plateWidth, end } = layout;
  const bearing = places.plate + plateWidth + beam * 0.4;
  const screw = places.plate - 20;
  return (
    <g>
      <Name words="bearing" part={[bearing, axis - 8]} at={[bearing - 8, axis - 44]} />
      <Name words="screw" part={[screw, axis + 3]} at={[screw, axis + 35]} />
      <text class="note" x={end.x} y={11} text-anchor="middle">
        handle
      </text>
    </g>
  );
}

/** The names for the width of the sheet; a phone has room for fewer. */
export function TurnNames(props: TurnPartProps) {
  return props.layout.narrow ? <NarrowNames {...props} /> : <WideNames {...props} />;
}
