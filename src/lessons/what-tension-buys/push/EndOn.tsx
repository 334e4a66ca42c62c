/**
 * The band's section at mid-span, seen along the band, true to scale: where it is at rest, and where the push has carried
 * and tilted it; beside it bow and twist, one on the other. The teeth point to the board.
 * Units: SI in the rows; drawing units otherwise.
 */
import { OTTERSLEIGH } from '../../../models/mills/ottersleigh.ts';
import { Push } from './FromTheFront.tsx';
import type { PushLayout } from './layout.ts';
import { STRIP } from './pushed-span.ts';
import type { Row } from './rows.ts';

const LEAST_THICK = 3; // drawing units: thinner, body and tooth would not show

/** Where the tip of the teeth is across the drawing, at rest. */
export const tipOf = ({ section, perMovement }: PushLayout): number =>
  section + STRIP.toothOffset * perMovement;

/** The outline of body and tooth about the middle of the body. */
function outline({ perMovement }: PushLayout): string {
  const half = (STRIP.width / 2) * perMovement;
  const tip = STRIP.toothOffset * perMovement;
  const thick = Math.max(LEAST_THICK, OTTERSLEIGH.thickness * perMovement) / 2;
  return `M${-half} ${-thick}H${half}L${tip} 0L${half} ${thick}H${-half}Z`;
}

/** Bow and twist one on the other, each on the level that it has in the section. */
function Parts({ row, layout, rest }: EndOnProps) {
  const { section, perMovement, column } = layout;
  const { left, width } = column;
  const [bow, teeth] = [rest - row.wide.bow * perMovement, rest - row.wide.teeth * perMovement];
  return (
    <g>
      <path class="construction" d={`M${section} ${bow}H${left}`} />
      <rect class="steel-wash" x={left} y={bow} width={width} height={rest - bow} />
      <rect class="steel-fill" x={left} y={teeth} width={width} height={bow - teeth} />
      <rect class="thin" x={left} y={teeth} width={width} height={rest - teeth} />
    </g>
  );
}

interface EndOnProps {
  readonly row: Row;
  readonly layout: PushLayout;
  readonly rest: number;
}

/** One section. */
export function EndOn({ row, layout, rest }: EndOnProps) {
  const { section, perMovement, tail } = layout;
  const { bow, teeth, tilt } = row.wide;
  const shape = outline(layout);
  const degrees = (-tilt * 180) / Math.PI;
  return (
    <g>
      <path class="construction" d={shape} transform={`translate(${section} ${rest})`} />
      <g transform={`translate(${section} ${rest - bow * perMovement}) rotate(${degrees})`}>
        <path class="steel-fill" d={shape} />
      </g>
      <Parts row={row} layout={layout} rest={rest} />
      <Push x={tipOf(layout)} tip={rest - teeth * perMovement} tail={rest + tail} />
    </g>
  );
}
