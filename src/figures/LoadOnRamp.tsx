/**
 * The unrolled turn as a ramp with the load standing on it: the push of the handle, the load, the thread's answer at
 * the edge of the cone of friction. Arrows show directions only; the triangle beside it shows sizes.
 * Units: SI in the state; drawing units otherwise.
 */
import { screwTakesItsCut } from '../models/screw-takes-its-cut.ts';
import { formatQuantity } from '../units/format-quantity.ts';
import { ArrowHead, Dimension } from './dimension.tsx';
import type { FigureState } from './figure.ts';
import { Handle } from './Handle.tsx';
import { degrees, leaning, rampPlaces } from './ramp-geometry.ts';
import type { RampLayout } from './ramp-layout.ts';
import { UprightDimension } from './UprightDimension.tsx';

interface PartProps {
  readonly state: FigureState;
  readonly layout: RampLayout;
}

function Ramp({ state, layout }: PartProps) {
  const { values, system, narrow } = state;
  const { left, y } = layout.ramp;
  const { right, top, climb } = rampPlaces(values, layout);
  const say = (name: string) => formatQuantity(values[name] ?? 0, 'length', system);
  return (
    <g>
      <path class="outline shade-fill" d={`M${left} ${y}H${right}V${top}Z`} />
      <Dimension
        from={left}
        to={right}
        y={y + (narrow ? 26 : 34)}
        edge={y}
        text={
          narrow ? say('round') : `one turn, unrolled: π × ${say('meanDiameter')} = ${say('round')}`
        }
        id="meanDiameter"
      />
      <UprightDimension
        lower={y}
        upper={top}
        x={right + (narrow ? 26 : 30)}
        edge={right + 2}
        text={say('lead')}
        ink="hand"
        id="lead"
      />
      {!narrow && (
        <text class="halo" x={right - 26} y={top - 8} text-anchor="end" data-sym="leadAngle">
          climbs {formatQuantity(climb, 'angle', system, { digits: 2 })}
        </text>
      )}
    </g>
  );
}

/** What is to be read off beside the cone, a line each. */
function coneWords({ values, system, narrow }: FigureState): readonly string[] {
  const say = (name: string) => formatQuantity(values[name] ?? 0, 'angle', system, { digits: 2 });
  return [
    ...(narrow ? [`ramp climbs ${say('leadAngle')}`] : []),
    `cone of friction ± ${say('frictionAngle')}`,
    values['holds'] === 1 ? 'load inside: it holds' : 'load outside: it slides',
  ];
}

function Cone({ state, layout }: PartProps) {
  const { contact, climb, friction } = rampPlaces(state.values, layout);
  const reach = layout.cone;
  const [left, right, axis] = [climb + friction, climb - friction, climb].map((angle) =>
    leaning(contact, angle, reach),
  );
  if (!left || !right || !axis) return null;
  const beside = Math.max(right.x, contact.x) + 12;
  const spacing = layout.narrow ? 17 : 21;
  return (
    <g data-sym="threadFriction">
      <path
        class="hand-wash"
        d={`M${contact.x} ${contact.y}L${left.x} ${left.y}A${reach} ${reach} 0 0 1 ${right.x} ${right.y}Z`}
      />
      <path
        class="thin"
        d={`M${left.x} ${left.y}L${contact.x} ${contact.y}L${right.x} ${right.y}`}
      />
      <path class="centre" d={`M${contact.x} ${contact.y}L${axis.x} ${axis.y}`} />
      {coneWords(state).map((text, line) => (
        <text key={line} class="halo" x={beside} y={right.y + 26 + line * spacing}>
          {text}
        </text>
      ))}
    </g>
  );
}

function Block({ layout, state }: PartProps) {
  const { contact, climb } = rampPlaces(state.values, layout);
  const { length, height } = layout.block;
  return (
    <rect
      class="outline"
      x={-length / 2}
      y={-height}
      width={length}
      height={height}
      transform={`translate(${contact.x} ${contact.y}) rotate(${-degrees(climb)})`}
    />
  );
}

function Arrows({ layout, state }: PartProps) {
  const { contact, climb, friction } = rampPlaces(state.values, layout);
  const { length, height } = layout.block;
  const size = layout.narrow ? 9 : 11;
  const face = leaning(leaning(contact, climb, height / 2), climb + Math.PI / 2, length / 2);
  const tail = face.x - (layout.narrow ? 34 : 64);
  const head = contact.y - height / Math.cos(climb) - 4;
  const top = Math.max(layout.highest, contact.y - layout.cone * 1.22);
  const answer = leaning(contact, climb + friction, layout.cone * 0.82);
  return (
    <g>
      <path class="outline" d={`M${contact.x} ${contact.y}L${answer.x} ${answer.y}`} />
      <ArrowHead {...answer} angle={-90 - degrees(climb + friction)} size={size} />
      <path class="outline" d={`M${contact.x} ${top}V${head - 6}`} />
      <ArrowHead x={contact.x} y={head} angle={90} size={size} />
      <text class="halo" x={contact.x + 8} y={top + 12} data-sym="thrust">
        load
      </text>
      <path class="hand-line" d={`M${tail} ${face.y}H${face.x - 8}`} />
      <ArrowHead x={face.x - 2} y={face.y} angle={0} ink="hand" size={size} />
      <text class="halo hand" x={tail - 4} y={face.y + 5} text-anchor="end" data-sym="torque">
        push
      </text>
    </g>
  );
}

/** How far the edge of the cone moves sideways for a friction of one, at its end. */
function edgePerFriction({ values }: FigureState, { cone }: RampLayout): number {
  const { leadAngle = 0, frictionAngle = 0, wedging = 1 } = values;
  return -cone * Math.cos(leadAngle + frictionAngle) * Math.cos(frictionAngle) ** 2 * wedging;
}

function Handles({ layout, state }: PartProps) {
  const { values, system } = state;
  const { right, top, contact, climb, friction } = rampPlaces(values, layout);
  const edge = leaning(contact, climb + friction, layout.cone + 4);
  const scale = layout.ramp.base / (values['round'] ?? 1);
  const { lead, threadFriction } = screwTakesItsCut.inputs;
  return (
    <g>
      {lead && (
        <Handle
          x={right}
          y={top}
          input="lead"
          label="Lift the ramp’s end"
          value={values['lead'] ?? 0}
          min={lead.min}
          max={lead.max}
          text={formatQuantity(values['lead'] ?? 0, 'length', system)}
          drag="y"
          perUnit={-1 / scale}
        />
      )}
      {threadFriction && (
        <Handle
          {...edge}
          input="threadFriction"
          label="Spread the cone of friction"
          value={values['threadFriction'] ?? 0}
          min={threadFriction.min}
          max={threadFriction.max}
          text={formatQuantity(values['threadFriction'] ?? 0, 'ratio', system)}
          drag="x"
          perUnit={1 / edgePerFriction(state, layout)}
        />
      )}
    </g>
  );
}

/** Ramp, cone, block, arrows, and the two handles. */
export function LoadOnRamp(props: PartProps) {
  return (
    <g>
      <Ramp {...props} />
      <Cone {...props} />
      <Block {...props} />
      <Arrows {...props} />
      <Handles {...props} />
    </g>
  );
}
