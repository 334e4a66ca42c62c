/** Belts and ropes round a rim. */
import { rootBetween } from '../../../src/core/root.ts';
import { maxPower, strandsUnderPower } from '../../../src/core/wheel/running.ts';
import { bendingStress, tensionRatio } from '../../../src/core/wheel.ts';
import { type Answer, type Answers, printed, recomputed } from '../answer.ts';
import { inputReader, numbersAt, type PublishedCase } from '../cases.ts';

/** The friction that lets a rim hold this ratio of forces. */
const frictionFor = (ratio: number, wrap: number): number =>
  rootBetween((friction) => tensionRatio({ friction, wrap }) - ratio, 0, 2);

/**
 * A thin steel belt. The book bends it as a wide plate, E/(1 − ν²), and to the wheel's diameter; ours runs
 * half a thickness further out, 0.075 % less here.
 */
function metalBelt(from: PublishedCase): readonly Answer[] {
  const n = inputReader(from);
  const [wrap, thickness] = [n('phi_rad'), n('t_in')];
  const bending = bendingStress({
    youngsModulus: n('E_psi') / (1 - n('nu') ** 2),
    thickness,
    wheelDiameter: n('D_in'),
  });
  const endurance = 14.17e6 * n('passes') ** -0.407; // psi, the book's own law
  const perInch = (endurance - bending) * thickness; // lbf per inch of width, steady part
  const pull = (2 * n('T_lbf_in')) / n('D_in');
  const ratio = tensionRatio({ friction: n('f'), wrap });
  const tight = perInch * n('chosen_b_in');
  const meanForce = tight - pull / 2;
  const strands = strandsUnderPower({ meanForce, power: pull, speed: 1 });
  const within = { absolute: 0.06 };
  const narrowest = (pull * ratio) / ((ratio - 1) * perInch);
  const developed = frictionFor(strands.tight / strands.slack, wrap);
  return [
    printed('exp_f_phi', 'ratio of forces at slip', '', ratio, { absolute: 0.005 }),
    printed('F1a_per_inch_lbf', 'tight force, per inch of width', 'lbf/in', perInch, within),
    printed(
      'deltaF_lbf',
      'difference of the strands',
      'lbf',
      strands.tight - strands.slack,
      within,
    ),
    printed('b_min_in', 'least width', 'in', narrowest, { absolute: 0.001 }),
    printed('F1_lbf', 'tight strand', 'lbf', strands.tight, within),
    printed('F2_lbf', 'slack strand', 'lbf', strands.slack, within),
    printed('Fi_lbf', 'mean force', 'lbf', meanForce, within),
    printed('f_developed', 'friction in use', '', developed, { absolute: 0.0002 }),
    recomputed('exp_f_phi', 'ratio of forces at slip', '', ratio, 1e-9),
  ];
}

function hawser(from: PublishedCase): readonly Answer[] {
  const n = inputReader(from);
  const turn = 2 * Math.PI;
  const friction = frictionFor(n('T2_N') / n('T1_N'), n('turns') * turn);
  const held = n('T1_N') * tensionRatio({ friction, wrap: n('thenTurns') * turn });
  return [
    printed('mu_s', 'friction of rope on bollard', '', friction, { absolute: 0.0005 }),
    printed('T_three_turns_N', 'force held by three turns', 'N', held, { absolute: 0.001 }),
    recomputed('mu_s', 'friction of rope on bollard', '', friction, 1e-9),
    recomputed('T_three_turns_N', 'force held by three turns', 'N', held, 1e-9),
  ];
}

function beltPower(from: PublishedCase): readonly Answer[] {
  const n = inputReader(from);
  const grip = { friction: n('mu'), wrap: (n('contactAngle_deg') * Math.PI) / 180 };
  const slack = n('T1_N') / tensionRatio(grip);
  const belt = { massPerLength: 0, speed: (Math.PI * n('d_m') * n('rpm')) / 60 };
  const power = maxPower((n('T1_N') + slack) / 2, belt, grip) / 1e3;
  return [
    printed('P_kW', 'power at slip', 'kW', power, { absolute: 0.005 }),
    recomputed('T2_N', 'slack side', 'N', slack, 1e-9),
    recomputed('P_kW', 'power at slip', 'kW', power, 1e-9),
  ];
}

function ratioTable({ inputs }: PublishedCase): readonly Answer[] {
  return numbersAt(inputs, 'mu').flatMap((friction, row) =>
    numbersAt(inputs, 'phi_deg').map((angle, column) => {
      const ratio = tensionRatio({ friction, wrap: (angle * Math.PI) / 180 });
      return recomputed(
        `ratio > ${row} > ${column}`,
        `ratio of forces, ${angle}°`,
        '',
        ratio,
        1e-13,
      );
    }),
  );
}

export const beltAnswers: Answers = {
  'shigley-17-3-metal-belt': metalBelt,
  'beer-johnston-8-7-hawser': hawser,
  'khurmi-11-4-belt-power': beltPower,
  'eytelwein-table': ratioTable,
};
