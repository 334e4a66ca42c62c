/** The efficiency of screw or cylinder out of the readings, with the line of errors in both as a comparison. */
import type { WorksheetResults } from '../../core/worksheet.ts';
import type { Shown } from '../state/shown.ts';
import { DividedBy, Letter, NoLoad, PerLoad, Times, TimesSection } from './Pull.tsx';
import { part } from './part.tsx';
import { Hand, Result, Steel } from './Result.tsx';

/** The line with errors in both directions, beside the slope that all readings give. */
function lineNote(
  line: WorksheetResults['line'] | undefined,
  slope: number,
  shown: Shown,
): string[] {
  if (!line?.ready) return [];
  const kind = shown.load.name === 'torque' ? 'stressPerTorque' : 'ratio';
  const own = shown.plusMinus(line.slope, 2 * line.sdSlope, kind);
  const widened = line.rescaled
    ? ', widened because the readings scatter more than they should'
    : '';
  return [
    `A line through the ${line.readingsUsed} straight readings rises ${own}${kind === 'ratio' ? ' times the pressure' : ''}${widened}; all readings together give ${shown.plain(slope, kind)}.`,
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
      name={
        sheet.shown().load.name === 'torque'
          ? 'The screw’s own efficiency'
          : 'Share of the pressure that arrives'
      }
      felt={false}
      formula={
        <>
          e = <Steel>σ</Steel> ÷ (<Letter /> − <NoLoad />) · <TimesSection /> ÷ (<PerLoad />)
        </>
      }
      outcome={sheet.result('efficiency')}
      write={({ efficiency, standardUncertainty, low, high, operands: o }, shown) => ({
        value: shown.plusMinus(efficiency, 2 * standardUncertainty, 'percent'),
        beside: `95 %: ${shown.range(low, high, 'percent')}`,
        arithmetic: (
          <>
            <Steel>{shown.plain(o.slope * (top - drag), 'stress')}</Steel> × <Times of={o} /> ÷ (
            <DividedBy of={o} /> × (<Hand>{shown.smallLoad(top)}</Hand> −{' '}
            <Hand>{shown.smallLoad(drag)}</Hand>)) = {shown.plain(efficiency, 'percent')}
          </>
        ),
        notes: [
          'It comes from the readings above, so it cannot be checked against them.',
          ...(efficiency > 1
            ? ['No more than everything can arrive: within its uncertainty, this is everything.']
            : []),
          ...lineNote(sheet.result('line'), o.slope, shown),
        ],
      })}
    />
  );
});
