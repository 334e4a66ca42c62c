/** Worked examples of square threads, which are the same in the exact and in the sec form. */
import {
  efficiency,
  loweringTorque,
  raisingTorque,
  screwEfficiency,
  thrustFromTorque,
} from '../../../src/core/screw/torque.ts';
import { type Answer, type Answers, printed, recomputed } from '../answer.ts';
import { inputReader, type PublishedCase } from '../cases.ts';
import { collarOf, inch, lbf, mm, poundInch, screwOf } from './screw-parts.ts';

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

export const squareScrewAnswers: Answers = {
  'shigley-8-1-power-screw': doubleSquare,
  'bhandari-6-1-triple-square': tripleSquare,
  'jindal-16-5-double-start-press': press,
  'hibbeler-8-8-turnbuckle': turnbuckle,
  'beer-johnston-8-5-clamp': clamp,
  'housner-hudson-5-6-1-2': jack,
  'frictionless-screw-jack': frictionless,
};
