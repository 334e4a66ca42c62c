/** Stiffness of band, frame and springs together, out of the turns noted beside the torques. */
import { part } from './part.tsx';
import { Hand, Result, Steel } from './Result.tsx';

/** What gives when the screw is turned; only where turns of the screw were noted. */
export const Stiffness = part((_, sheet) => {
  const rows = Array.from({ length: sheet.rows('readings') }, (_, row) => row);
  if (sheet.shown().load.name !== 'torque') return null;
  if (!rows.some((row) => sheet.text(`readings.${row}.turns`) !== '')) return null;
  return (
    <Result
      id="stiffness"
      name="Stiffness of the whole, by the turns noted"
      felt={false}
      formula={
        <>
          k = rise of{' '}
          <Steel>
            F<sub>w</sub>
          </Steel>{' '}
          ÷ (turns between · <Hand>l</Hand> ÷ a), over the straight part
        </>
      }
      outcome={sheet.result('turns')}
      write={(
        { totalStiffness, bandStiffness, supportStiffness, operands: o },
        { plain, quantity, number },
      ) => ({
        value: quantity(totalStiffness, 'stiffness'),
        beside:
          supportStiffness === undefined
            ? 'too close to the band’s own to tell the frame’s'
            : `frame and springs by themselves: ${quantity(supportStiffness, 'stiffness')}`,
        arithmetic: (
          <>
            <Steel>{plain(o.wheelForce, 'force')}</Steel> ÷ ({number(o.turns)} ×{' '}
            <Hand>{plain(o.lead, 'thickness')}</Hand>
            {o.advantage !== 1 && ` ÷ ${number(o.advantage)}`}) ={' '}
            {plain(totalStiffness, 'stiffness')}
          </>
        ),
        notes: [`The band alone, rolled round, would be ${plain(bandStiffness, 'stiffness')}.`],
      })}
    />
  );
});
