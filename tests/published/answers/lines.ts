/** Straight lines: NIST's certified fits, the GUM's thermometer, York's line, a toe carried back. */
import { propagate } from '../../../src/core/budget.ts';
import { fitLine, fitLineBothErrors } from '../../../src/core/line.ts';
import { type Answer, type Answers, printed, recomputed } from '../answer.ts';
import { inputReader, numbersAt, type PublishedCase, publishedCases } from '../cases.ts';

const listsOf = ({ inputs }: Pick<PublishedCase, 'inputs'>) =>
  [numbersAt(inputs, 'x'), numbersAt(inputs, 'y')] as const;

function norris(from: PublishedCase): readonly Answer[] {
  const line = fitLine(...listsOf(from));
  const within = { relative: 1e-11 };
  const squares = line.residualSd ** 2 * line.degreesOfFreedom;
  const correlation = line.covariance / (line.sdIntercept * line.sdSlope);
  return [
    printed('estimates > B0', 'intercept', '', line.intercept, within),
    printed('estimates > B1', 'slope', '', line.slope, within),
    printed('standardDeviations > B0', 'sd of intercept', '', line.sdIntercept, within),
    printed('standardDeviations > B1', 'sd of slope', '', line.sdSlope, within),
    printed('residualStandardDeviation', 'residual sd', '', line.residualSd, within),
    printed('residualSumOfSquares', 'sum of squared residuals', '', squares, within),
    printed('degreesOfFreedom', 'degrees of freedom', '', line.degreesOfFreedom, { decimals: 0 }),
    recomputed('covariance_B0_B1', 'covariance', '', line.covariance, 1e-11),
    recomputed('correlation_B0_B1', 'correlation', '', correlation, 1e-11),
  ];
}

function loadCell(): readonly Answer[] {
  const [x, y] = listsOf(publishedCases.find(({ id }) => id === 'strd-pontius') as PublishedCase);
  const line = fitLine(x, y);
  const residuals = x.map((load, i) => (y[i] as number) - line.intercept - line.slope * load);
  const figures: readonly (readonly [string, string, number, number])[] = [
    ['intercept', 'intercept', line.intercept, 5],
    ['interceptSE', 'sd of intercept', line.sdIntercept, 7],
    ['slope', 'slope', line.slope, 10],
    ['slopeSE', 'sd of slope', line.sdSlope, 13],
    ['residualStandardError', 'residual sd', line.residualSd, 6],
    ['minResidual', 'lowest residual', Math.min(...residuals), 7],
    ['maxResidual', 'highest residual', Math.max(...residuals), 7],
  ];
  return [
    ...figures.flatMap(([key, quantity, ours, decimals]) => [
      printed(key, quantity, '', ours, { decimals }),
      recomputed(key, quantity, '', ours, 1e-10),
    ]),
    printed('degreesOfFreedom', 'degrees of freedom', '', line.degreesOfFreedom, { decimals: 0 }),
  ];
}

/** b at 30 °C with its uncertainty: the correlation of intercept and slope counts. */
function thermometer({ inputs }: PublishedCase): readonly Answer[] {
  const from = numbersAt(inputs, 't_degC').map((t) => t - 20);
  const line = fitLine(from, numbersAt(inputs, 'b_degC'));
  const r = line.covariance / (line.sdIntercept * line.sdSlope);
  const known = {
    intercept: { value: line.intercept, standardUncertainty: line.sdIntercept },
    slope: { value: line.slope, standardUncertainty: line.sdSlope },
  };
  const at30 = propagate(({ intercept, slope }) => intercept + slope * 10, known, {
    probability: 0.95,
    correlations: [['intercept', 'slope', r]],
  });
  const figures: readonly (readonly [string, string, string, number, number])[] = [
    ['y1', 'correction at 20 °C', '°C', line.intercept, 4],
    ['s_y1', 'its standard deviation', '°C', line.sdIntercept, 4],
    ['y2', 'slope', '', line.slope, 5],
    ['s_y2', 'its standard deviation', '', line.sdSlope, 5],
    ['r', 'correlation', '', r, 3], // printed as −0.930
    ['s', 'residual sd', '°C', line.residualSd, 4],
    ['b30', 'correction at 30 °C', '°C', at30.value, 4],
    ['u_b30', 'its standard uncertainty', '°C', at30.standardUncertainty, 4],
  ];
  const squares = line.residualSd ** 2 * line.degreesOfFreedom;
  return [
    ...figures.flatMap(([key, quantity, unit, ours, decimals]) => [
      printed(key, quantity, unit, ours, { decimals }),
      recomputed(key, quantity, unit, ours, 1e-9),
    ]),
    printed('dof', 'degrees of freedom', '', line.degreesOfFreedom, { decimals: 0 }),
    recomputed('rss', 'sum of squared residuals', '', squares, 1e-9),
  ];
}

