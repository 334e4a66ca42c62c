/** What each named way of setting comes to. */
import type { JSX } from 'preact';
import type { Outcome, WayStress } from '../../core/worksheet.ts';
import { part } from '../kit/part.tsx';
import { Result, Steel } from '../kit/Result.tsx';

interface WayResultProps {
  readonly id: string;
  readonly name: string;
  readonly formula: string;
  readonly outcome: Outcome<WayStress> | undefined;
}

function WayResult({ id, name, formula, outcome }: WayResultProps): JSX.Element {
  return (
    <Result
      id={id}
      name={name}
      formula={
        <>
          <Steel>σ</Steel> {formula}
        </>
      }
      outcome={outcome}
      write={(way, { plusMinus, range, plain }) => ({
        value: plusMinus(way.stress, way.expandedUncertainty, 'stress'),
        beside: `95 %: ${range(way.low, way.high, 'stress')}`,
        arithmetic: (
          <>
            <Steel>{plain(way.stress, 'stress')}</Steel>, a stretch of{' '}
            <Steel>{plain(way.stretch, 'stretch')}</Steel>
          </>
        ),
      })}
    />
  );
}

/** By its torque, by its own readings, or both. */
export const WayResults = part((_, sheet) => {
  const { load } = sheet.shown();
  return (
    <>
      {(sheet.result('ways') ?? []).flatMap((way, place) => {
        const name = way.name || `Way ${place + 1}`;
        const hasReadings = sheet.rows(`ways.${place}.readings`) > 0;
        const hasTorque = sheet.text(`ways.${place}.${load.name}`) !== '' || !hasReadings;
        const byTorque = (
          <WayResult
            key={`${place}-torque`}
            id={`way-${place}-torque`}
            name={hasReadings ? `${name}, by its ${load.name}` : name}
            formula={`on the straight line, at its ${load.name}`}
            outcome={way.fromTorque}
          />
        );
        const byReadings = (
          <WayResult
            key={`${place}-readings`}
            id={`way-${place}-readings`}
            name={hasTorque ? `${name}, by its own readings` : name}
            formula="from the mean of its readings, above the zero"
            outcome={way.fromReadings}
          />
        );
        return [hasTorque && byTorque, hasReadings && byReadings].filter(Boolean);
      })}
    </>
  );
});
