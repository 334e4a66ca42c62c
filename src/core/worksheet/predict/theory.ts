/**
 * From a torque on the worksheet's screw to the stress it should give, before any reading is looked at.
 * Units: SI only (Pa, N·m).
 * Source: σ = adv·π·e·(M − M_d)/(l·A·cos β), derived here; spreads of wrench and section, assumptions.ts.
 */
import { sectionHalfWidths } from '../../assumptions.ts';
import { torqueForStress } from '../../screw/tensioner.ts';
import type { UncertainInputs } from '../../statistics/uncertain-input.ts';
import { rectangular } from '../budget.ts';
import type { Worksheet } from '../inputs.ts';
import { isUsable, knownInputs } from '../known-inputs.ts';
import type { Outcome } from '../outcome.ts';
import { ready, whenReady } from '../outcome.ts';
import { dragTorqueDoubt, mostDragShare, wrenchScale } from '../own-assumptions.ts';
import {
  type DragTorque,
  type TorqueAtHand,
  torqueAtHand,
  worksheetDrag,
} from '../torque-at-hand.ts';
import type { Assumption } from './assumed.ts';
import type { ScrewModel } from './screw-model.ts';
import type { SectionResult, StrandsResult } from './section.ts';

/** What lies between a torque and the stress it gives. */
export interface ChainOperands {
  readonly advantage: number;
  readonly efficiency: number;
  readonly dragTorque: number; // N·m
  readonly lead: number; // m
  readonly area: number; // m²
  readonly strandHalfAngle: number; // rad
}

/** The chain from torque to stress: its middle values, its uncertain inputs, and the stress of any such values. */
export interface Theory {
  readonly operands: ChainOperands;
  readonly inputsAt: (torque: number) => UncertainInputs<string>;
  readonly stressOf: (values: Readonly<Record<string, number>>) => number;
  readonly assumed: readonly Assumption[];
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
    const { lead, efficiency } = screw;
    const { strandHalfAngle } = strands;
    const noDrag = { ...lever, efficiency, lead, area: section.area, strandHalfAngle };
    const drag = worksheetDrag(worksheet, referenceTorque(worksheet, noDrag));
    return whenReady({ drag }, ({ drag }) => {
      const operands = { ...noDrag, dragTorque: drag.dragTorque };
      const { bodyWidth, thickness, thicknessHalfWidth } = section.operands;
      const inputs: UncertainInputs<string> = {
        ...screw.inputs,
        bodyWidth: rectangular(bodyWidth, sectionHalfWidths.bodyWidth),
        thickness: rectangular(thickness, thicknessHalfWidth),
        dragTorque: drag.input,
      };
      return ready<Theory>({
        operands,
        inputsAt: (torque) => ({ ...inputs, torque: rectangular(torque, wrenchScale * torque) }),
        stressOf: chainStress(operands, screw.efficiencyOf),
        assumed: [
          ...screw.assumed,
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
  const pulling = torqueForStress({ ...noDrag, dragTorque: 0 }, noDrag, stress);
  return ready({ torque: pulling / (1 - mostDragShare / 2) });
}

function dragAssumptions({ dragTorque, isAssumed }: DragTorque): readonly Assumption[] {
  const ends = { low: 0, high: 2 * dragTorque };
  const path = 'tensioner.dragTorque';
  return isAssumed ? [{ name: 'dragTorque', path, ...ends, onceKnown: dragTorqueDoubt }] : [];
}

function thicknessAssumptions(
  { thicknessFrom }: Worksheet['band'],
  { thickness, thicknessHalfWidth }: SectionResult['operands'],
): readonly Assumption[] {
  const ends = { low: thickness - thicknessHalfWidth, high: thickness + thicknessHalfWidth };
  const onceKnown = sectionHalfWidths.thickness / Math.sqrt(3);
  const path = 'band.thicknessFrom';
  return thicknessFrom === 'micrometer' ? [] : [{ name: 'thickness', path, ...ends, onceKnown }];
}

// Written out rather than called: trials draw drags below 0, which the checked form refuses.
function chainStress(
  { advantage, lead, strandHalfAngle }: ChainOperands,
  efficiencyOf: ScrewModel['efficiencyOf'],
): Theory['stressOf'] {
  const perLoad = (Math.PI * advantage) / (lead * Math.cos(strandHalfAngle));
  return (values) => {
    const { torque = 0, dragTorque = 0, bodyWidth = 0, thickness = 0 } = values;
    return (perLoad * efficiencyOf(values) * (torque - dragTorque)) / (bodyWidth * thickness);
  };
}
