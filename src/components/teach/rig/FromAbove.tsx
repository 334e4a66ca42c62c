/** The rig from above, plastic and wrench left out: two tubes, two end plates, the strip between its grips. */
import { ArrowHead, Dimension } from '../../../figures/dimension.tsx';
import { BUILD, RIG } from '../../../models/mills/classroom-rig.ts';
import { DialFromAbove } from './Dial.tsx';
import { About, Break, Numbered } from './kit.tsx';
import { PLACES, type RigLayout } from './layout.ts';

const { tubeGap, tube, plateWidth, gripWidth, gripLength } = BUILD;
const BOLT = 0.022; // m from the axis to a grip's bolts

interface ViewProps {
  readonly layout: RigLayout;
  /** A length in the reader's unit. */
  readonly say: (name: 'frameLength' | 'tubeGap') => string;
}

function Grip({ layout, from }: { layout: RigLayout; from: number }) {
  const { along, above: axis, perMeter } = layout;
  const center = along(from + gripLength / 2);
  const shared = { layout, axis, from, to: from + gripLength };
  return (
    <g>
      <About {...shared} top={-gripWidth / 2} bottom={gripWidth / 2} />
      <About {...shared} top={-RIG.width / 2} bottom={RIG.width / 2} ink="hidden-edge" />
      {[-BOLT, BOLT].map((across) => (
        <circle
          key={across}
          class="outline paper-fill"
          cx={center}
          cy={axis + across * perMeter}
          r={0.0065 * perMeter}
        />
      ))}
    </g>
  );
}

function Frame({ layout }: { layout: RigLayout }) {
  const shared = { layout, axis: layout.above };
  const tubes = { ...shared, from: PLACES.fixedGrip, to: PLACES.farPlate };
  const ends = { ...shared, top: -plateWidth / 2, bottom: plateWidth / 2 };
  const outer = tubeGap / 2 + tube;
  return (
    <g>
      <About {...tubes} top={-outer} bottom={-tubeGap / 2} />
      <About {...tubes} top={tubeGap / 2} bottom={outer} />
      <About {...ends} from={0} to={PLACES.fixedGrip} />
      <About {...ends} from={PLACES.farPlate} to={PLACES.end} />
    </g>
  );
}

function Screw({ layout }: { layout: RigLayout }) {
  const shared = { layout, axis: layout.above };
  return (
    <g>
      <About {...shared} from={PLACES.rod} to={PLACES.farPlate} top={-0.006} bottom={0.006} />
      <About {...shared} from={PLACES.end} to={PLACES.rodEnd} top={-0.006} bottom={0.006} />
      <About {...shared} from={PLACES.end} to={PLACES.nut} top={-0.012} bottom={0.012} />
      <About {...shared} from={PLACES.nut} to={PLACES.nut + 0.01} top={-0.011} bottom={0.011} />
    </g>
  );
}

/** The clear distance between the tubes: a standing dimension line, its number beside it. */
function Gap({ layout, say }: ViewProps) {
  const { along, above: axis, perMeter } = layout;
  const half = (tubeGap / 2) * perMeter;
  const x = along(PLACES.gaugeFrom - 0.027);
  return (
    <g>
      <path class="thin" d={`M${x} ${axis - half}V${axis + half}`} />
      <ArrowHead x={x} y={axis - half} angle={-90} size={7} />
      <ArrowHead x={x} y={axis + half} angle={90} size={7} />
      <text class="halo" x={x - 5} y={axis + half - 4} text-anchor="end">
        {say('tubeGap')}
      </text>
    </g>
  );
}

/** Where the grip is cut for its section. */
function CuttingLine({ layout }: { layout: RigLayout }) {
  const { along, above: axis, perMeter } = layout;
  const x = along(PLACES.fixedGrip + gripLength / 2);
  const reach = (plateWidth / 2) * perMeter + 5;
  return (
    <g>
      <path class="centre" d={`M${x} ${axis - reach}V${axis + reach}`} />
      <path class="limit" d={`M${x} ${axis - reach}v9M${x} ${axis + reach}v-9`} />
      <text class="halo" x={x - 8} y={axis - reach + 4} text-anchor="end">
        A
      </text>
      <text class="halo" x={x - 8} y={axis + reach + 7} text-anchor="end">
        A
      </text>
    </g>
  );
}

function Numbers({ layout }: { layout: RigLayout }) {
  const { along, above: axis, perMeter, levels } = layout;
  const y = levels.numbersBetween;
  const at = (place: number) => along(place);
  return (
    <g>
      <Numbered part={3} x={at(0.35)} y={y} to={[at(0.35), axis - 0.055 * perMeter]} />
      <Numbered part={1} x={at(0.62)} y={y} to={[at(0.62), axis - 0.004 * perMeter]} />
      <Numbered part={2} x={at(0.8)} y={y} to={[at(0.8), axis - 0.008 * perMeter]} />
      <Numbered part={5} x={at(0.852)} y={y} to={[at(0.852), axis]} />
      <Numbered part={4} x={at(0.91)} y={y} to={[at(0.878), axis - 0.06 * perMeter]} />
    </g>
  );
}

/** The view with its dimensions. */
export function FromAbove({ layout, say }: ViewProps) {
  const { along, above: axis, perMeter, levels, breaks } = layout;
  const half = (plateWidth / 2) * perMeter;
  return (
    <g>
      <Frame layout={layout} />
      <About
        layout={layout}
        axis={axis}
        from={PLACES.strip}
        to={PLACES.movingGrip}
        top={-RIG.width / 2}
        bottom={RIG.width / 2}
      />
      <Grip layout={layout} from={PLACES.fixedGrip} />
      <Grip layout={layout} from={PLACES.movingGrip} />
      <Screw layout={layout} />
      <DialFromAbove layout={layout} />
      {breaks.map((place) => (
        <Break key={place} x={along(place)} from={axis - half} to={axis + half} />
      ))}
      <CuttingLine layout={layout} />
      <Gap layout={layout} say={say} />
      <Dimension
        from={along(0)}
        to={along(PLACES.end)}
        y={levels.frame}
        edge={axis + half}
        text={say('frameLength')}
      />
      <Numbers layout={layout} />
    </g>
  );
}
