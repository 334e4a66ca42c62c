/** The rig from the side, cut along its axis, the near tube left out: strip, grips, screw and wrench, dial, clear plastic. */
import { CutPlate } from '../../../figures/CutPlate.tsx';
import { ArrowHead, Dimension } from '../../../figures/dimension.tsx';
import { Hatch } from '../../../figures/Hatch.tsx';
import { BUILD, RIG } from '../../../models/mills/classroom-rig.ts';
import { Dial } from './Dial.tsx';
import { About, Break, Numbered } from './kit.tsx';
import { PLACES, type RigLayout } from './layout.ts';
import type { RigState } from './state.ts';

const HALF_GRIP = BUILD.gripThickness + RIG.thickness / 2;
const HALF_PLATE = BUILD.plateHeight / 2;
const ROD = 0.006; // half of an M12
const HOLE = RIG.washer.innerDiameter / 2;
const PLASTIC = 0.085; // over the axis

interface ViewProps {
  readonly state: RigState;
  readonly layout: RigLayout;
  /** A length in the reader's unit. */
  readonly say: (name: 'gaugeLength' | 'betweenGrips') => string;
}

function Grip({ layout, from }: { layout: RigLayout; from: number }) {
  const to = from + BUILD.gripLength;
  const shared = { layout, axis: layout.side };
  const bolt = { from: from + 0.0235, to: to - 0.0235 };
  return (
    <g>
      <About {...shared} from={from} to={to} top={-HALF_GRIP} bottom={0} />
      <About {...shared} from={from} to={to} top={0} bottom={HALF_GRIP} />
      <About {...shared} {...bolt} top={-HALF_GRIP - 0.006} bottom={-HALF_GRIP} />
      <About {...shared} {...bolt} top={HALF_GRIP} bottom={HALF_GRIP + 0.006} />
    </g>
  );
}

function Screw({ layout }: { layout: RigLayout }) {
  const { along, side: axis, perMeter } = layout;
  const [from, to] = [along(PLACES.rod), along(PLACES.rodEnd)];
  const root = 0.0051 * perMeter;
  const shared = { layout, axis };
  return (
    <g>
      <About {...shared} from={PLACES.rod} to={PLACES.rodEnd} top={-ROD} bottom={ROD} />
      <path class="thin" d={`M${from} ${axis - root}H${to}M${from} ${axis + root}H${to}`} />
      <About {...shared} from={PLACES.end} to={PLACES.nut} top={-0.012} bottom={0.012} />
      <About {...shared} from={PLACES.nut} to={PLACES.nut + 0.01} top={-0.0095} bottom={0.0095} />
    </g>
  );
}

/** Socket and handle of the wrench, and which way it turns: what the hand sets. */
function Wrench({ layout }: { layout: RigLayout }) {
  const { along, side: axis, perMeter } = layout;
  const [from, to] = [along(PLACES.nut), along(PLACES.rodEnd) + 0.02 * perMeter];
  const half = 0.014 * perMeter;
  const [left, right] = [to, to + 0.02 * perMeter];
  const foot = axis + 0.075 * perMeter;
  return (
    <g>
      <rect class="hand-line" x={from} y={axis - half} width={to - from} height={2 * half} />
      <path
        class="hand-line"
        d={`M${left} ${foot}V${axis - half}H${right}V${foot}M${left - 3} ${foot + 3}l5-5l4 5l7-7`}
      />
    </g>
  );
}

/** Both ends, the strip between them, the far tube behind. */
function Frame({ state, layout }: Pick<ViewProps, 'state' | 'layout'>) {
  const { along, side: axis, perMeter } = layout;
  const half = HALF_PLATE * perMeter;
  const thickness = BUILD.plateThickness * perMeter;
  const tube = BUILD.tube / 2;
  return (
    <g>
      <About
        layout={layout}
        axis={axis}
        from={PLACES.fixedGrip}
        to={PLACES.farPlate}
        top={-tube}
        bottom={tube}
        ink="thin"
      />
      <rect class="outline" x={along(0)} y={axis - half} width={thickness} height={2 * half} />
      <Hatch
        id={`${state.idPrefix}-near`}
        x={along(0)}
        y={axis - half}
        width={thickness}
        height={2 * half}
      />
      <CutPlate
        id={`${state.idPrefix}-far`}
        x={along(PLACES.farPlate)}
        axis={axis}
        width={thickness}
        hole={HOLE * perMeter}
        height={half - HOLE * perMeter}
      />
    </g>
  );
}

function Plastic({ layout }: { layout: RigLayout }) {
  const { along, side: axis, perMeter } = layout;
  const [left, right, top] = [along(0), along(PLACES.end), axis - PLASTIC * perMeter];
  const posts = axis - HALF_PLATE * perMeter;
  return (
    <path
      class="thin"
      d={`M${left} ${top}H${right}V${top - 3}H${left}ZM${left + 4} ${top}V${posts}M${right - 4} ${top}V${posts}`}
    />
  );
}

function Numbers({ layout }: { layout: RigLayout }) {
  const { along, side: axis, perMeter, levels } = layout;
  const { numbersAbove: y } = levels;
  const dial = along(PLACES.gaugeTo - 0.067);
  const plastic = along(0.2);
  const right = along(PLACES.rodEnd);
  return (
    <g>
      <Numbered part={9} x={plastic} y={y} to={[plastic, axis - PLASTIC * perMeter - 1]} />
      <Numbered part={7} x={dial - 26} y={y} to={[dial - 8, axis - 0.046 * perMeter]} />
      <Numbered
        part={6}
        x={right - 6}
        y={y + 14}
        to={[along(PLACES.nut) + 2, axis - 0.008 * perMeter]}
      />
      <Numbered part={8} x={right + 18} y={y + 14} to={[right + 0.03 * perMeter, axis]} />
    </g>
  );
}

/** The view with its dimensions. */
export function SideView({ state, layout, say }: ViewProps) {
  const { along, side: axis, perMeter, levels, breaks } = layout;
  const pull = along(PLACES.movingGrip) - 14;
  const half = HALF_PLATE * perMeter;
  return (
    <g>
      <Frame state={state} layout={layout} />
      <path class="limit" d={`M${along(PLACES.strip)} ${axis}H${along(PLACES.movingGrip)}`} />
      <Grip layout={layout} from={PLACES.fixedGrip} />
      <Grip layout={layout} from={PLACES.movingGrip} />
      <Screw layout={layout} />
      <Wrench layout={layout} />
      <Dial state={state} layout={layout} />
      <path class="steel-line" d={`M${pull - 34} ${axis + 12}H${pull - 8}`} />
      <ArrowHead x={pull} y={axis + 12} angle={0} ink="steel" />
      <Plastic layout={layout} />
      {breaks.map((place) => (
        <Break key={place} x={along(place)} from={axis - half / 1.4} to={axis + half / 1.4} />
      ))}
      <path class="centre" d={`M${along(0) - 8} ${axis}H${along(PLACES.strip)}`} />
      <Dimension
        from={along(PLACES.gaugeFrom)}
        to={along(PLACES.gaugeTo)}
        y={levels.gauge}
        edge={axis + 0.012 * perMeter}
        text={say('gaugeLength')}
      />
      <Dimension
        from={along(PLACES.strip)}
        to={along(PLACES.movingGrip)}
        y={levels.grips}
        edge={axis + HALF_GRIP * perMeter}
        text={say('betweenGrips')}
      />
      <Numbers layout={layout} />
    </g>
  );
}
