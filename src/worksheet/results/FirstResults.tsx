/** What screw and rig come to before there is a reading. */
import { part } from '../kit/part.tsx';
import { Hand, MoreResults, Result, Steel } from '../kit/Result.tsx';

/** The share of the work that the screw should pass on; of a cylinder, of its force. */
export const ScrewEfficiency = part((_, sheet) => {
  const hasWasher =
    sheet.chosen('tensioner.collar.kind') === 'washer' &&
    sheet.chosen('tensioner.friction.kind') === 'friction';
  const isScrew = sheet.shown().load.name === 'torque';
  return (
    <Result
      id="screw"
      name={
        isScrew
          ? 'Share of your work that the screw should pass on'
          : 'Share of the pressure that should arrive'
      }
      felt={false}
      formula={
        isScrew ? (
          <>
            e = <Hand>l</Hand> ÷ (2π · torque for a thrust of one)
          </>
        ) : (
          'e = 1 − what the seal takes'
        )
      }
      outcome={sheet.result('screw')}
      write={(
        { drive, efficiency, efficiencyLow, efficiencyHigh },
        { plain, quantity, range },
      ) => ({
        value: quantity(efficiency, 'percent'),
        beside: range(efficiencyLow, efficiencyHigh, 'percent'),
        arithmetic: (
          <>
            {plain(efficiency, 'percent')} at the middle of the range, with{' '}
            {drive.kind === 'screw' ? (
              <>
                a lead of <Hand>{plain(drive.lead, 'thickness')}</Hand> to a turn
              </>
            ) : (
              <>
                oil on <Hand>{plain(drive.pistonArea, 'area')}</Hand>
              </>
            )}
          </>
        ),
        notes:
          isScrew && hasWasher
            ? ['The range is for the thread alone; the washer’s uncertainty is added.']
            : [],
      })}
    />
  );
});

/** What one graduation comes to: how much a longer bar would be worth. */
const Graduation = part((_, sheet) => {
  return (
    <Result
      id="graduation"
      name="Stress for one graduation"
      formula={
        <>
          <Steel>σ</Steel> = <Hand>E</Hand> · <Hand>one graduation</Hand> ÷ <Hand>L₀</Hand>
        </>
      }
      outcome={sheet.result('graduation')}
      write={({ stress, operands: own }, { plain, quantity }) => ({
        value: quantity(stress, 'stress'),
        arithmetic: (
          <>
            <Hand>{plain(own.youngsModulus, 'modulus')}</Hand> ×{' '}
            <Hand>{plain(own.graduation, 'stretch')}</Hand> ÷{' '}
            <Hand>{plain(own.gaugeLength, 'length')}</Hand> ={' '}
            <Steel>{plain(stress, 'stress')}</Steel>
          </>
        ),
        notes: ['A longer bar makes it smaller. That is the cheapest way to read better.'],
      })}
    />
  );
});

/** The same behind a title. */
export const FinenessFold = () => (
  <MoreResults name="How fine it reads">
    <Graduation />
  </MoreResults>
);
