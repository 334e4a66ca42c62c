/**
 * The sections of both bands, true to scale, and how hard the whole of each pulls, as an arrow: the chosen one hatched, the
 * other pale.
 * Units: SI in the state; drawing units otherwise.
 */
import { ForceArrow } from '../../../figures/ForceArrow.tsx';
import { Hatch } from '../../../figures/Hatch.tsx';
import { formatQuantity } from '../../../units/format-quantity.ts';
import type { State } from '../state.ts';
import { BANDS, type BandName } from '../strip.ts';
import type { PluckLayout } from './layout.ts';

const UNDER = 19; // drawing units from what is drawn to its words
const NAMES = ['narrow', 'wide'] as const satisfies readonly BandName[];

interface BandProps {
  readonly state: State;
  readonly layout: PluckLayout;
  readonly name: BandName;
  readonly y: number;
}

/** Body and teeth, which carry nothing; its sizes under it. */
function Section({ state, layout, name, y }: BandProps) {
  const { left, perLength } = layout.section;
  const { bodyWidth, widthOverTeeth, thickness } = BANDS[name];
  const [body, tip] = [left + bodyWidth * perLength, left + widthOverTeeth * perLength];
  const half = (thickness * perLength) / 2;
  const rectangle = { x: left, y: y - half, width: body - left, height: 2 * half };
  const say = (size: number, kind: 'length' | 'thickness') =>
    formatQuantity(size, kind, state.system);
  return (
    <g>
      <path class="thin" d={`M${body} ${y - half}L${tip} ${y}L${body} ${y + half}`} />
      {name === state.values.band && (
        <Hatch id={`${state.idPrefix}-section`} {...rectangle} spacing={4} />
      )}
      <rect class="thin" {...rectangle} />
      <text class={name === state.values.band ? '' : 'note'} x={left} y={y + half + UNDER}>
        {name} {say(bodyWidth, 'length')} × {say(thickness, 'thickness')}
      </text>
    </g>
  );
}

/** The pull of the whole section, and the note that it gives. */
function Pull({ state, layout, name, y }: BandProps) {
  const { left, perForce } = layout.pull;
  const { band, strandPull, otherPull, pitch, otherPitch } = state.values;
  const [pull, note] = name === band ? [strandPull, pitch] : [otherPull, otherPitch];
  const words = formatQuantity(pull, 'force', state.system);
  const sounds = formatQuantity(note, 'frequency', state.system);
  return (
    <g data-sym={name === band ? 'strandPull' : undefined}>
      <ForceArrow x={left} y={y} length={pull * perForce} ink="steel" />
      <text class={name === band ? 'steel' : 'note'} x={left} y={y + UNDER + 2}>
        {state.narrow ? `${words}, ${sounds}` : `pulls with ${words}, sounds at ${sounds}`}
      </text>
    </g>
  );
}

/** Both bands, one under the other. */
export function BandsAcross({ state, layout }: Omit<BandProps, 'name' | 'y'>) {
  const { y, line } = layout.section;
  return (
    <g>
      {NAMES.map((name, place) => (
        <g key={name}>
          <Section state={state} layout={layout} name={name} y={y + place * line} />
          <Pull state={state} layout={layout} name={name} y={y + place * line} />
        </g>
      ))}
    </g>
  );
}
