/**
 * The band as it is drawn from the side, its thickness in layers of tone: bent round a wheel, or straight.
 * Units: SI in the state; drawing units otherwise.
 */
import type { State } from '../state.ts';
import { layersOf, toneOf } from './layers.ts';
import type { BendLayout } from './layout.ts';

interface PartProps {
  readonly state: State;
  readonly layout: BendLayout;
}

/** Half a disc right of the line on which the band meets the wheel. */
const halfDisc = (x: number, centre: number, radius: number) =>
  `M${x} ${centre - radius}A${radius} ${radius} 0 0 1 ${x} ${centre + radius}Z`;

/** The band round the wheel, layer by layer, and the strands that run onto it. */
export function BentBand({ state, layout }: PartProps) {
  const { meets, rim, perLength, perThickness } = layout.wheel;
  const { wheelDiameter, thickness, tension } = state.values;
  const radius = (wheelDiameter / 2) * perLength;
  const centre = rim + radius;
  const thick = thickness * perThickness;
  const { start } = layout.pull;
  const strands = `M${start} ${rim - thick}H${meets}V${rim}H${start}ZM${start} ${rim + 2 * radius}H${meets}v${thick}H${start}Z`;
  const outer = radius + thick;
  return (
    <g>
      {layersOf(state.values)
        .toReversed()
        .map(({ to, tone }) => (
          <path key={to} class={tone} d={halfDisc(meets, centre, radius + to * thick)} />
        ))}
      <circle class="paper-fill" cx={meets} cy={centre} r={radius} />
      <path class={toneOf(tension)} d={strands} />
      <circle class="outline" cx={meets} cy={centre} r={radius} />
      <path
        class="outline"
        d={`M${start} ${rim - thick}H${meets}A${outer} ${outer} 0 0 1 ${meets} ${centre + outer}H${start}M${start} ${rim}H${meets}M${start} ${rim + 2 * radius}H${meets}`}
      />
    </g>
  );
}

/** The band over a wheel without end: straight all along. */
export function StraightBand({ state, layout }: PartProps) {
  const { rim, right, perThickness } = layout.wheel;
  const { start } = layout.pull;
  const thick = state.values.thickness * perThickness;
  return (
    <g>
      {layersOf(state.values).map(({ from, to, tone }) => (
        <rect
          key={to}
          class={tone}
          x={start}
          y={rim - to * thick}
          width={right - start}
          height={(to - from) * thick}
        />
      ))}
      <path class="outline" d={`M${start} ${rim - thick}H${right}M${start} ${rim}H${right}`} />
    </g>
  );
}
