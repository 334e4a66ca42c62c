/**
 * From a torque on the worksheet's screw to the stress it should give, before any reading is looked at.
 * Units: SI only (Pa, N·m).
 * Source: σ = adv·π·e·(M − M_d)/(l·A·cos β), derived here; spreads of wrench and section, assumptions.ts.
 */
import { sectionHalfWidths, wrenchScale } from '../../assumptions.ts';
import type { UncertainInputs } from '../../statistics/uncertain-input.ts';
import { rectangular } from '../budget.ts';
import type { Worksheet } from '../inputs.ts';
import { knownInputs } from '../known-inputs.ts';
import type { Outcome } from '../outcome.ts';
import { ready, whenReady } from '../outcome.ts';
import type { ScrewModel } from './screw.ts';
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
}

/** The chain, once screw, section and strands are known. */
export function worksheetTheory(
  { tensioner }: Worksheet,
  screwOutcome: Outcome<ScrewModel>,
  section: Outcome<SectionResult>,
  strands: Outcome<StrandsResult>,
): Outcome<Theory> {
  const own = knownInputs({
    advantage: ['tensioner.advantage', tensioner.advantage],
    dragTorque: ['tensioner.dragTorque', tensioner.dragTorque, 'notNegative'],
    dragTorqueUncertainty: [
      'tensioner.dragTorqueUncertainty',
      tensioner.dragTorqueUncertainty,
      'notNegative',
    ],
  });
  return whenReady({ screw: screwOutcome, section, strands, own }, (known) => {
    const { screw, own } = known;
    const operands = {
      advantage: own.advantage,
      efficiency: screw.efficiency,
      dragTorque: own.dragTorque,
      lead: screw.lead,
      area: known.section.area,
      strandHalfAngle: known.strands.strandHalfAngle,
    };
    const { bodyWidth, thickness } = known.section.operands;
    const inputs: UncertainInputs<string> = {
      ...screw.inputs,
      bodyWidth: rectangular(bodyWidth, sectionHalfWidths.bodyWidth),
      thickness: rectangular(thickness, sectionHalfWidths.thickness),
      dragTorque: { value: own.dragTorque, standardUncertainty: own.dragTorqueUncertainty },
    };
    return ready<Theory>({
      operands,
      inputsAt: (torque) => ({ ...inputs, torque: rectangular(torque, wrenchScale * torque) }),
      stressOf: chainStress(operands, screw.efficiencyOf),
    });
  });
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
