/**
 * A hydraulic tensioner cut open, true to scale: cylinder on the frame's arm, oil, and the piston that the oil has
 * pushed out as far as slack, band and frame let it.
 * Units: SI in the state; drawing units otherwise.
 */

import { Dimension } from '../../../figures/dimension.tsx';
import { Hatch } from '../../../figures/Hatch.tsx';
import { formatQuantity } from '../../../units/format-quantity.ts';
import { CYLINDER } from './cylinder-sizes.ts';
import type { CountingPartProps } from './layout.ts';
import { tensionerSizes } from './tensioner-sizes.ts';

interface BodyProps {
  readonly id: string;
  readonly x: number;
  readonly y: number;
  readonly scale: number;
}

/** The cylinder's end and walls in section. */
function Body({ id, x, y, scale }: BodyProps) {
  const { bore, wall, end, inside } = CYLINDER;
  const [half, thick, length] = [(bore / 2) * scale, wall * scale, (end + inside) * scale];
  const cuts = [
    { key: 'upper', x, y: y - half - thick, width: length, height: thick },
    { key: 'lower', x, y: y + half, width: length, height: thick },
    { key: 'end', x, y: y - half, width: end * scale, height: 2 * half },
  ];
  return (
    <g>
      {cuts.map(({ key, ...cut }) => (
        <Hatch key={key} id={`${id}-${key}`} {...cut} />
      ))}
      <path
        class="outline"
        d={`M${x + length} ${y - half}H${x + end * scale}V${y + half}H${x + length}v${thick}H${x}V${y - half - thick}H${x + length}v${thick}`}
      />
    </g>
  );
}

/** Cylinder, oil, piston and rod, and how far the piston has come. */
export function PressedPiston({ state, layout }: CountingPartProps) {
  const { travel } = state.values;
  const { y, size } = layout.detail;
  const sizes = tensionerSizes('oil');
  const scale = sizes.scale * size;
  const x = layout.detail.x - sizes.plate * scale;
  const { bore, wall, end, rest, piston } = CYLINDER;
  const [half, rod] = [(bore / 2) * scale, (sizes.screw / 2) * scale];
  const oil = x + end * scale;
  const start = oil + rest * scale;
  const now = start + travel * scale;
  const outer = x + (end + CYLINDER.inside + sizes.proud) * scale + travel * scale;
  const back = now + piston * scale;
  return (
    <g>
      <rect
        class="hand-wash"
        x={oil}
        y={y - half}
        width={now - oil}
        height={2 * half}
        data-sym="pressure"
      />
      <Body id={`${state.idPrefix}-cylinder`} x={x} y={y} scale={scale} />
      <rect class="outline shade-fill" x={now} y={y - half} width={back - now} height={2 * half} />
      <rect class="outline paper-fill" x={back} y={y - rod} width={outer - back} height={2 * rod} />
      <path class="centre" d={`M${x - 8} ${y}H${outer + 12}`} />
      <text class="hand" x={(oil + now) / 2} y={y + 5} text-anchor="middle">
        {layout.narrow ? '' : 'oil'}
      </text>
      {!layout.narrow && (
        <Dimension
          from={start}
          to={now}
          y={y + half + wall * scale + 22}
          edge={y + half + wall * scale}
          text={formatQuantity(travel, 'length', state.system, { digits: 3 })}
          id="travel"
        />
      )}
    </g>
  );
}
