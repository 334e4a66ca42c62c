/**
 * The stress that the note of a plucked span tells: it hangs on the span and the mass, not on the section that is pulled.
 * Units: SI only (Pa, m, Hz).
 * Source: core/span; how well span, note and mass are known, own-assumptions.ts.
 */
import { bandSteel, checkHalfWidths } from '../../assumptions.ts';
import { endsShare, type PluckedStrip, stressFromPitch } from '../../span.ts';
import type { InputByBounds } from '../../statistics/uncertain-input.ts';
import {
  anywhereIn,
  rectangular,
  sizeWithin,
  type WorksheetBudget,
  worksheetBudget,
} from '../budget.ts';
import type { Worksheet } from '../inputs.ts';
import { isUsable, knownInputs } from '../known-inputs.ts';
import type { Outcome } from '../outcome.ts';
import { ready, refused, whenReady } from '../outcome.ts';
import { airShare, noteHalfWidth, usualMassRatio } from '../own-assumptions.ts';
import { worksheetSection } from '../predict/section.ts';

/** Notes in Hz that a band on a mill may sound. */
const audible = { low: 11, high: 950 } as const;

/** How many times the tension must outweigh the pull at which the stiffness alone sounds the note. */
const leastPull = 12;

/** Mass over that of the pulled section: by the width over the teeth, or as saw bands have it. */
function massRatioInput({ bodyWidth, widthOverTeeth }: Worksheet['band']): InputByBounds {
  if (!isUsable(bodyWidth) || !isUsable(widthOverTeeth) || widthOverTeeth < bodyWidth)
    return anywhereIn(usualMassRatio);
  const teeth = (widthOverTeeth - bodyWidth) / bodyWidth;
  const { toothFill } = checkHalfWidths;
  const [low, high] = [(0.5 - toothFill) * teeth, (0.5 + toothFill) * teeth];
  return anywhereIn({ low: 1 + low + airShare.low, high: 1 + high + airShare.high });
}

/** Whether a band under tension can sound so: the tension far outweighs its stiffness. */
function isWithinReach(
  strip: Pick<PluckedStrip, 'youngsModulus' | 'thickness' | 'span'>,
  note: number,
  harmonic: number,
): boolean {
  const { youngsModulus, thickness, span } = strip;
  const pull = 4 * bandSteel.density * ((span * note) / harmonic) ** 2;
  const stiffness = ((youngsModulus * thickness ** 2) / 12) * ((harmonic * Math.PI) / span) ** 2;
  return note >= audible.low && note <= audible.high && pull > leastPull * stiffness;
}

type Values = Readonly<Record<'note' | 'span' | 'massRatio' | 'thickness' | 'ends', number>>;

/** The stress; refused (`noteOutOfReach`) where no band under tension sounds so. */
export function worksheetNote(worksheet: Worksheet): Outcome<WorksheetBudget> {
  const { second, band } = worksheet;
  const known = knownInputs({
    note: ['second.note', second.note],
    span: ['second.span', second.span],
    harmonic: ['second.harmonic', second.harmonic],
    youngsModulus: ['band.youngsModulus', band.youngsModulus],
  });
  const section = worksheetSection(worksheet);
  return whenReady(
    { known, section },
    ({ known: { note, span, youngsModulus, ...rest }, section }) => {
      const { thickness, thicknessHalfWidth } = section.operands;
      const harmonic = Math.max(1, Math.round(rest.harmonic));
      if (!isWithinReach({ youngsModulus, thickness, span }, note, harmonic))
        return refused('noteOutOfReach', { note, span }, ['second.note', 'second.span']);
      const strip = { density: bandSteel.density, youngsModulus, ends: second.ends, harmonic };
      const inputs = {
        note: rectangular(note, noteHalfWidth * note),
        span: sizeWithin(span, checkHalfWidths.span),
        massRatio: massRatioInput(band),
        thickness: sizeWithin(thickness, thicknessHalfWidth),
      };
      const stressOf = ({ note: frequency, ends, ...sizes }: Values) =>
        (1 + ends) * stressFromPitch({ ...strip, ...sizes, frequency });
      const stress = stressFromPitch({
        ...strip,
        span,
        thickness,
        massRatio: inputs.massRatio.value,
        frequency: note,
      });
      const ends = rectangular(0, endsShare({ span, thickness, youngsModulus, stress }));
      return ready(worksheetBudget(stressOf, { ...inputs, ends }));
    },
  );
}
