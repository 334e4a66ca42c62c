/**
 * The stress that a sideways push tells: the middle of the span yields the less, the tighter the band.
 * Units: SI only (Pa, N, m).
 * Source: core/span; how well pull and move are read, own-assumptions.ts.
 */
import { checkHalfWidths, sectionHalfWidths } from '../../assumptions.ts';
import { loopLength } from '../../loop/geometry.ts';
import { type PressedSpan, stretchStiffness } from '../../span/press.ts';
import { flatBendingStiffness, tensionFromPress } from '../../span.ts';
import { rectangular, sizeWithin, type WorksheetBudget, worksheetBudget } from '../budget.ts';
import type { FreeSpanEnds, Worksheet } from '../inputs.ts';
import { isUsable, knownInputs } from '../known-inputs.ts';
import type { Outcome } from '../outcome.ts';
import { ready, refused, whenReady } from '../outcome.ts';
import { secondWheel, worksheetSection } from '../predict/section.ts';

/** How many times the push must be what a band without tension would take. */
const leastPush = 2;

/** The loop or the strip that the push stretches; undefined where it is not known. */
function loopOf({ mill, band }: Worksheet): number | undefined {
  if (mill.strands === 'one') return isUsable(mill.stripLength) ? mill.stripLength : undefined;
  const known = knownInputs({
    wheelDiameter1: ['mill.wheelDiameter1', mill.wheelDiameter1],
    wheelDiameter2: secondWheel(mill),
    centreDistance: ['mill.centreDistance', mill.centreDistance],
    thickness: ['band.thickness', band.thickness],
  });
  if (!known.ready) return undefined;
  const fits = known.centreDistance > (known.wheelDiameter1 + known.wheelDiameter2) / 2;
  return fits ? loopLength(known) : undefined;
}

interface Held {
  readonly ends: FreeSpanEnds;
  readonly youngsModulus: number; // Pa
  readonly effectiveLength: number | undefined; // m
}

type Values = Readonly<Record<'force' | 'deflection' | 'span' | 'bodyWidth' | 'thickness', number>>;

/** The span as it is pressed; its stretch counts where the loop is known. */
const pressedSpan = (
  { span, bodyWidth: width, thickness }: Omit<Values, 'force' | 'deflection'>,
  { ends, youngsModulus, effectiveLength }: Held,
): PressedSpan => ({
  span,
  ends,
  bendingStiffness: flatBendingStiffness({ youngsModulus, width, thickness }),
  ...(effectiveLength !== undefined && {
    effectiveLength,
    axialStiffness: youngsModulus * width * thickness,
  }),
});

/** The push that a clamped span without tension would take at most, N. */
function slackPush({ deflection, ...sizes }: Values, held: Held): number {
  const pressed = pressedSpan(sizes, held);
  const bending = (192 * pressed.bendingStiffness) / pressed.span ** 3;
  return bending * deflection + stretchStiffness(pressed) * deflection ** 3;
}

/** The stress; refused (`pressTooSoft`) where a slack band would take that push too. */
export function worksheetPress(worksheet: Worksheet): Outcome<WorksheetBudget> {
  const { second, band } = worksheet;
  const known = knownInputs({
    force: ['second.force', second.force],
    deflection: ['second.deflection', second.deflection],
    span: ['second.span', second.span],
    youngsModulus: ['band.youngsModulus', band.youngsModulus],
  });
  const section = worksheetSection(worksheet);
  const effectiveLength = loopOf(worksheet);
  return whenReady({ known, section }, ({ known: { youngsModulus, ...pressed }, section }) => {
    const { force, deflection, span } = pressed;
    const { bodyWidth, thickness, thicknessHalfWidth } = section.operands;
    const held = { ends: second.ends, youngsModulus, effectiveLength };
    if (force < leastPush * slackPush({ ...pressed, bodyWidth, thickness }, held))
      return refused('pressTooSoft', { force, deflection }, ['second.force', 'second.deflection']);
    const inputs = {
      force: rectangular(force, checkHalfWidths.weight * force),
      deflection: sizeWithin(deflection, checkHalfWidths.deflection),
      span: sizeWithin(span, checkHalfWidths.span),
      bodyWidth: sizeWithin(bodyWidth, sectionHalfWidths.bodyWidth),
      thickness: sizeWithin(thickness, thicknessHalfWidth),
    };
    const stressOf = ({ force, deflection, ...sizes }: Values) =>
      tensionFromPress({ ...pressedSpan(sizes, held), force, deflection }) /
      (sizes.bodyWidth * sizes.thickness);
    return ready(worksheetBudget(stressOf, inputs));
  });
}
