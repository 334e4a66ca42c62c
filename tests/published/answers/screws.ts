/** Worked examples of screws, in the form that each book uses: a square thread is the same in both. */
import { wornCollarDiameter } from '../../../src/core/collar.ts';
import type { Screw } from '../../../src/core/screw.ts';
import {
  efficiency,
  loweringTorque,
  raisingTorque,
  screwEfficiency,
  thrustFromTorque,
} from '../../../src/core/screw.ts';
import {
  efficiencyHandbook,
  loweringTorqueHandbook,
  raisingTorqueHandbook,
} from '../../../src/core/screw-handbook.ts';
import { threadHalfAngle } from '../../../src/core/thread-form.ts';
import { leadAngle } from '../../../src/core/thread-shape.ts';
import { siValue } from '../../../src/units/conversions.ts';
import { UNITS } from '../../../src/units/unit-table.ts';
import { type Answer, type Answers, printed, recomputed } from '../answer.ts';
import { inputReader, type PublishedCase } from '../cases.ts';

const degree = Math.PI / 180;
const mm = 1e-3;
const inch = siValue(1, UNITS.in.factor);
const lbf = siValue(1, UNITS.lbf.factor);
const poundInch = siValue(1, UNITS['in·lbf'].factor);

function screwOf(
  part: Pick<Screw, 'meanDiameter' | 'lead' | 'threadFriction'> & Partial<Screw>,
): Screw {
  return { halfAngle: 0, collarFriction: 0, collarDiameter: 0, ...part };
}

function doubleSquare(from: PublishedCase): readonly Answer[] {
  const n = inputReader(from);
  const screw = screwOf({
    meanDiameter: n('dm_mm') * mm,
    lead: n('lead_mm') * mm,
    threadFriction: n('mu'),
    collarFriction: n('mu_c'),
    collarDiameter: n('dc_mm') * mm,
  });
  const [up, down] = [raisingTorque(screw, n('F_N')), loweringTorque(screw, n('F_N'))];
  const share = screwEfficiency({ thrust: n('F_N'), lead: screw.lead, torque: up });
  const within = { absolute: 0.005 };
  return [
    printed('T_raise_Nm', 'torque to raise', 'N·m', up, within),
    printed('T_lower_Nm', 'torque to lower', 'N·m', down, within),
    printed('efficiency', 'efficiency', '', share, { absolute: 0.0005 }),
    recomputed('T_raise_Nmm', 'torque to raise', 'N·mm', up / mm, 1e-9),
    recomputed('T_lower_Nmm', 'torque to lower', 'N·mm', down / mm, 1e-9),
    recomputed('efficiency', 'efficiency', '', efficiency(screw), 1e-9),
  ];
}

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

const collarOf = (n: (path: string) => number) => ({
  collarFriction: n('collar > mu'),
  collarDiameter: wornCollarDiameter({
    outerDiameter: n('collar > Do') * mm,
    innerDiameter: n('collar > Di') * mm,
  }),
});