function york(from: PublishedCase): readonly Answer[] {
  const [x, y] = listsOf(from);
  const deviations = (path: string) =>
    numbersAt(from.inputs, path).map((weight) => 1 / Math.sqrt(weight));
  const sd = { sdX: deviations('weight_x'), sdY: deviations('weight_y') };
  const line = fitLineBothErrors({ x, y, ...sd });
  const scatter = line.weightedResidualSum / (x.length - 2);
  const within = { decimals: 9 };
  const figures: readonly (readonly [string, string, number])[] = [
    ['intercept', 'intercept', line.intercept],
    ['slope', 'slope', line.slope],
    ['sigma_intercept', 'sd of intercept', line.sdIntercept],
    ['sigma_slope', 'sd of slope', line.sdSlope],
    ['S_over_n_minus_2', 'scatter S/(n − 2)', scatter],
  ];
  const scale = Math.sqrt(scatter);
  return [
    ...figures.flatMap(([key, quantity, ours]) => [
      printed(key, quantity, '', ours, within),
      recomputed(key, quantity, '', ours, 1e-10),
    ]),
    recomputed('S', 'scatter S', '', line.weightedResidualSum, 1e-10),
    recomputed('cov_intercept_slope', 'covariance', '', line.covariance, 1e-10),
    recomputed('scaled_sigma_intercept', 'scaled sd', '', scale * line.sdIntercept, 1e-10),
    recomputed('scaled_sigma_slope', 'scaled sd', '', scale * line.sdSlope, 1e-10),
  ];
}

function equalWeights(from: PublishedCase): readonly Answer[] {
  const [x, y] = listsOf(from);
  const ones = x.map(() => 1);
  const line = fitLineBothErrors({ x, y, sdX: ones, sdY: ones });
  return [
    printed('slope', 'slope, equal weights', '', line.slope, { absolute: 0.0005 }),
    recomputed('slope', 'slope, equal weights', '', line.slope, 1e-10),
    recomputed('intercept', 'intercept, equal weights', '', line.intercept, 1e-10),
  ];
}

/** The straight part carried back to no force; the data were made up to be exactly straight. */
function toeCompensation(from: PublishedCase): readonly Answer[] {
  const start = inputReader(from)('constructedData > linearFrom');
  const [extension, force] = ['extension_um', 'force_N'].map((key) =>
    numbersAt(from.inputs, `constructedData > ${key}`),
  ) as [readonly number[], readonly number[]];
  const straight = [...extension.keys()].filter((i) => (extension[i] as number) >= start);
  const pick = (list: readonly number[]) => straight.map((i) => list[i] as number);
  const line = fitLine(pick(force), pick(extension));
  return [
    recomputed('slope_N_per_um', 'stiffness', 'N/µm', 1 / line.slope, 1e-12),
    recomputed('zeroIntercept_um', 'zero', 'µm', line.intercept, 1e-12),
    recomputed('correctedExtensionAt80um', 'extension', 'µm', 80 - line.intercept, 1e-12),
  ];
}

export const lineAnswers: Answers = {
  'strd-norris': norris,
  'nist-handbook-load-cell-line': loadCell,
  'gum-h3-thermometer': thermometer,
  'york-2004-pearson': york,
  'york-equal-weights-pearson': equalWeights,
  'astm-d638-toe-compensation': toeCompensation,
};
