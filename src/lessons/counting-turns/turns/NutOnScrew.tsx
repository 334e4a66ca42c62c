/**
 * A screw tensioner drawn larger and true to scale: the frame's arm in section, the spring if there is one, bearing or
 * washer, nut, and the screw that comes out of the nut as far as the nut has travelled.
 * Units: SI in the state; drawing units otherwise.
 */

import { Dimension } from '../../../figures/dimension.tsx';
import { formatQuantity } from '../../../units/format-quantity.ts';
import type { CountingMill } from '../mill.ts';
import { CoilSpring } from './CoilSpring.tsx';
import { DiscWashers } from './DiscWashers.tsx';
import type { CountingPartProps } from './layout.ts';
import { type Along, ArmInSection, Nut, Screw } from './screw-parts.tsx';
import {
  freeLength,
  springDiameter,
  type TensionerSizes,
  tensionerSizes,
} from './tensioner-sizes.ts';

function along({ state, layout, places }: CountingPartProps, sizes: TensionerSizes): Along {
  const { travel, springTravel } = state.values;
  const { x, y, size } = layout.detail;
  const scale = sizes.scale * size;
  const washer = x + (freeLength(places.mill) - springTravel) * scale;
  const nut = washer + sizes.bearing * scale;
  const out = nut + sizes.nut * scale;
  return { face: x, washer, nut, out, end: out + (sizes.proud + travel) * scale, y, scale };
}

function SpringBetween({
  at,
  mill,
  travel,
}: {
  readonly at: Along;
  readonly mill: CountingMill;
  readonly travel: number;
}) {
  const { spring } = mill;
  const common = { x: at.face, y: at.y, scale: at.scale };
  if (spring.kind === 'discs')
    return <DiscWashers {...common} stack={spring.stack} travel={travel} />;
  if (spring.kind === 'coil')
    return <CoilSpring {...common} coil={spring.coil} length={spring.coil.freeLength - travel} />;
  return null;
}

/** The tensioner with what it gave and how far its nut came. */
export function NutOnScrew(props: CountingPartProps) {
  const { state, places, layout } = props;
  const { travel, springTravel, tensioner, lead } = state.values;
  const { mill } = places;
  const sizes = tensionerSizes(tensioner);
  const at = along(props, sizes);
  const reach = (Math.max(springDiameter(mill), sizes.nutAcross) / 2) * at.scale;
  const say = (value: number) => formatQuantity(value, 'length', state.system, { digits: 3 });
  const length = freeLength(mill);
  return (
    <g>
      <ArmInSection at={at} sizes={sizes} id={`${state.idPrefix}-arm`} />
      <Screw at={at} sizes={sizes} lead={lead} />
      <SpringBetween at={at} mill={mill} travel={springTravel} />
      <Nut at={at} sizes={sizes} />
      {length > 0 && !layout.narrow && (
        <Dimension
          from={at.face}
          to={at.washer}
          y={at.y + reach + 24}
          edge={at.y + reach}
          text={say(length - springTravel)}
          id="springTravel"
        />
      )}
      <Dimension
        from={at.out}
        to={at.out + travel * at.scale}
        y={at.y - (sizes.nutAcross / 2) * at.scale - 6}
        edge={at.y - (sizes.screw / 2) * at.scale}
        ink="hand"
        text={`${layout.narrow ? 'nut' : 'nut came'} ${say(travel)}`}
        id="travel"
      />
    </g>
  );
}
