/**
 * The site's one idea in a drawing: the reader turns the handle of one invented mill, and screw, wheel, strands, steel
 * and dial answer.
 * Units: SI in the state; drawing units are pixels of the viewBox.
 */

import { workingStress } from '../../core/assumptions.ts';
import type { FigureModule, FigureState } from '../../figures/figure.ts';
import { BandSection } from '../../figures/mill/BandSection.tsx';
import { type Callout, Callouts, Pull } from '../../figures/mill/Callouts.tsx';
import { EndHandle, EndHandleWords } from '../../figures/mill/EndHandle.tsx';
import { Gauge } from '../../figures/mill/Gauge.tsx';
import { Log, Loop } from '../../figures/mill/Loop.tsx';
import { type MillLayout, millLayout, wheelAt } from '../../figures/mill/layout.ts';
import { StressScale } from '../../figures/mill/StressScale.tsx';
import { type Stage, stagePlaces } from '../../figures/mill/stage-places.ts';
import { Tensioner } from '../../figures/mill/Tensioner.tsx';
import { Sheet } from '../../figures/Sheet.tsx';
import { teller } from '../../figures/teller.ts';
import { OTTERSLEIGH } from '../../models/mills/ottersleigh.ts';
import { titleDigits, titleInk, titleMill } from '../../models/mills/title-mill.ts';
import { formatRange } from '../../units/format-quantity.ts';

type State = FigureState<typeof titleMill>;

const tell = teller(titleMill);
const say = (state: State, name: Parameters<typeof titleDigits>[0]) =>
  tell(state, name, titleDigits(name));

function finding(state: State): string {
  if (state.values.stress > workingStress.high)
    return `${say(state, 'torque')} puts about ${say(state, 'stress')} into the steel. That is more than small mills use.`;
  return `${say(state, 'torque')} puts about ${say(state, 'stress')} into the steel. A dial should move ${say(state, 'stretch')}.`;
}

function description(state: State): string {
  return `A band runs round two wheels on a beam. A screw with a handle pulls the right wheel outwards; each of the two strands pulls back with ${say(state, 'strandForce')}. A dial on a bar is clamped to the upper strand. A bar shows the stress, and under it the range in use on small mills.`;
}

function notes({ values, system, narrow }: State): readonly string[] {
  const { low, high } = OTTERSLEIGH.threadFriction;
  const range = formatRange(values.stressLow, values.stressHigh, 'stress', system);
  return [
    `an invented mill, ${OTTERSLEIGH.place}; loop to scale, screw, handle, dial and section larger`,
    `the wheel’s movement is drawn × ${millLayout(narrow).times}, the frame’s give is not drawn`,
    `the thread’s friction is only estimated, as ${low} to ${high}: so the stress is ${range}`,
    'usual stress: common practice, no source',
  ];
}

/** The sheet around the mill: its size, where the band's section and the scale of stress stand. */
const sheetOf = (narrow: boolean) =>
  narrow
    ? { width: 360, height: 268, section: undefined, stress: { left: 10, top: 216, width: 214 } }
    : {
        width: 880,
        height: 346,
        section: { left: 24, y: 296, scale: 4600 },
        stress: { left: 440, top: 298, width: 400 },
      };

/** What a wide sheet and a phone write behind the numerals; some stages have the numeral alone there. */
const WIDE_WORDS: Readonly<Partial<Record<Stage, string>>> = {
  torque: '',
  thrust: ' in the screw',
  wheelForce: '',
  strandForce: ' in each strand',
  stress: ' in the steel',
  stretch: ' on the dial',
};
const NARROW_WORDS: typeof WIDE_WORDS = { torque: '', stress: ' in the steel', stretch: '' };
const STAGES = Object.keys(WIDE_WORDS) as readonly Stage[];

function callouts(state: State, layout: MillLayout, wheel: number): readonly Callout[] {
  const { narrow } = layout;
  const { left, top } = sheetOf(narrow).stress;
  const stress = { x: left, y: top - (narrow ? 8 : 9), anchor: 'start' } as const;
  const places = { ...stagePlaces(layout, wheel), stress };
  return STAGES.map((stage) => {
    const words = (narrow ? NARROW_WORDS : WIDE_WORDS)[stage];
    const text = words === undefined ? undefined : say(state, stage) + words;
    return { stage, ink: titleInk(stage), place: places[stage], words: text };
  });
}

function Drawing(state: State) {
  const { values, idPrefix, system, narrow } = state;
  const [layout, sheet] = [millLayout(narrow), sheetOf(narrow)];
  const wheel = wheelAt(layout, values.wheelTravel);
  const { turns, torque, strandForce } = values;
  return (
    <Sheet idPrefix={idPrefix} size={sheet}>
      <Log layout={layout} />
      <Loop layout={layout} wheel={wheel} />
      <Tensioner layout={layout} id={`${idPrefix}-plate`} wheel={wheel} turns={turns} />
      <Gauge layout={layout} system={system} reading={values.stretch} />
      {sheet.section && (
        <BandSection place={sheet.section} system={system} id={`${idPrefix}-section`} />
      )}
      <StressScale place={sheet.stress} stress={values.stress} system={system} />
      <Pull layout={layout} wheel={wheel} strandForce={strandForce} />
      <Callouts layout={layout} callouts={callouts(state, layout, wheel)} />
      <EndHandleWords {...layout} />
      <EndHandle
        model={titleMill}
        state={state}
        input="torque"
        perTurn={values.torquePerTurn}
        layout={layout}
        turns={turns}
        torque={torque}
      />
    </Sheet>
  );
}

/** The drawing of the home page. */
export const figure: FigureModule<typeof titleMill> = { finding, description, notes, Drawing };
