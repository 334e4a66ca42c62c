/**
 * From a load on the worksheet's screw or cylinder to the stress it should give, before any reading is looked at.
 * Units: SI only (Pa, N·m).
 * Source: σ = adv·k·e·(x − x₀)/(s·A), derived in pull.ts; spreads of wrench, gauge and section, assumptions.ts.
 */
import { sectionHalfWidths } from '../../assumptions.ts';
import type { UncertainInputs } from '../../statistics/uncertain-input.ts';
import { rectangular } from '../budget.ts';
import type { Worksheet } from '../inputs.ts';
import { isUsable, knownInputs } from '../known-inputs.ts';
import { loadName, scaleHalfWidth } from '../load.ts';
import type { Outcome } from '../outcome.ts';
import { ready, whenReady } from '../outcome.ts';
import { usualGaugeClass, usualGaugeTop } from '../own-assumptions.ts';
import type { WorksheetPath } from '../path.ts';
import {
  type DragTorque,
  mostDragOf,
  type TorqueAtHand,
  torqueAtHand,
  worksheetDrag,
} from '../torque-at-hand.ts';
import type { Assumption } from './assumed.ts';
import { idealPull, loadForStress, type Pull } from './pull.ts';
import type { ScrewModel } from './screw-model.ts';
import { isMeasured, type SectionResult, type StrandsResult } from './section.ts';

/** What lies between a torque and the stress it gives. */
export type ChainOperands = Pull;

/** The chain from torque to stress: its middle values, its uncertain inputs, and the stress of any such values. */
export interface Theory {
  readonly operands: ChainOperands;
  readonly inputsAt: (torque: number) => UncertainInputs<string>;
  readonly stressOf: (values: Readonly<Record<string, number>>) => number;
  readonly assumed: readonly Assumption[];
  readonly dragPath: WorksheetPath; // the box of what moves the empty screw or cylinder
}

/** The chain, once screw, section and strands are known. */
export function worksheetTheory(
  worksheet: Worksheet,
  screwOutcome: Outcome<ScrewModel>,
  section: Outcome<SectionResult>,
  strands: Outcome<StrandsResult>,
): Outcome<Theory> {
  const { advantage } = worksheet.tensioner;
  const lever = knownInputs({ advantage: ['tensioner.advantage', advantage] });
  return whenReady({ screw: screwOutcome, section, strands, lever }, (known) => {
    const { screw, section, strands, lever } = known;
    const { drive, efficiency } = screw;
    const noDrag = { ...lever, efficiency, drive, area: section.area, ...strands };
    const reference = referenceTorque(worksheet, noDrag);
    const drag = worksheetDrag(worksheet, reference);
    return whenReady({ drag }, ({ drag }) => {
      const operands = { ...noDrag, dragTorque: drag.dragTorque };
      const { bodyWidth, thickness, thicknessHalfWidth } = section.operands;
      const inputs: UncertainInputs<string> = {
        ...screw.inputs,
        bodyWidth: rectangular(bodyWidth, sectionHalfWidths.bodyWidth),
        thickness: rectangular(thickness, thicknessHalfWidth),
        dragTorque: drag.input,
      };
      const { tensioner } = worksheet;
      const load = loadName(tensioner);
      return ready<Theory>({
        operands,
        inputsAt: (at) => ({ ...inputs, [load]: rectangular(at, scaleHalfWidth(tensioner, at)) }),
        stressOf: chainStress(operands, screw.efficiencyOf),
        dragPath: drag.path,
        assumed: [
          ...screw.assumed,
          ...gaugeAssumptions(worksheet, reference),
          ...dragAssumptions(drag),
          ...thicknessAssumptions(worksheet.band, section.operands),
        ],
      });
    });
  });
}

/** The torque at hand; without any, that for the target, of which the middle of an unknown drag is a part. */
function referenceTorque(
  worksheet: Worksheet,
  noDrag: Omit<ChainOperands, 'dragTorque'>,
): Outcome<TorqueAtHand> {
  const atHand = torqueAtHand(worksheet);
  const { stress } = worksheet.target;
  if (atHand.ready || atHand.refusal || !isUsable(stress)) return atHand;
  const pulling = loadForStress({ ...noDrag, dragTorque: 0 }, stress);
  return ready({ torque: pulling / (1 - mostDragOf(worksheet.tensioner) / 2) });
}

function dragAssumptions({
  dragTorque,
  isAssumed,
  path,
  onceKnown,
}: DragTorque): readonly Assumption[] {
  const ends = { low: 0, high: 2 * dragTorque };
  return isAssumed ? [{ name: 'dragTorque', path, ...ends, onceKnown }] : [];
}

/** A gauge that is not described may be off by its usual class over a usual scale. */
function gaugeAssumptions(
  { tensioner }: Worksheet,
  reference: Outcome<TorqueAtHand>,
): readonly Assumption[] {
  const { kind, cylinder } = tensioner;
  const isKnown = isUsable(cylinder.gaugeTop) && isUsable(cylinder.gaugeClass);
  if (kind !== 'cylinder' || isKnown || !reference.ready) return [];
  const { torque } = reference;
  const reach = scaleHalfWidth(tensioner, torque);
  const path = isUsable(cylinder.gaugeTop)
    ? 'tensioner.cylinder.gaugeClass'
    : 'tensioner.cylinder.gaugeTop';
  // A gauge that suits: the next finer class, over no more than half as much again.
  const onceKnown = (0.64 * usualGaugeClass * (0.75 * usualGaugeTop) * torque) / Math.sqrt(3);
  return [{ name: 'pressure', path, low: torque - reach, high: torque + reach, onceKnown }];
}

function thicknessAssumptions(
  { thicknessFrom }: Worksheet['band'],
  { thickness, thicknessHalfWidth }: SectionResult['operands'],
): readonly Assumption[] {
  const ends = { low: thickness - thicknessHalfWidth, high: thickness + thicknessHalfWidth };
  const onceKnown = sectionHalfWidths.thickness / Math.sqrt(3);
  const path = 'band.thicknessFrom';
  return isMeasured(thicknessFrom) ? [] : [{ name: 'thickness', path, ...ends, onceKnown }];
}

// Written out rather than called: trials draw drags below 0, which the checked form refuses.
function chainStress(
  operands: ChainOperands,
  efficiencyOf: ScrewModel['efficiencyOf'],
): Theory['stressOf'] {
  const perLoad = idealPull(operands);
  return (values) => {
    const { torque, pressure, dragTorque = 0, bodyWidth = 0, thickness = 0 } = values;
    const load = (torque ?? pressure ?? 0) - dragTorque;
    return (perLoad * efficiencyOf(values) * load) / (bodyWidth * thickness);
  };
}
