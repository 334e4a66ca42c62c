/**
 * The stress that a sideways push tells: the middle of the span yields the less, the tighter the band.
 * Units: SI only (Pa, N, m).
 * Source: core/span; how well pull and move are read, own-assumptions.ts.
 */
import { checkHalfWidths, sectionHalfWidths } from '../../assumptions.ts';
import { loopLength } from '../../loop/geometry.ts';
import { flatBendingStiffness } from '../../span/beam-under-tension.ts';
import { tensionFromPress } from '../../span.ts';
import { rectangular, sizeWithin, type WorksheetBudget, worksheetBudget } from '../budget.ts';
import type { Worksheet } from '../inputs.ts';
import { knownInputs } from '../known-inputs.ts';
import type { Outcome } from '../outcome.ts';
import { ready, refused, whenReady } from '../outcome.ts';
import { secondWheel, worksheetSection } from '../predict/section.ts';

/** How many times the push must be what a band without tension would take. */
const leastPush = 2;

/** The loop that the push stretches; Infinity, as if nothing stretched, where the wheels are not known. */
function loopOf({ mill, band }: Worksheet): number {
  const known = knownInputs({
    wheelDiameter1: ['mill.wheelDiameter1', mill.wheelDiameter1],
    wheelDiameter2: secondWheel(mill),
    centreDistance: ['mill.centreDistance', mill.centreDistance],
    thickness: ['band.thickness', band.thickness],
  });
  if (!known.ready) return Number.MAX_VALUE;
  const fits = known.centreDistance > (known.wheelDiameter1 + known.wheelDiameter2) / 2;
  return fits ? loopLength(known) : Number.MAX_VALUE;
}

type Values = Readonly<Record<'force' | 'deflection' | 'span' | 'bodyWidth' | 'thickness', number>>;

/** The push that a clamped span without tension would take at most, N. */
function slackPush(values: Values, youngsModulus: number, effectiveLength: number): number {
  const { deflection, span, bodyWidth: width, thickness } = values;
  const bending = flatBendingStiffness({ youngsModulus, width, thickness });
  const stretch = (8 * youngsModulus * width * thickness) / (span ** 2 * effectiveLength);
  return (192 * bending * deflection) / span ** 3 + stretch * deflection ** 3;
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
    const values = { ...pressed, bodyWidth, thickness };
    if (force < leastPush * slackPush(values, youngsModulus, effectiveLength))
      return refused('pressTooSoft', { force, deflection }, ['second.force', 'second.deflection']);
    const inputs = {
      force: rectangular(force, checkHalfWidths.weight * force),
      deflection: sizeWithin(deflection, checkHalfWidths.deflection),
      span: sizeWithin(span, checkHalfWidths.span),
      bodyWidth: sizeWithin(bodyWidth, sectionHalfWidths.bodyWidth),
      thickness: sizeWithin(thickness, thicknessHalfWidth),
    };
    const stressOf = ({ bodyWidth: width, thickness, ...push }: Values) =>
      tensionFromPress({
        ...push,
        ends: second.ends,
        effectiveLength,
        axialStiffness: youngsModulus * width * thickness,
        bendingStiffness: flatBendingStiffness({ youngsModulus, width, thickness }),
      }) /
      (width * thickness);
    return ready(worksheetBudget(stressOf, inputs));
  });
}
