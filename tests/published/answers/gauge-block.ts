/** The gauge block of the GUM's supplement 1, by trials. Its bent trapezia are made of two inputs each. */

import type { UncertainInput } from '../../../src/core/statistics/uncertain-input.ts';
import { propagateByTrials } from '../../../src/core/trials.ts';
import { type Answer, type Answers, printed } from '../answer.ts';
import { numbersAt, type PublishedCase } from '../cases.ts';
import { boundsAt, normalAt } from './drawn-inputs.ts';

const OPTIONS = { probability: 0.99, trials: 500_000, seed: 1 };

/** A trapezium with bent sides: a rectangle whose half-width is itself uncertain by d. */
function gaugeInputs(from: PublishedCase) {
  const student = (key: string) => {
    const [value, standardUncertainty, degreesOfFreedom] = numbersAt(from.inputs, `${key} > t`);
    return { value, standardUncertainty, degreesOfFreedom } as UncertainInput;
  };
  const unit: UncertainInput = { value: 0, halfWidth: 1, shape: 'rectangular' };
  const bent = (key: string) => {
    const [, halfWidth, doubt] = numbersAt(from.inputs, `${key} > curvilinearTrapezoid`);
    return { value: halfWidth, halfWidth: doubt, shape: 'rectangular' } as UncertainInput;
  };
  return {
    ls: student('Ls'),
    difference: student('D'),
    d1: student('d1'),
    d2: student('d2'),
    alphaS: boundsAt(from, 'alphaS > rectangular'),
    theta0: normalAt(from, 'theta0 > normal'),
    swing: { value: 0, halfWidth: 0.5, shape: 'arcsine' } as UncertainInput,
    alphaWidth: bent('dAlpha'),
    alphaPlace: unit,
    thetaWidth: bent('dTheta'),
    thetaPlace: unit,
  };
}

function gaugeBlock(from: PublishedCase): readonly Answer[] {
  const inputs = gaugeInputs(from);
  const model = (v: Readonly<Record<keyof typeof inputs, number>>) => {
    const warmth =
      v.alphaWidth * v.alphaPlace * (v.theta0 + v.swing) + v.alphaS * v.thetaWidth * v.thetaPlace;
    return v.ls + v.difference + v.d1 + v.d2 - v.ls * warmth - 50_000_000;
  };
  const trials = propagateByTrials(model, inputs, OPTIONS);
  const [within, ends] = [{ absolute: 1 }, { absolute: 3 }];
  const path = 'recomputed > monteCarlo12e6';
  return [
    printed('monteCarlo > y', 'length over 50 mm', 'nm', trials.value, within),
    printed('monteCarlo > u', 'its u, by trials', 'nm', trials.standardUncertainty, within),
    { path: `${path} > y`, quantity: 'length', unit: 'nm', ours: trials.value, within },
    { path: `${path} > u`, quantity: 'u', unit: 'nm', ours: trials.standardUncertainty, within },
    {
      path: `${path} > symmetric99 > 0`,
      quantity: 'low',
      unit: 'nm',
      ours: trials.low,
      within: ends,
    },
    {
      path: `${path} > symmetric99 > 1`,
      quantity: 'high',
      unit: 'nm',
      ours: trials.high,
      within: ends,
    },
  ];
}

export const gaugeBlockAnswers: Answers = { 's1-9-5-gauge-block': gaugeBlock };