function tripleSquare(from: PublishedCase): readonly Answer[] {
  const n = inputReader(from);
  const screw = screwOf({
    meanDiameter: n('dm_mm') * mm,
    lead: n('lead_mm') * mm,
    threadFriction: n('mu'),
    ...collarOf(n),
  });
  const [up, down] = [raisingTorque(screw, n('W_N')), loweringTorque(screw, n('W_N'))];
  const within = { relative: 1e-9 };
  return [
    printed('T_raise_Nmm', 'torque to raise', 'N·mm', up / mm, within),
    printed('T_lower_Nmm', 'torque to lower', 'N·mm', down / mm, within),
    printed('leverForce_N', 'force on the lever', 'N', up / (n('leverRadius_mm') * mm), {
      decimals: 6,
    }),
    recomputed('T_raise_Nmm', 'torque to raise', 'N·mm', up / mm, 1e-9),
    recomputed('T_lower_Nmm', 'torque to lower', 'N·mm', down / mm, 1e-9),
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

function press(from: PublishedCase): readonly Answer[] {
  const n = inputReader(from);
  const screw = screwOf({
    meanDiameter: n('dm_mm') * mm,
    lead: n('lead_mm') * mm,
    threadFriction: n('mu'),
  });
  const thrust = thrustFromTorque(screw, n('F_N') * n('leverLength_mm') * mm);
  return [
    printed('P_kN', 'thrust', 'kN', thrust / 1e3, { absolute: 0.05 }),
    recomputed('P_N', 'thrust', 'N', thrust, 1e-9),
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

function turnbuckle(from: PublishedCase): readonly Answer[] {
  const n = inputReader(from);
  const screw = screwOf({
    meanDiameter: 2 * n('meanRadius_mm') * mm,
    lead: n('lead_mm') * mm,
    threadFriction: n('mu_s'),
  });
  const moment = n('threads') * raisingTorque(screw, n('W_N'));
  return [
    printed('M_Nm', 'moment on the turnbuckle', 'N·m', moment, { absolute: 0.006 }),
    recomputed('M_Nmm', 'moment on the turnbuckle', 'N·mm', moment / mm, 1e-9),
  ];
}

function clamp(from: PublishedCase): readonly Answer[] {
  const n = inputReader(from);
  const screw = screwOf({
    meanDiameter: n('meanDiameter_mm') * mm,
    lead: n('lead_mm') * mm,
    threadFriction: n('mu_s'),
  });
  const thrust = thrustFromTorque(screw, n('couple_Nm'));
  const couple = loweringTorque(screw, thrust);
  return [
    printed('W_kN', 'force of the clamp', 'kN', thrust / 1e3, { absolute: 0.006 }),
    printed('looseningCouple_Nm', 'couple to loosen', 'N·m', couple, { absolute: 0.006 }),
    recomputed('W_N', 'force of the clamp', 'N', thrust, 1e-9),
    recomputed('looseningCouple_Nmm', 'couple to loosen', 'N·mm', couple / mm, 1e-9),
  ];
}

function jack(from: PublishedCase): readonly Answer[] {
  const n = inputReader(from);
  const screw = screwOf({
    meanDiameter: n('meanDiameter_in') * inch,
    lead: inch / n('threadsPerInch'),
    threadFriction: n('mu'),
  });
  const torque = raisingTorque(screw, n('W_lbf') * lbf) / poundInch;
  return [
    printed('T_lbf_in', 'torque to raise', 'in·lbf', torque, { absolute: 5 }),
    recomputed('T_lbf_in', 'torque to raise', 'in·lbf', torque, 1e-9),
  ];
}

/** Without friction the diameter plays no part: any will do. */
function frictionless(from: PublishedCase): readonly Answer[] {
  const n = inputReader(from);
  const screw = screwOf({
    meanDiameter: inch,
    lead: n('pitch_in') * inch,
    threadFriction: n('mu'),
  });
  const effort = raisingTorque(screw, n('load_lbf') * lbf) / poundInch / n('lever_in');
  return [
    printed('effort_lbf', 'effort on the lever', 'lbf', effort, { absolute: 0.5 }),
    recomputed('effort_lbf', 'effort on the lever', 'lbf', effort, 1e-12),
  ];
}

export const screwAnswers: Answers = {
  'shigley-8-1-power-screw': doubleSquare,
  'mott-17-1-acme': acmePair,
  'bhandari-6-1-triple-square': tripleSquare,
  'bhandari-6-6-trapezoidal': trapezoidal,
  'jindal-16-5-double-start-press': press,
  'wentzell-18-1-3-square-and-acme': leadScrews,
  'hibbeler-8-8-turnbuckle': turnbuckle,
  'beer-johnston-8-5-clamp': clamp,
  'housner-hudson-5-6-1-2': jack,
  'frictionless-screw-jack': frictionless,
};
