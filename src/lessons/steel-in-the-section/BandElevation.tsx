/**
 * The band seen on its flank, and below it, edges aligned, its section: what carries is hatched, teeth and their set
 * are drawn thin. Both true to scale.
 * Units: SI in the state; drawing units otherwise.
 */

import { Dimension } from '../../figures/dimension.tsx';
import { Handle } from '../../figures/Handle.tsx';
import { Hatch } from '../../figures/Hatch.tsx';
import { teller } from '../../figures/teller.ts';
import { breakLine, firstTip, teethPath } from './band-teeth.ts';
import { steelInTheSection, TEETH } from './model.ts';
import type { SectionLayout } from './section-layout.ts';
import type { State } from './state.ts';

interface PartProps {
  readonly state: State;
  readonly layout: SectionLayout;
}

const say = teller(steelInTheSection);

/** The edges that both views share. */
function edges({ values }: State, { left, perMetre }: SectionLayout) {
  const gullet = left + values.bodyWidth * perMetre;
  return { gullet, tip: gullet + values.toothDepth * perMetre };
}

function Grip({
  state,
  name,
  x,
  y,
  drag,
  label,
  perMetre,
}: {
  readonly state: State;
  readonly name: 'bodyWidth' | 'toothDepth' | 'thickness';
  readonly x: number;
  readonly y: number;
  readonly drag: 'x' | 'y';
  readonly label: string;
  readonly perMetre: number;
}) {
  return (
    <Handle
      model={steelInTheSection}
      state={state}
      x={x}
      y={y}
      input={name}
      label={label}
      drag={drag}
      perUnit={1 / perMetre}
    />
  );
}

/** The flank: back at the left, teeth at the right, the ends broken off. */
export function BandElevation({ state, layout }: PartProps) {
  const { left, top, bottom, perMetre } = layout;
  const { gullet, tip } = edges(state, layout);
  const pitch = TEETH.pitch * perMetre;
  const start = top - pitch / 3;
  const clip = `${state.idPrefix}-window`;
  return (
    <g>
      <clipPath id={clip}>
        <rect x={left - 4} y={top} width={tip - left + 8} height={bottom - top} />
      </clipPath>
      <path class="outline" d={`M${left} ${top}V${bottom}`} />
      <path
        class="outline"
        clip-path={`url(#${clip})`}
        d={teethPath(gullet, start, tip - gullet, pitch, 3)}
      />
      <path class="thin" d={breakLine(left, top, gullet - left)} />
      <path class="thin" d={breakLine(left, bottom, gullet - left)} />
      <path class="centre" d={`M${gullet} ${top - 12}V${layout.section + 30}`} />
      <text class="note halo" x={left + 10} y={(top + bottom) / 2 - 8}>
        {state.narrow ? 'body' : 'body: this carries'}
      </text>
      <Dimension
        from={left}
        to={tip}
        y={top - 16}
        text={`${state.narrow ? '' : 'over the teeth '}${say(state, 'widthOverTeeth')}`}
        edge={top}
        id="widthOverTeeth"
      />
      <Dimension
        from={left}
        to={gullet}
        y={bottom + (state.narrow ? 24 : 30)}
        text={`${state.narrow ? '' : 'body width '}${say(state, 'bodyWidth')}`}
        edge={bottom}
        ink="hand"
        id="bodyWidth"
      />
      <Grip
        state={state}
        name="bodyWidth"
        x={gullet}
        y={bottom - (state.narrow ? 24 : 40)}
        drag="x"
        label="Move the gullet line"
        perMetre={perMetre}
      />
      <Grip
        state={state}
        name="toothDepth"
        x={tip}
        y={firstTip(start, pitch)}
        drag="x"
        label="Move the tooth tips"
        perMetre={perMetre}
      />
    </g>
  );
}

/** The section, hatched where it carries; the set bends only the teeth. */
export function BandCut({ state, layout }: PartProps) {
  const { left, section, perMetre } = layout;
  const { gullet, tip } = edges(state, layout);
  const depth = state.values.thickness * perMetre;
  const set = TEETH.set * perMetre;
  const tooth = (shift: number) =>
    `M${gullet} ${section}L${tip} ${section + shift}V${section + depth + shift}L${gullet} ${section + depth}Z`;
  return (
    <g>
      <path class="thin" d={tooth(-set) + tooth(set)} />
      <Hatch
        id={`${state.idPrefix}-cut`}
        x={left}
        y={section}
        width={gullet - left}
        height={depth}
      />
      <rect
        class="outline"
        x={left}
        y={section}
        width={gullet - left}
        height={depth}
        data-sym="area"
      />
      <text
        class="steel halo"
        x={left}
        y={section + depth + (state.narrow ? 24 : 28)}
        data-sym="area"
      >
        {state.narrow ? '' : 'section that carries '}
        {say(state, 'area')}
      </text>
      <text class="hand halo" x={tip + 12} y={section + depth / 2 + 5} data-sym="thickness">
        {state.narrow ? '' : 'thickness '}
        {say(state, 'thickness')}
      </text>
      <Grip
        state={state}
        name="thickness"
        x={gullet - (state.narrow ? 30 : 50)}
        y={section + depth}
        drag="y"
        label="Move the lower face"
        perMetre={perMetre}
      />
    </g>
  );
}
