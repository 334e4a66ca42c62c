/**
 * Four sheets and four reasons: the prediction as the reason would have it, the sheet's readings, and three ways to
 * tell whether the reason is the right one.
 * Units: SI in the state; drawing units are pixels of the viewBox.
 */

import { Sheet } from '../../figures/Sheet.tsx';
import { PredictionArea } from '../../figures/stress-plot/PredictionArea.tsx';
import { ReadingMarks } from '../../figures/stress-plot/ReadingMarks.tsx';
import { StressInterval } from '../../figures/stress-plot/StressInterval.tsx';
import { torqueScales } from '../../figures/stress-plot/scales.ts';
import { TorqueAxes } from '../../figures/stress-plot/TorqueAxes.tsx';
import { readingsFromZero } from './comparison/PlotWithLine.tsx';
import { REASON_WORDS, REASONS, SHEETS } from './reasons.ts';
import { known } from './results.worked.ts';
import { AgreementScale, agreementText } from './sheets/AgreementScale.tsx';
import { Checks, checkRows } from './sheets/Checks.tsx';
import type { SheetResult } from './sheets.ts';
import { sheets } from './sheets.worked.ts';
import type { Figure, State } from './state.ts';

const TORQUE_ENDS = [0, 22] as const;
const STRESS_ENDS = [0, 300e6] as const;

const WIDE = {
  width: 880,
  height: 360,
  plot: { left: 64, right: 410, top: 34, bottom: 310 },
  table: { left: 460, top: 40, columns: [164, 268, 340], rowHeight: 62, width: 416 },
  agreement: { left: 624, right: 840, top: 284, bottom: 304 },
} as const;
const NARROW = {
  width: 360,
  height: 424,
  plot: { left: 46, right: 352, top: 24, bottom: 160 },
  table: { left: 0, top: 216, columns: [104, 208, 274], rowHeight: 50, width: 352 },
  agreement: { left: 176, right: 352, top: 388, bottom: 404 },
} as const;

function resultOf({ values }: State): SheetResult {
  const { sheet, reason } = values;
  const result = sheets[SHEETS.indexOf(sheet)]?.[REASONS.indexOf(reason)];
  if (!result) throw new RangeError(`sheet and reason must be ours (were ${sheet}, ${reason})`);
  return result;
}

function failing(result: SheetResult, state: State): readonly string[] {
  return checkRows(result, state.system)
    .filter(({ fits }) => !fits)
    .map(({ name }) => name);
}

function finding(state: State): string {
  const result = resultOf(state);
  const sheet = `Sheet ${SHEETS.indexOf(state.values.sheet) + 1}`;
  const reason = REASON_WORDS[state.values.reason];
  const number = agreementText(result.agreement);
  const wrong = failing(result, state);
  if (wrong.length === 0)
    return `${sheet}, if ${reason}: agreement number ${number}, and everything else fits.`;
  if (result.agrees)
    return `${sheet}, if ${reason}: agreement number ${number}, yet ${wrong.join(' and ')} ${wrong.length > 1 ? 'do' : 'does'} not fit.`;
  return `${sheet}, if ${reason}: agreement number ${number}, so prediction and readings do not agree.`;
}

function description(state: State): string {
  const rows = checkRows(resultOf(state), state.system).map(
    ({ name, taken, found, fits }) =>
      `${name} taken as ${taken}, found ${found}, ${fits ? 'fits' : 'does not fit'}`,
  );
  return `Readings of one sheet over torque with the prediction as an area; beside it three checks: ${rows.join('; ')}.`;
}

function notes(): readonly string[] {
  return [
    'area: 95 % of the prediction, its line the middle; bar with ends: 95 % of the measurement at the highest torque',
    'sheets invented: the band is stretched as at Ottersleigh, the torques are those that each screw needs',
  ];
}

/** The readings of Ottersleigh at the torques that the sheet's screw needs for them. */
function sheetReadings({ torqueTimes }: SheetResult) {
  return readingsFromZero.map((reading) => ({
    ...reading,
    torque: known.drag + torqueTimes * (reading.torque - known.drag),
  }));
}

function Drawing(state: State) {
  const { width, height, plot, table, agreement } = state.narrow ? NARROW : WIDE;
  const result = resultOf(state);
  const scales = torqueScales(plot, TORQUE_ENDS, STRESS_ENDS);
  const { measured } = result;
  const { left, top, columns, rowHeight, width: tableWidth } = table;
  return (
    <Sheet idPrefix={state.idPrefix} size={{ width, height }}>
      <PredictionArea points={result.curve} scales={scales} withMiddle />
      <TorqueAxes state={state} scales={scales} />
      <ReadingMarks readings={sheetReadings(result)} scales={scales} />
      <StressInterval
        at={scales.x(result.topTorque)}
        low={scales.y(measured.stress - measured.expanded)}
        middle={scales.y(measured.stress)}
        high={scales.y(measured.stress + measured.expanded)}
        ink="steel"
      />
      <Checks
        result={result}
        system={state.system}
        left={left}
        top={top}
        columns={columns}
        rowHeight={rowHeight}
        width={tableWidth}
      />
      <text x={left} y={agreement.top + 15}>
        agreement number {agreementText(result.agreement)}
      </text>
      <AgreementScale frame={agreement} agreement={result.agreement} />
    </Sheet>
  );
}

/** The third figure of the lesson `theory-meets-measurement`. */
export const figure: Figure = { finding, description, notes, Drawing };
