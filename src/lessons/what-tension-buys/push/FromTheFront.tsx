/**
 * The band between its guides, seen from the side of the teeth: bowed by the push, and open like a lens where it twists,
 * its toothed edge above its back. Dashed, the toothed edge with the guides half as far apart. Lengths true to scale, the
 * movement drawn larger.
 * Units: SI in the rows; drawing units otherwise.
 */
import { ArrowHead } from '../../../figures/dimension.tsx';
import type { PushLayout } from './layout.ts';
import { CLOSER, STRIP } from './pushed-span.ts';
import type { Row } from './rows.ts';

const BEYOND = 12; // drawing units of band beyond a guide
const HEAD = 3; // from the arrow to what it pushes

/** A push upwards, its tip at the teeth. */
export function Push({
  x,
  tip,
  tail,
}: {
  readonly x: number;
  readonly tip: number;
  readonly tail: number;
}) {
  return (
    <g data-sym="push">
      <path class="outline" d={`M${x} ${tail}V${tip + HEAD + 6}`} />
      <ArrowHead x={x} y={tip + HEAD} angle={-90} />
    </g>
  );
}

/** A roller on either side of the band. */
function Guide({
  x,
  y,
  roller,
}: {
  readonly x: number;
  readonly y: number;
  readonly roller: number;
}) {
  return (
    <g>
      {[-1, 1].map((side) => (
        <circle key={side} class="thin paper-fill" cx={x} cy={y + side * (roller + 1)} r={roller} />
      ))}
    </g>
  );
}

interface FromTheFrontProps {
  readonly row: Row;
  readonly layout: PushLayout;
  /** The level of the band at rest. */
  readonly rest: number;
}

/** One span. */
export function FromTheFront({ row, layout, rest }: FromTheFrontProps) {
  const { middle, perLength, perMovement, roller, tail } = layout;
  const half = (row.span * perLength) / 2;
  const [left, right] = [middle - half, middle + half];
  const teeth = rest - row.wide.teeth * perMovement;
  const back = rest - (row.wide.bow - (STRIP.width / 2) * row.wide.tilt) * perMovement;
  const closer = rest - row.close.teeth * perMovement;
  return (
    <g>
      <path
        class="steel-wash"
        d={`M${left} ${rest}L${middle} ${teeth}L${right} ${rest}L${middle} ${back}Z`}
      />
      <path class="steel-thin" d={`M${left} ${rest}L${middle} ${back}L${right} ${rest}`} />
      <path
        class="hidden-edge"
        d={`M${middle - CLOSER * half} ${rest}L${middle} ${closer}L${middle + CLOSER * half} ${rest}`}
      />
      <path
        class="steel-line"
        d={`M${left - BEYOND} ${rest}H${left}L${middle} ${teeth}L${right} ${rest}H${right + BEYOND}`}
      />
      <Guide x={left} y={rest} roller={roller} />
      <Guide x={right} y={rest} roller={roller} />
      <Push x={middle} tip={teeth} tail={rest + tail} />
    </g>
  );
}
