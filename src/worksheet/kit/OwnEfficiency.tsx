/** The screw's own efficiency out of the readings, with the line of errors in both as a comparison. */
import type { WorksheetResults } from '../../core/worksheet.ts';
import type { Shown } from '../state/shown.ts';
import { part } from './part.tsx';
import { Hand, Result, Steel } from './Result.tsx';

/** The line with errors in both directions, beside the slope that all readings give. */
function lineNote(
  line: WorksheetResults['line'] | undefined,
  slope: number,
  shown: Shown,
): string[] {
  if (!line?.ready) return [];
  const own = shown.plusMinus(line.slope, 2 * line.sdSlope, 'stressPerTorque');
  const widened = line.rescaled
    ? ', widened because the readings scatter more than they should'
    : '';
  return [
    `A line through the ${line.readingsUsed} straight readings rises ${own}${widened}; all readings together give ${shown.plain(slope, 'stressPerTorque')}.`,
  ];
}

/** Efficiency with its interval. */
export const OwnEfficiency = part((_, sheet) => {
  const measured = sheet.result('measured');
  const [top, drag] = measured?.ready
    ? [measured.topTorque, measured.dragTorque]
    : [Number.NaN, Number.NaN];
  return (
    <Result
      id="efficiency"
      name="The screw’s own efficiency"
      felt={false}
      formula={
        <>
          e = <Steel>σ</Steel> ÷ (<Hand>M</Hand> −{' '}
          <Hand>
            M<sub>0</sub>
          </Hand>
          ) · <Hand>l</Hand> · A · cos β ÷ (π · a)
        </>
      }
      outcome={sheet.result('efficiency')}
      write={({ efficiency, standardUncertainty, low, high, operands: o }, shown) => ({
        value: shown.plusMinus(efficiency, 2 * standardUncertainty, 'percent'),
        beside: `95 %: ${shown.range(low, high, 'percent')}`,
        arithmetic: (
          <>
            <Steel>{shown.plain(o.slope * (top - drag), 'stress')}</Steel> ×{' '}
            <Hand>{shown.plain(o.lead, 'thickness')}</Hand> × {shown.plain(o.area, 'area')}
            {o.strandHalfAngle !== 0 && ` × ${shown.number(Math.cos(o.strandHalfAngle))}`} ÷ (π
            {o.advantage !== 1 && ` × ${shown.number(o.advantage)}`} × (
            <Hand>{shown.smallTorque(top)}</Hand> − <Hand>{shown.smallTorque(drag)}</Hand>)) ={' '}
            {shown.plain(efficiency, 'percent')}
          </>
        ),
        notes: [
          'It comes from the readings above, so it cannot be checked against them.',
          ...lineNote(sheet.result('line'), o.slope, shown),
        ],
      })}
    />
  );
});
