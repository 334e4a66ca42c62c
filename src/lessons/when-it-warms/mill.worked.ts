/**
 * The mill at Ottersleigh as warmth finds it: its sizes, how stiff its band is at the wheel, and how stiff what holds that
 * wheel is under three tensioners; what oil shut in at Dunmarrow does; what a bar feigns.
 * Units: SI.
 * Source: the mills are invented; stiffnesses: core/loop and core/turns; oil: core/loop/hydraulic; bars: core/drift.
 */
import { bandSteel, hydraulicOil, thermalExpansion } from '../../core/assumptions.ts';
import { apparentStressThermal } from '../../core/drift.ts';
import { bandStiffness, loopLengthEqual, oilGrowth, oilStiffness } from '../../core/loop.ts';
import { sectionArea, strandForceAtWheel, strandStress } from '../../core/section.ts';
import { seriesStiffness } from '../../core/turns.ts';
import { bandArea, OTTERSLEIGH } from '../../models/mills/ottersleigh.ts';

const { youngsModulus } = bandSteel;
const { centreDistance, wheelDiameter, frameStiffness, targetStress } = OTTERSLEIGH;
const SPRING = 0.5e6; // N/m, lent to Ottersleigh
const loopLength = loopLengthEqual(OTTERSLEIGH);

/** The mill. */
export const mill = {
  area: bandArea,
  setting: targetStress,
  loopLength,
  centreDistance,
  wheelDiameter,
  bandStiffness: bandStiffness({ youngsModulus, area: bandArea }, loopLength),
  frameStiffness,
  springStiffness: SPRING,
  youngsModulus,
  expansion: thermalExpansion.steel,
} as const;

/** What holds the movable wheel: the frame alone, a spring in it, oil at constant pressure. */
export const support = {
  screw: frameStiffness,
  spring: seriesStiffness([frameStiffness, SPRING]),
  oil: 0,
} as const;

/** The hydraulic mill at Dunmarrow; how long its column of oil is, is assumed. */
export const dunmarrow = {
  frameStiffness: 12e6,
  wheelDiameter: 0.76,
  centreDistance: 1.9,
  bodyWidth: 0.042,
  thickness: 0.00125,
  bore: 0.04,
} as const;
const COLUMN = 0.06; // m
const OIL_WARMING = 10; // K

/** How stiff the oil at Dunmarrow is behind its valve, and the stress that it adds as it warms. */
function shutIn() {
  const oil = { ...hydraulicOil, column: COLUMN };
  const area = sectionArea({ width: dunmarrow.bodyWidth, thickness: dunmarrow.thickness });
  const band = bandStiffness({ youngsModulus, area }, loopLengthEqual(dunmarrow));
  const stiff = oilStiffness(dunmarrow, oil);
  const force =
    oilGrowth(oil, OIL_WARMING) * seriesStiffness([band, stiff, dunmarrow.frameStiffness]);
  return {
    oilColumn: COLUMN,
    oilBore: dunmarrow.bore,
    oilWarming: OIL_WARMING,
    oilStiffness: stiff,
    oilFrame: dunmarrow.frameStiffness,
    oilPush: oilGrowth(oil, OIL_WARMING),
    oilStress: strandStress(strandForceAtWheel(force), area),
  };
}

const BAR_WARMING = 3; // K

/** What the dial feigns if band and bar have both warmed a little. */
const feigned = (expansion: number) =>
  apparentStressThermal({
    youngsModulus,
    band: { expansion: thermalExpansion.steel, temperatureChange: BAR_WARMING },
    bar: { expansion, temperatureChange: BAR_WARMING },
  });

/** Numbers of the text that nothing changes, by the names of the model's outputs. */
export const asides = {
  ...shutIn(),
  barWarming: BAR_WARMING,
  steelBar: feigned(thermalExpansion.steel),
  aluminiumBar: feigned(thermalExpansion.aluminium),
  woodenBar: feigned(thermalExpansion.wood),
} as const;
