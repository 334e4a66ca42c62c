/**
 * The band on the wheel: the same tension all through its thickness, and the bend that adds to it outside and takes from
 * it inside.
 * Units: SI in the state; drawing units are pixels of the viewBox.
 */
import { Sheet } from '../../figures/Sheet.tsx';
import { teller } from '../../figures/teller.ts';
import { formatQuantity } from '../../units/format-quantity.ts';
import { CutOpen } from './bend/CutOpen.tsx';
import { bendLayout } from './bend/layout.ts';
import { TimesRule } from './bend/TimesRule.tsx';
import { WheelAndBand } from './bend/WheelAndBand.tsx';
import { roundTheWheel } from './model.ts';
import type { Figure, State } from './state.ts';

const say = teller(roundTheWheel);

function finding(state: State): string {
  const tension = say(state, 'tension');
  if (state.values.over === 'endless')
    return `Over an endless wheel nothing bends: ${tension} all through the band.`;
  const [bend, times] = [say(state, 'shownBending'), say(state, 'bendTimes', 2)];
  return `The wheel adds ${bend} of bending to ${tension} of tension: ${times} times as much.`;
}

function description(state: State): string {
  const [outer, inner] = [say(state, 'outerStress'), say(state, 'innerStress')];
  const on =
    state.values.over === 'wheel'
      ? `on a wheel of ${say(state, 'wheelDiameter')}`
      : 'over an endless wheel';
  return `A band ${say(state, 'thickness')} thick ${on}, from the side, and the stress through its thickness: ${outer} at the outer face, ${inner} at the inner face.`;
}

function notes({ system, narrow, guess }: State): readonly string[] {
  const { wheel, section } = bendLayout(narrow);
  const times = (perThickness: number) =>
    formatQuantity(perThickness / wheel.perLength, 'ratio', system, { digits: 2 });
  return [
    `thickness drawn × ${times(wheel.perThickness)} on the wheel, × ${times(section.perThickness)} at A`,
    'darker: pulled; lighter: pressed',
    'band at rest',
    ...(guess === undefined ? [] : ['guess and truth: for Ottersleigh, as asked']),
  ];
}

/** What the drawing says beside the wheel. */
function Labels({ state }: { readonly state: State }) {
  const { said } = bendLayout(state.narrow);
  const wheel = state.values.over === 'wheel' ? `wheel ${say(state, 'wheelDiameter')}` : 'no bend';
  const lines = [wheel, `band ${say(state, 'thickness')}`, `pull ${say(state, 'tension')}`];
  const [x, y] = [said.x, said.y];
  return (
    <g>
      {lines.map((line, row) => (
        <text
          key={row}
          class={line === 'no bend' ? undefined : 'hand'}
          x={state.narrow ? x : x + row * 130}
          y={state.narrow ? y + row * 20 : y}
          text-anchor={said.anchor}
        >
          {line}
        </text>
      ))}
    </g>
  );
}

function Drawing(state: State) {
  const layout = bendLayout(state.narrow);
  return (
    <Sheet idPrefix={state.idPrefix} size={layout}>
      <Labels state={state} />
      <WheelAndBand state={state} layout={layout} />
      <CutOpen state={state} layout={layout} />
      <TimesRule state={state} layout={layout} />
    </Sheet>
  );
}

/** The figure of the band on the wheel. */
export const figure: Figure = { finding, description, notes, Drawing };
