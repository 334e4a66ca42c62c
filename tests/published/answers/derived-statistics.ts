/** Lines, zeros, factors of coverage and scores. */
import { agreementNumber } from '../../../src/core/agreement.ts';
import { propagate } from '../../../src/core/budget.ts';
import { fitLine, fitLineBothErrors } from '../../../src/core/line.ts';
import { standardUncertainty } from '../../../src/core/statistics/uncertain-input.ts';
import { tCdf, tQuantile } from '../../../src/core/student.ts';
import { zeroFromTorque, zeroFromTurns } from '../../../src/core/zero.ts';
import { numbersAt, valueAt } from '../cases.ts';
import type { DerivedAnswer, DerivedAnswers, DerivedCase, Reader } from '../derived-cases.ts';

type Inputs = DerivedCase['inputs'];

const lineOf = (inputs: Inputs) => fitLine(numbersAt(inputs, 'x'), numbersAt(inputs, 'y'));

/** Some cases give weights, some deviations. */
function bothErrors(inputs: Inputs) {
  const deviations = (axis: string) =>
    valueAt(inputs, `s${axis}`) === undefined
      ? numbersAt(inputs, `w${axis}`).map((weight) => 1 / Math.sqrt(weight))
      : numbersAt(inputs, `s${axis}`);
  const [x, y] = [numbersAt(inputs, 'x'), numbersAt(inputs, 'y')];
  const line = fitLineBothErrors({ x, y, sdX: deviations('x'), sdY: deviations('y') });
  return { ...line, meanSquare: line.weightedResidualSum / (x.length - 2) };
}

const yorkFigure =
  (key: Exclude<keyof ReturnType<typeof bothErrors>, symbol>): DerivedAnswer =>
  (_, inputs) =>
    bothErrors(inputs)[key];

const zeroOf = (n: Reader, inputs: Inputs) =>
  zeroFromTorque({
    torques: numbersAt(inputs, 'load'),
    readings: numbersAt(inputs, 'y'),
    dragTorque: n('load0'),
    repeatability: n('s0'),
  });

/** The case's s0 already holds what reading the turns to a step adds. */
const bracketOf = (n: Reader, inputs: Inputs) =>
  zeroFromTurns({
    turns: numbersAt(inputs, 'turns'),
    readings: numbersAt(inputs, 'y'),
    repeatability: n('s0'),
  });

/** A sum whose terms are the contributions themselves. */
function budgetOf(inputs: Inputs) {
  const key = 'contributions' in inputs ? 'contributions' : 'contributions_nm';
  const degrees = numbersAt(inputs, 'nu');
  const terms = numbersAt(inputs, key).map((standardUncertainty, i) => [
    `term ${i}`,
    { value: 0, standardUncertainty, degreesOfFreedom: degrees[i] as number },
  ]);
  return propagate(
    (values: Readonly<Record<string, number>>) =>
      Object.values(values).reduce((sum, value) => sum + value, 0),
    Object.fromEntries(terms),
    { probability: 0.95 },
  );
}

const expanded = (n: Reader, value: string, uncertainty: string) => ({
  value: n(value),
  expanded: n(uncertainty),
});

export const statisticsAnswers: DerivedAnswers = {
  'ols.intercept': (_, inputs) => lineOf(inputs).intercept,
  'ols.slope': (_, inputs) => lineOf(inputs).slope,
  'ols.sdIntercept': (_, inputs) => lineOf(inputs).sdIntercept,
  'ols.sdSlope': (_, inputs) => lineOf(inputs).sdSlope,
  'ols.residualSd': (_, inputs) => lineOf(inputs).residualSd,
  'york.intercept': yorkFigure('intercept'),
  'york.slope': yorkFigure('slope'),
  'york.sdIntercept': yorkFigure('sdIntercept'),
  'york.sdSlope': yorkFigure('sdSlope'),
  'york.covariance': yorkFigure('covariance'),
  'york.mswd': yorkFigure('meanSquare'),
  'york.a': yorkFigure('intercept'),
  'york.b': yorkFigure('slope'),
  'york.sa': yorkFigure('sdIntercept'),
  'york.sb': yorkFigure('sdSlope'),
  'envelopeZero.z': (n, inputs) => zeroOf(n, inputs).zero,
  'envelopeZero.uz': (n, inputs) => zeroOf(n, inputs).standardUncertainty,
  'envelopeZero.zlo': (n, inputs) => zeroOf(n, inputs).low,
  'envelopeZero.zhi': (n, inputs) => zeroOf(n, inputs).high,
  'envelopeZero.D': (n, inputs) => zeroOf(n, inputs).elongation,
  'envelopeZero.uD': (n, inputs) => zeroOf(n, inputs).sdElongation,
  'envelopeZero.Dlo': (n, inputs) => zeroOf(n, inputs).elongationLow,
  'envelopeZero.Dhi': (n, inputs) => zeroOf(n, inputs).elongationHigh,
  'envelopeZero.pNoToe': (n, inputs) => zeroOf(n, inputs).probabilityNoToe,
  'turnsBracket.lo': (n, inputs) => bracketOf(n, inputs).low,
  'turnsBracket.hi': (n, inputs) => bracketOf(n, inputs).high,
  'turnsBracket.ok': (n, inputs) => bracketOf(n, inputs).accepted,
  tQuantile: (n) => tQuantile(n('p'), n('nu')),
  tCdf: (n) => tCdf(n('t'), n('nu')),
  'combine.uc': (_, inputs) => budgetOf(inputs).standardUncertainty,
  welch: (_, inputs) => budgetOf(inputs).degreesOfFreedom,
  uRect: (n) => standardUncertainty({ value: 0, halfWidth: n('a'), shape: 'rectangular' }),
  uTri: (n) => standardUncertainty({ value: 0, halfWidth: n('a'), shape: 'triangular' }),
  enNumber: (n) => agreementNumber(expanded(n, 'a', 'Ua'), expanded(n, 'b', 'Ub')),
};
