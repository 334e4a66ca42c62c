/** Worked examples of Acme and trapezoidal screws, in the sec form that the books use. */

import {
  efficiencyHandbook,
  loweringTorqueHandbook,
  raisingTorqueHandbook,
} from '../../../src/core/screw/handbook.ts';
import { leadAngle } from '../../../src/core/screw/shape.ts';
import { efficiency, raisingTorque } from '../../../src/core/screw/torque.ts';
import { threadHalfAngle } from '../../../src/core/threads/form.ts';
import { type Answer, type Answers, printed, recomputed } from '../answer.ts';
import { inputReader, type PublishedCase } from '../cases.ts';
import { collarOf, degree, inch, lbf, mm, poundInch, screwOf } from './screw-parts.ts';

function acmePair(from: PublishedCase): readonly Answer[] {
  const n = inputReader(from);
  const screw = screwOf({
    meanDiameter: n('Dp_in') * inch,
    lead: n('lead_in') * inch,
    threadFriction: n('f'),
    halfAngle: threadHalfAngle.acme,
  });
  const up = raisingTorqueHandbook(screw, n('F_lbf') * lbf) / poundInch;
  const down = loweringTorqueHandbook(screw, n('F_lbf') * lbf) / poundInch;
  const angle = leadAngle(screw) / degree;
  return [
    printed('T_raise_lbf_in', 'torque to raise', 'in·lbf', up, { absolute: 6 }),
    printed('leadAngle_deg', 'lead angle', '°', angle, { absolute: 0.01 }),
    printed('cosPhi', 'cosine of the flank angle', '', Math.cos(screw.halfAngle), { decimals: 3 }),
    recomputed('T_raise_lbf_in', 'torque to raise', 'in·lbf', up, 1e-9),
    recomputed('T_lower_lbf_in', 'torque to lower', 'in·lbf', down, 1e-9),
    recomputed('efficiency', 'efficiency', '', efficiencyHandbook(screw), 1e-9),
    recomputed('leadAngle_deg', 'lead angle', '°', angle, 1e-9),
  ];
}

function trapezoidal(from: PublishedCase): readonly Answer[] {
  const n = inputReader(from);
  const screw = screwOf({
    meanDiameter: n('dm_mm') * mm,
    lead: n('lead_mm') * mm,
    threadFriction: n('mu'),
    halfAngle: threadHalfAngle.trapezoidal,
    ...collarOf(n),
  });
  const up = raisingTorqueHandbook(screw, n('W_N'));
  const share = efficiencyHandbook(screw);
  const power = (up * 2 * Math.PI * n('rpm')) / 60;
  const within = { absolute: 1e-6 };
  return [
    printed('power_kW', 'power to turn it', 'kW', power / 1e3, within),
    printed('efficiency_percent', 'efficiency', '%', 100 * share, within),
    recomputed('T_Nmm', 'torque to raise', 'N·mm', up / mm, 1e-9),
    recomputed(
      'T_lower_Nmm',
      'torque to lower',
      'N·mm',
      loweringTorqueHandbook(screw, n('W_N')) / mm,
      1e-9,
    ),
    recomputed('efficiency', 'efficiency', '', share, 1e-9),
  ];
}

function leadScrews(from: PublishedCase): readonly Answer[] {
  const n = inputReader(from);
  const [load, threadFriction] = [n('F_per_screw_lbf') * lbf, n('f')];
  const square = screwOf({
    meanDiameter: n('square > Dp_in') * inch,
    lead: inch / 3,
    threadFriction,
  });
  const acme = screwOf({
    meanDiameter: n('acme > Dp_in') * inch,
    lead: n('acme > lead_in') * inch,
    threadFriction,
    halfAngle: threadHalfAngle.acme,
  });
  const torque = raisingTorque(square, load) / poundInch;
  const acmeTorque = raisingTorqueHandbook(acme, load) / poundInch;
  const [share, within] = [efficiency(square), { decimals: 2 }];
  return [
    printed('square > T_lbf_in', 'torque, square thread', 'in·lbf', torque, within),
    printed('square > leadAngle_deg', 'lead angle', '°', leadAngle(square) / degree, within),
    printed('square > efficiency_percent', 'efficiency', '%', 100 * share, within),
    printed('acme > T_lbf_in', 'torque, Acme', 'in·lbf', acmeTorque, within),
    printed('acme > leadAngle_deg', 'lead angle, Acme', '°', leadAngle(acme) / degree, within),
    recomputed('square_T', 'torque, square thread', 'in·lbf', torque, 1e-9),
    recomputed('square_efficiency', 'efficiency', '', share, 1e-9),
    recomputed('acme_T', 'torque, Acme', 'in·lbf', acmeTorque, 1e-9),
  ];
}

export const angledScrewAnswers: Answers = {
  'mott-17-1-acme': acmePair,
  'bhandari-6-6-trapezoidal': trapezoidal,
  'wentzell-18-1-3-square-and-acme': leadScrews,
};
