/**
 * Theory meets measurement: the prediction as an area over torque, the readings with their errors on top, and between
 * them the lines that whoever draws it puts in. The same drawing in the lesson and on the worksheet.
 * Units: SI in the points; drawing units otherwise.
 */
import type { ComponentChildren } from 'preact';
import { type PlottedPrediction, PredictionArea } from './PredictionArea.tsx';
import { type PlottedReading, ReadingMarks } from './ReadingMarks.tsx';
import type { TorqueScales } from './scales.ts';
import { type PlotView, TorqueAxes } from './TorqueAxes.tsx';

interface StressPlotProps {
  readonly state: PlotView;
  readonly scales: TorqueScales;
  readonly prediction: readonly PlottedPrediction[];
  readonly withMiddle?: boolean | undefined;
  readonly readings: readonly PlottedReading[];
  /** Numbers and name under the level axis. */
  readonly numbered?: boolean | undefined;
  /** The lines, under the readings. */
  readonly children?: ComponentChildren;
}

/** The plot of stress over torque. */
export function StressPlot(props: StressPlotProps) {
  const { state, scales, prediction, withMiddle, readings, numbered, children } = props;
  return (
    <g>
      {prediction.length > 0 && (
        <PredictionArea points={prediction} scales={scales} withMiddle={withMiddle} />
      )}
      <TorqueAxes state={state} scales={scales} numbered={numbered} />
      {children}
      <ReadingMarks readings={readings} scales={scales} />
    </g>
  );
}
