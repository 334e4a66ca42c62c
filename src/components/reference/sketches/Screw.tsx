/** The tensioner's screw through its plate, cut open: handle and head, collar between head and plate, the load's pull. Drawing units. */
import { CutPlate } from '../../../figures/CutPlate.tsx';
import { ArrowHead } from '../../../figures/dimension.tsx';
import { ForceArrow } from '../../../figures/ForceArrow.tsx';
import { Name } from './kit/Name.tsx';
import { Upright } from './kit/Size.tsx';
import type { SketchProps } from './kit/sheet.ts';

const AXIS = 62;

/** Screw, plate, collar, head, handle. */
export function Screw({ sheet }: SketchProps<'screw'>) {
  const thread = Array.from({ length: 10 }, (_, turn) => `M${44 + turn * 7} 70l5-16`).join('');
  const isPulled = sheet.has('thrust');
  return (
    <g>
      <path class="centre" d={`M4 ${AXIS}H176`} />
      <rect class="outline paper-fill" x="40" y="54" width="104" height="16" />
      <path class="thin" d={thread} />
      <CutPlate id={sheet.id} x={114} axis={AXIS} width={14} hole={9} height={26} />
      <rect class="outline paper-fill" x="136" y="44" width="12" height="36" />
      {[42, 70].map((y) => (
        <rect
          key={y}
          class={`${sheet.has('collar') ? 'limit' : 'outline'} paper-fill`}
          x="128"
          y={y}
          width="8"
          height="12"
        />
      ))}
      <rect
        class={`${sheet.has('torque') ? 'hand-line hand-wash' : 'construction paper-fill'}`}
        x="148"
        y="14"
        width="8"
        height="96"
      />
      {sheet.has('torque') && (
        <>
          <path class="hand-line" d="M164 30C180 34 184 56 178 80" />
          <ArrowHead x={174} y={90} angle={110} ink="hand" />
        </>
      )}
      <Name sheet={sheet} part="torque" words="torque" x={164} y={22} />
      {isPulled && <ForceArrow x={38} y={AXIS} length={-30} ink="ink" />}
      <Name sheet={sheet} part="thrust" words="thrust" x={6} y={50} />
      <Name
        sheet={sheet}
        part="collar"
        words="collar"
        x={92}
        y={20}
        anchor="end"
        leader="M95 18L130 44"
      />
      <Upright sheet={sheet} part="collar-diameter" words="" from={48} to={76} edge={132} x={192} />
      <Upright
        sheet={sheet}
        part="pitch-diameter"
        words=""
        from={55}
        to={69}
        x={62}
        named="above"
      />
    </g>
  );
}
