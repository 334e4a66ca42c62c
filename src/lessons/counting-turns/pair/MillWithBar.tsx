/**
 * One mill of the pair: its name, its drawing, and the bar of its nut's travel under it.
 * Units: SI in the state; drawing units otherwise.
 */
import { Dimension } from '../../../figures/dimension.tsx';
import { formatQuantity } from '../../../units/format-quantity.ts';
import type { State } from '../state.ts';
import { BeamFrame } from '../turns/BeamFrame.tsx';
import { type CountingPlaces, millPlaces } from '../turns/mill-places.ts';
import { PieceBar } from '../turns/PieceBar.tsx';
import { ScrewInPlace } from '../turns/ScrewInPlace.tsx';
import { SlackLoop } from '../turns/SlackLoop.tsx';
import { type TravelPiece, travelPieces } from '../turns/travel-pieces.ts';
import type { MillLayout } from './layout.ts';
import type { NutValues } from './nut-values.ts';

/** How many times larger than the mills their gives are drawn. */
export const TIMES = 60;

interface MillWithBarProps {
  readonly state: State;
  readonly nut: NutValues;
  readonly layout: MillLayout;
  readonly perTravel: number;
  /** What is between nut and frame. */
  readonly between: string;
}

interface AxlesProps {
  readonly system: State['system'];
  readonly y: number;
  readonly places: CountingPlaces;
}

function TravelOfNut({ state, nut, layout, perTravel }: MillWithBarProps) {
  const { bar } = layout;
  const { system, narrow, idPrefix } = state;
  const travels = {
    slack: nut.slackTravel,
    band: nut.bandTravel,
    frame: nut.frameTravel,
    spring: nut.springTravel,
  };
  const length = (value: number) => formatQuantity(value, 'length', system, { digits: 3 });
  const share = (value: number) => {
    const part = nut.travel > 0 ? value / nut.travel : 0;
    return formatQuantity(part, 'percent', system, { digits: 2 });
  };
  const say = (piece: TravelPiece) =>
    [`${piece.name} ${share(piece.travel)}`, length(piece.travel)] as const;
  return (
    <g>
      <text
        class="hand"
        x={layout.travels.x}
        y={layout.travels.y}
        text-anchor={layout.travels.anchor}
      >
        nut travels {length(nut.travel)}
      </text>
      <PieceBar
        id={`${idPrefix}-${nut.tensioner}`}
        bar={bar}
        narrow={narrow}
        pieces={travelPieces(travels, nut.mill.spring.kind, bar.left, perTravel)}
        say={say}
      />
    </g>
  );
}

/** From axle to axle, below the lower strand. */
function AxleToAxle({ system, y, places }: AxlesProps) {
  const { fixed, moved, axis, radius, apart } = places;
  const text = formatQuantity(apart, 'longLength', system);
  return <Dimension from={fixed} to={moved} y={y} edge={axis + radius + 8} text={text} />;
}

/** Name, mill, bar. */
export function MillWithBar(props: MillWithBarProps) {
  const { state, nut, layout, between } = props;
  const places = millPlaces(nut.mill, layout.mill, TIMES, nut);
  return (
    <g>
      <text x={layout.name.x} y={layout.name.y}>
        {nut.mill.place}: {between}
      </text>
      <SlackLoop places={places} />
      <BeamFrame places={places} id={`${state.idPrefix}-${nut.tensioner}-plate`} />
      <ScrewInPlace places={places} {...nut} />
      {layout.apart !== undefined && (
        <AxleToAxle system={state.system} y={layout.apart} places={places} />
      )}
      <TravelOfNut {...props} />
    </g>
  );
}
