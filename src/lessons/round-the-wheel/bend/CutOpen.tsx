/**
 * The band on the wheel cut open: a piece of it in tone, and beside it the stress at each depth as arrows. Tension is the
 * same at every depth; bending is added to it outside, and taken from it inside. The outer face can be dragged.
 * Units: SI in the state; drawing units otherwise.
 */
import { ArrowHead } from '../../../figures/dimension.tsx';
import { Handle } from '../../../figures/Handle.tsx';
import { roundTheWheel } from '../model.ts';
import type { State } from '../state.ts';
import { FaceSums } from './FaceSums.tsx';
import { layersOf, stressAtDepth } from './layers.ts';
import type { BendLayout } from './layout.ts';

interface PartProps {
  readonly state: State;
  readonly layout: BendLayout;
}

const DEPTHS = [0.08, 0.29, 0.5, 0.71, 0.92];
const APART = 2; // the arrows of the two parts from the depth that they are for
const GRIP_ASIDE = 24; // from the piece, or it would hide what it moves

interface ArrowProps {
  readonly from: number;
  readonly to: number;
  readonly y: number;
  readonly ink: 'hand' | 'steel';
}

/** A level arrow; nothing where it would be shorter than a head. */
function Arrow({ from, to, y, ink }: ArrowProps) {
  const size = Math.min(8, Math.abs(to - from));
  if (size < 3) return null;
  const neck = to - Math.sign(to - from) * size * 0.8;
  return (
    <g>
      <path class={`${ink}-thin`} d={`M${from} ${y}H${neck}`} />
      <ArrowHead x={to} y={y} angle={to < from ? 180 : 0} ink={ink} size={size} />
    </g>
  );
}

/** The stress at every depth: the part of the tension, and from its end the part of the bend. */
function Profile({ state, layout }: PartProps) {
  const { values } = state;
  const { zero, inner, perThickness, perStress } = layout.section;
  const thick = values.thickness * perThickness;
  const x = (stress: number) => zero + stress * perStress;
  const pulled = x(values.tension);
  const outer = inner - thick;
  return (
    <g>
      <rect class="hand-wash" x={zero} y={outer} width={pulled - zero} height={thick} />
      <path
        class="steel-wash"
        d={`M${pulled} ${outer}H${x(values.outerStress)}L${x(values.innerStress)} ${inner}H${pulled}Z`}
      />
      <path class="hand-line" d={`M${pulled} ${outer}V${inner}`} data-sym="tension" />
      <path
        class="steel-line"
        d={`M${x(values.outerStress)} ${outer}L${x(values.innerStress)} ${inner}`}
        data-sym="shownBending"
      />
      {DEPTHS.map((depth) => {
        const y = inner - depth * thick;
        return (
          <g key={depth}>
            <Arrow from={zero} to={pulled} y={y - APART} ink="hand" />
            <Arrow from={pulled} to={x(stressAtDepth(values, depth))} y={y + APART} ink="steel" />
          </g>
        );
      })}
      <path class="outline" d={`M${zero} ${outer - 6}V${inner + 6}`} />
    </g>
  );
}

/** The piece of the band, in the tones of its layers. */
function Piece({ state, layout }: PartProps) {
  const { left, piece, inner, right, perThickness } = layout.section;
  const thick = state.values.thickness * perThickness;
  return (
    <g>
      {layersOf(state.values).map(({ from, to, tone }) => (
        <rect
          key={to}
          class={tone}
          x={left}
          y={inner - to * thick}
          width={piece}
          height={(to - from) * thick}
        />
      ))}
      <rect class="outline" x={left} y={inner - thick} width={piece} height={thick} />
      <path
        class="grid"
        d={`M${left + piece} ${inner - thick}H${right}M${left + piece} ${inner}H${right}`}
      />
    </g>
  );
}

/** Piece, profile, and the sum at each face. */
export function CutOpen({ state, layout }: PartProps) {
  const { left, piece, inner, perThickness } = layout.section;
  return (
    <g>
      <Piece state={state} layout={layout} />
      <Profile state={state} layout={layout} />
      <FaceSums state={state} layout={layout} />
      <Handle
        model={roundTheWheel}
        state={state}
        x={left + piece + GRIP_ASIDE}
        y={inner - state.values.thickness * perThickness}
        input="thickness"
        label="Move the outer face"
        drag="y"
        perUnit={-1 / perThickness}
      />
    </g>
  );
}
