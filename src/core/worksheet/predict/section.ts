/**
 * The section of the worksheet's band, and the angle its strands lie at.
 * Units: SI only (m, m², rad).
 * Source: definition; how well the two sizes are measured, assumptions.ts; scatter and resolution joined, JCGM
 * 100:2008 (GUM) 5.1.2, from memory.
 */

import { sectionHalfWidths } from '../../assumptions.ts';
import { strandHalfAngle } from '../../loop/geometry.ts';
import { sectionArea } from '../../section.ts';
import type { InputValue, ThicknessFrom, Worksheet, WorksheetBand } from '../inputs.ts';
import type { WantedInput } from '../known-inputs.ts';
import { isUsable, knownInputs } from '../known-inputs.ts';
import type { Outcome } from '../outcome.ts';
import { ready, refused, whenReady } from '../outcome.ts';
import { caliperThickness, labelThickness } from '../own-assumptions.ts';

/** The steel of one strand that is pulled. */
export interface SectionResult {
  readonly area: number; // m²
  readonly operands: {
    readonly bodyWidth: number; // m
    readonly thickness: number; // m
    readonly thicknessHalfWidth: number; // m
  };
}

/** How many strands share the pull, and how far each leans from the line between the wheels' centres. */
export interface StrandsResult {
  readonly strandCount: 1 | 2; // 1: a single strip, no wheels
  readonly strandHalfAngle: number; // rad, 0 for equal wheels
}

const TOOLS = { micrometer: sectionHalfWidths.thickness, caliper: caliperThickness } as const;

/** Whether a thickness was measured, with either tool. */
export const isMeasured = (from: ThicknessFrom): from is keyof typeof TOOLS =>
  Object.hasOwn(TOOLS, from);

/** Half-width of a thickness, m: of the tool or the label, and of as wide a range as the scatter of repeated readings comes to. */
function thicknessHalfWidth(thickness: number, from: ThicknessFrom, scatter: InputValue): number {
  const ofTool = isMeasured(from) ? TOOLS[from] : labelThickness * thickness;
  return Math.hypot(ofTool, Math.sqrt(3) * (isUsable(scatter) ? scatter : 0));
}

/** Section w·t of a band, measured or other. */
export function worksheetBody(
  name: 'band' | `bands.${number}`,
  band: Pick<WorksheetBand, 'bodyWidth' | 'thickness' | 'thicknessScatter'>,
  thicknessFrom: ThicknessFrom,
): Outcome<SectionResult> {
  const body = knownInputs({
    bodyWidth: [`${name}.bodyWidth`, band.bodyWidth],
    thickness: [`${name}.thickness`, band.thickness],
  });
  return whenReady({ body }, ({ body: { bodyWidth, thickness } }) => {
    const area = sectionArea({ width: bodyWidth, thickness });
    const halfWidth = thicknessHalfWidth(thickness, thicknessFrom, band.thicknessScatter);
    return ready({ area, operands: { bodyWidth, thickness, thicknessHalfWidth: halfWidth } });
  });
}

/** Section of the worksheet's band; refused (`bodyWiderThanBand`) where it is wider than over its teeth. */
export function worksheetSection({ band }: Worksheet): Outcome<SectionResult> {
  const body = worksheetBody('band', band, band.thicknessFrom);
  if (band.widthOverTeeth === undefined) return body;
  const teeth = knownInputs({ widthOverTeeth: ['band.widthOverTeeth', band.widthOverTeeth] });
  return whenReady({ body, teeth }, ({ body, teeth: { widthOverTeeth } }) => {
    const { bodyWidth } = body.operands;
    if (bodyWidth > widthOverTeeth)
      return refused('bodyWiderThanBand', { bodyWidth, widthOverTeeth }, [
        'band.bodyWidth',
        'band.widthOverTeeth',
      ]);
    return ready(body);
  });
}

/** Relative standard uncertainty of a section w·t, no unit, from the half-widths of its two sizes. */
export function areaDoubt(operands: SectionResult['operands']): number {
  const { bodyWidth, thickness } = operands;
  const [width, depth] = [
    sectionHalfWidths.bodyWidth / bodyWidth,
    operands.thicknessHalfWidth / thickness,
  ];
  return Math.hypot(width, depth) / Math.sqrt(3);
}

/** The second wheel's diameter; left empty it is like the first, which is then waited for. */
export function secondWheel({ wheelDiameter1, wheelDiameter2 }: Worksheet['mill']): WantedInput {
  return wheelDiameter2 === undefined
    ? ['mill.wheelDiameter1', wheelDiameter1]
    : ['mill.wheelDiameter2', wheelDiameter2];
}

/** Whether both wheels are of one size, as they are where the second is left empty: strands do not lean then, however far apart the wheels. */
const areAlike = ({ wheelDiameter1, wheelDiameter2 }: Worksheet['mill']): boolean =>
  wheelDiameter2 === undefined || wheelDiameter2 === wheelDiameter1;

/**
 * Lean of the strands: none between wheels that are alike, also while nobody knows how far apart they are;
 * refused (`wheelsOverlap`) where the wheels cannot fit.
 */
export function worksheetStrands({ mill }: Worksheet): Outcome<StrandsResult> {
  if (mill.strands === 'one') return ready({ strandCount: 1, strandHalfAngle: 0 });
  const wheels = knownInputs({
    wheelDiameter1: ['mill.wheelDiameter1', mill.wheelDiameter1],
    wheelDiameter2: secondWheel(mill),
    centreDistance: ['mill.centreDistance', mill.centreDistance],
  });
  if (!wheels.ready && areAlike(mill)) return ready({ strandCount: 2, strandHalfAngle: 0 });
  return whenReady<{ wheels: typeof wheels }, StrandsResult>({ wheels }, ({ wheels: found }) => {
    const { wheelDiameter1, wheelDiameter2, centreDistance } = found;
    const sizes = { wheelDiameter1, wheelDiameter2, centreDistance };
    if ((wheelDiameter1 + wheelDiameter2) / 2 >= centreDistance)
      return refused('wheelsOverlap', sizes, [
        'mill.wheelDiameter1',
        'mill.wheelDiameter2',
        'mill.centreDistance',
      ]);
    return ready({ strandCount: 2, strandHalfAngle: strandHalfAngle(sizes) });
  });
}
