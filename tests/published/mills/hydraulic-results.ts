/**
 * What the readings of the hydraulic mill come to, pressure in the place of torque. The worksheet knows screws only,
 * so its parts are put together here.
 */
import { agreementNumber } from '../../../src/core/agreement.ts';
import { propagate } from '../../../src/core/budget.ts';
import { elongation } from '../../../src/core/elasticity.ts';
import { hydraulicThrust, pistonArea } from '../../../src/core/loop/hydraulic.ts';
import { sectionArea, strandForce, wheelForce } from '../../../src/core/section.ts';
import { settingForStress } from '../../../src/core/wheel/same-band.ts';
import { emptyWorksheet } from '../../../src/core/worksheet/empty.ts';
import {
  stressOfStretch,
  worksheetStressScale,
} from '../../../src/core/worksheet/measure/stress.ts';
import type { StressInputs } from '../../../src/core/worksheet/measure/stress-inputs.ts';
import { zeroFromTorque } from '../../../src/core/zero.ts';
import { numberAt } from '../cases.ts';
import { derivedMills, type MillSeries } from '../derived-cases.ts';
import { known } from './known.ts';
import { type Mill, type MillFigures, mills, steel } from './mill.ts';

const GAUGE = 1.6e7 * 0.016; // Pa: a gauge to 160 bar, true to 1.6 % of that
const BORE = 0.05e-3; // m, half-width
const [BODY, THICKNESS] = [0.5e-3, 0.01e-3] as const; // m, half-widths
const HALF = { probability: 0.95 };

const { n, inputs } = mills['D'] as Mill;
const series = derivedMills['D']?.series as MillSeries;
const top = Math.max(...series.load);
const area = pistonArea({ bore: n('Dp') });
const drag = n('Fs') / area; // Pa, what only moves the seal

/** The inputs of the measured stress. */
export function hydraulicStressInputs(): StressInputs {
  const zero = zeroFromTorque({
    torques: series.load,
    readings: series.y,
    dragTorque: drag,
    repeatability: series.s0,
  });
  const rig = { ...emptyWorksheet.rig, gaugeLength: n('L0'), graduation: n('grad') };
  const { sdElongation: standardDeviation, degreesOfFreedom, elongation: value } = zero;
  return {
    ...known(worksheetStressScale({ ...emptyWorksheet, rig })),
    stretch: { value, standardDeviation, degreesOfFreedom },
    drag: { value: 0, standardUncertainty: (value * (n('uFs') / area)) / (top - drag) },
  };
}

const bounds = (value: number, halfWidth: number) =>
  ({ value, halfWidth, shape: 'rectangular' }) as const;

function predicted() {
  const doubtful = {
    pressure: bounds(top, GAUGE),
    bore: bounds(n('Dp'), BORE),
    seal: { value: n('Fs'), standardUncertainty: n('uFs') },
    body: bounds(n('body'), BODY),
    thickness: bounds(n('t'), THICKNESS),
  };
  const model = (v: Readonly<Record<keyof typeof doubtful, number>>) =>
    hydraulicThrust({ bore: v.bore, sealFriction: v.seal }, v.pressure, 'pumping') /
    wheelForce(sectionArea({ width: v.body, thickness: v.thickness }));
  return propagate(model, doubtful, HALF);
}

/** Wheel force over piston force above the drag; for another band the same share, backwards. */
function settings(stress: number): MillFigures {
  const section = sectionArea({ width: n('body'), thickness: n('t') });
  const own = wheelForce(strandForce(stress, section)) / (area * (top - drag));
  const other = (key: string) => numberAt(inputs, `other > ${key}`);
  const otherSection = sectionArea({ width: other('body'), thickness: other('t') });
  const otherForce = wheelForce(strandForce(other('target'), otherSection));
  const reached = { dragLoad: drag, topLoad: top, topStress: stress };
  return {
    'own efficiency': own,
    'setting for target': settingForStress(reached, n('target')),
    'other band: setting': drag + otherForce / (area * own),
    'other band: expected dial (m)': elongation({
      stress: other('target'),
      youngsModulus: steel.youngsModulus,
      gaugeLength: n('L0'),
    }),
  };
}

export function hydraulicFigures(): MillFigures {
  const measured = propagate(stressOfStretch, { ...hydraulicStressInputs() }, HALF);
  const theory = predicted();
  const [ours, theirs] = [measured.expandedUncertainty, 2 * theory.standardUncertainty];
  return {
    'measured stress at top load (Pa)': measured.value,
    'u(measured) (Pa)': measured.standardUncertainty,
    'effective degrees of freedom': measured.degreesOfFreedom,
    'coverage factor': measured.coverageFactor,
    'theory stress at top load (Pa)': theory.value,
    'u(theory) (Pa)': theory.standardUncertainty,
    E_n: agreementNumber(
      { value: measured.value, expanded: ours },
      { value: theory.value, expanded: theirs },
    ),
    ...settings(measured.value),
  };
}
