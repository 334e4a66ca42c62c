/**
 * The band seen on its flank, and below it, edges aligned, its section: what carries is hatched, teeth and their set
 * are pale. Both true to scale.
 * Units: SI in the state; drawing units otherwise.
 */

import { Dimension } from '../../figures/dimension.tsx';
import { Handle } from '../../figures/Handle.tsx';
import { Hatch } from '../../figures/Hatch.tsx';
import { teller } from '../../figures/teller.ts';
import { breakWave, firstTip, teethPath } from './band-teeth.ts';
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

/** The piece of band between its two broken ends: back at the left, body hatched, teeth pale. */
function Piece({ state, layout }: PartProps) {
  const { left, top, bottom, perMetre } = layout;
  const { gullet, tip } = edges(state, layout);
  const pitch = TEETH.pitch * perMetre;
  const id = `${state.idPrefix}-piece`;
  const over = pitch / 3; // what the break takes off above
  const teeth = teethPath(gullet, top - over, tip - gullet, pitch, 4);
  const steel = `${teeth}H${left}V${top - over}Z`;
  const wave = (y: number) => breakWave(left, y, tip - left);
  return (
    <g>
      <clipPath id={`${id}-between`}>
        <path d={`${wave(top)}V${bottom}${breakWave(tip, bottom, left - tip, false)}Z`} />
      </clipPath>
      <clipPath id={`${id}-steel`}>
        <path d={steel} />
      </clipPath>
      <g clip-path={`url(#${id}-between)`}>
        <path class="shade-fill" d={steel} />
        <rect
          class="paper-fill"
          x={left}
          y={top - 9}
          width={gullet - left}
          height={bottom - top + 18}
        />
        <Hatch
          id={`${id}-body`}
          x={left}
          y={top - 9}
          width={gullet - left}
          height={bottom - top + 18}
          spacing={state.narrow ? 9 : 12}
        />
        <path class="outline" d={`${teeth}M${left + 1} ${top - over}V${bottom + over}`} />
      </g>
      <path class="outline" clip-path={`url(#${id}-steel)`} d={`${wave(top)}${wave(bottom)}`} />
    </g>
  );
}

function Sizes({ state, layout }: PartProps) {
  const { left, top, bottom, section } = layout;
  const { gullet, tip } = edges(state, layout);
  return (
    <g>
      <path class="centre" d={`M${gullet} ${top - 10}V${bottom + 8}M${gullet} ${section - 8}v26`} />
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
        y={bottom + (state.narrow ? 26 : 32)}
        text={`${state.narrow ? '' : 'body width '}${say(state, 'bodyWidth')}`}
        edge={bottom}
        ink="hand"
        id="bodyWidth"
      />
    </g>
  );
}

/** The flank with its sizes and its two grips. */
export function BandElevation({ state, layout }: PartProps) {
  const { left, top, bottom, perMetre } = layout;
  const { gullet, tip } = edges(state, layout);
  const pitch = TEETH.pitch * perMetre;
  return (
    <g>
      <Piece state={state} layout={layout} />
      <text class="halo" x={left + 10} y={(top + bottom) / 2 - 8}>
        {state.narrow ? 'body' : 'body: this carries'}
      </text>
      <Sizes state={state} layout={layout} />
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
        y={firstTip(top - pitch / 3, pitch)}
        drag="x"
        label="Move the tooth tips"
        perMetre={perMetre}
      />
    </g>
  );
}

/** Words and grip of the section; the grip hangs under the face that it moves. */
function CutWords({ state, layout }: PartProps) {
  const { left, section, perMetre } = layout;
  const { gullet, tip } = edges(state, layout);
  const face = section + state.values.thickness * perMetre;
  const at = gullet - (state.narrow ? 30 : 50);
  return (
    <g>
      <text class="steel halo" x={left} y={section - 9} data-sym="area">
        {state.narrow ? '' : 'load-bearing section '}
        {say(state, 'area')}
      </text>
      <text class="hand halo" x={tip + 14} y={section + 9} data-sym="thickness">
        {state.narrow ? '' : 'thickness '}
        {say(state, 'thickness')}
      </text>
      <path class="hand-line" d={`M${at - 16} ${face}h32M${at} ${face}v16`} />
      <Grip
        state={state}
        name="thickness"
        x={at}
        y={face + 22}
        drag="y"
        label="Move the lower face"
        perMetre={perMetre}
      />
    </g>
  );
}

/** The section, hatched where it carries; the set bends only the teeth. */
export function BandCut(props: PartProps) {
  const { state, layout } = props;
  const { left, section, perMetre } = layout;
  const { gullet, tip } = edges(state, layout);
  const depth = state.values.thickness * perMetre;
  const set = TEETH.set * perMetre;
  const tooth = (shift: number) =>
    `M${gullet} ${section}L${tip} ${section + shift}V${section + depth + shift}L${gullet} ${section + depth}Z`;
  return (
    <g>
      <path class="thin shade-fill" d={tooth(-set) + tooth(set)} />
      <Hatch
        id={`${state.idPrefix}-cut`}
        x={left}
        y={section}
        width={gullet - left}
        height={depth}
        spacing={5}
      />
      <rect
        class="outline"
        x={left}
        y={section}
        width={gullet - left}
        height={depth}
        data-sym="area"
      />
      <CutWords {...props} />
    </g>
  );
}
