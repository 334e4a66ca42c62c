/**
 * A screw tensioner drawn larger and true to scale: the frame's arm in section, the spring if there is one, bearing or
 * washer, nut, and the screw that comes out of the nut as far as the nut has travelled.
 * Units: SI in the state; drawing units otherwise.
 */
import type { CountingMill } from '../models/counting-mills.ts';
import { formatQuantity } from '../units/format-quantity.ts';
import { CoilSpring } from './CoilSpring.tsx';
import type { CountingPartProps } from './counting-layout.ts';
import { DiscWashers } from './DiscWashers.tsx';
import { Dimension } from './dimension.tsx';
import { Hatch } from './Hatch.tsx';
import {
  freeLength,
  springDiameter,
  type TensionerSizes,
  tensionerSizes,
} from './tensioner-sizes.ts';

/** Places along the screw, in drawing units. */
interface Along {
  readonly face: number;
  readonly washer: number;
  readonly nut: number;
  readonly out: number;
  readonly end: number;
  readonly y: number;
  readonly scale: number;
}

function along({ state, layout, places }: CountingPartProps, sizes: TensionerSizes): Along {
  const { travel = 0, springTravel = 0 } = state.values;
  const { x, y, size } = layout.detail;
  const scale = sizes.scale * size;
  const washer = x + (freeLength(places.mill) - springTravel) * scale;
  const nut = washer + sizes.bearing * scale;
  const out = nut + sizes.nut * scale;
  return { face: x, washer, nut, out, end: out + (sizes.proud + travel) * scale, y, scale };
}

interface PartProps {
  readonly at: Along;
  readonly sizes: TensionerSizes;
}

function ArmInSection({ at, sizes, id }: PartProps & { readonly id: string }) {
  const width = sizes.plate * at.scale;
  const hole = (sizes.screw / 2) * at.scale * 1.15;
  const height = hole * 1.2;
  const x = at.face - width;
  return (
    <g>
      {[at.y - hole - height, at.y + hole].map((y) => (
        <g key={y}>
          <rect class="paper-fill" x={x} y={y} width={width} height={height} />
          <Hatch id={`${id}-${Math.round(y)}`} x={x} y={y} width={width} height={height} />
          <rect class="outline" x={x} y={y} width={width} height={height} />
        </g>
      ))}
    </g>
  );
}

function Screw({ at, sizes, lead }: PartProps & { readonly lead: number }) {
  const half = (sizes.screw / 2) * at.scale;
  const start = at.face - sizes.plate * at.scale - 14;
  const pitch = Math.max(5, lead * at.scale);
  const count = Math.max(0, Math.floor((at.end - at.out) / pitch));
  const thread = Array.from({ length: count }, (_, turn) => {
    const x = at.end - (turn + 1) * pitch;
    return `M${x} ${at.y + half}L${x + pitch / 2} ${at.y - half}`;
  });
  return (
    <g>
      <rect
        class="outline paper-fill"
        x={start}
        y={at.y - half}
        width={at.end - start}
        height={2 * half}
      />
      <path class="thin" d={thread.join('')} />
      <path class="centre" d={`M${start - 8} ${at.y}H${at.end + 12}`} />
    </g>
  );
}

function Nut({ at, sizes }: PartProps) {
  const half = (sizes.nutAcross / 2) * at.scale;
  const width = at.out - at.nut;
  return (
    <g data-sym="turns">
      <rect
        class="outline shade-fill"
        x={at.washer}
        y={at.y - half * 0.85}
        width={at.nut - at.washer}
        height={half * 1.7}
      />
      <rect
        class="hand-line paper-fill"
        x={at.nut}
        y={at.y - half}
        width={width}
        height={2 * half}
      />
      <path
        class="hand-line"
        d={`M${at.nut} ${at.y - half / 2}h${width}M${at.nut} ${at.y + half / 2}h${width}`}
      />
    </g>
  );
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
  const { travel = 0, springTravel = 0, tensioner = 0, lead = 0 } = state.values;
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
        text={say(travel)}
        id="travel"
      />
    </g>
  );
}
