/** Named ways of setting: a mark, a feel, a count; each with its torque or readings of its own. */
import type { JSX } from 'preact';
import { mostRows } from '../../form/paths.ts';
import { BoxInput, BoxTrouble, Unit } from '../kit/Box.tsx';
import { idOf } from '../kit/ids.ts';
import { part } from '../kit/part.tsx';
import { WordsInput } from '../kit/WordsBox.tsx';

const WayReadings = part<{ readonly place: number }>(({ place }, sheet) => {
  const list = `ways.${place}.readings` as const;
  const count = Math.min(sheet.rows(list) + 1, mostRows(list));
  return (
    <table class="readings way-readings">
      <caption class="hint">
        Or let the band off, set it your way, and read the dial. Do this several times
      </caption>
      <thead>
        <tr>
          <th scope="col">
            <span class="visually-hidden">Row</span>
          </th>
          <th scope="col">
            Dial shows{' '}
            <span class="unit">
              <Unit kind="stretch" />
            </span>
          </th>
          <th scope="col">Turns of the hand</th>
        </tr>
      </thead>
      <tbody>
        {Array.from({ length: count }, (_, row) => {
          const path = `${list}.${row}` as const;
          return (
            <tr key={row}>
              <th scope="row">{row + 1}</th>
              {(['dial', 'wholeTurns'] as const).map((cell) => (
                <td key={cell}>
                  <BoxInput
                    path={`${path}.${cell}`}
                    label={`Way ${place + 1}, ${cell === 'dial' ? 'dial' : 'turns of the hand'}, reading ${row + 1}`}
                    row={row}
                  />
                  <BoxTrouble path={`${path}.${cell}`} />
                </td>
              ))}
            </tr>
          );
        })}
      </tbody>
    </table>
  );
});

const WayBoxes = part<{ readonly place: number }>(({ place }, sheet): JSX.Element => {
  const { load } = sheet.shown();
  const [name, torque] = [`ways.${place}.name`, `ways.${place}.${load.name}`] as const;
  return (
    <div class="way">
      <div class="field">
        <label for={idOf(name)}>{place === 0 ? 'A way of setting' : 'Another way'}</label>
        <div class="field-box is-wide">
          <WordsInput path={name} />
        </div>
        <BoxTrouble path={name} />
      </div>
      <div class="field">
        <label for={idOf(torque)}>Its {load.name}</label>
        <div class="field-box">
          <BoxInput path={torque} />
          <span class="unit">
            <Unit kind={load.name} />
          </span>
        </div>
        <BoxTrouble path={torque} />
      </div>
      <WayReadings place={place} />
    </div>
  );
});

/** Every way, and one more to fill in. */
export const Ways = part((_, sheet) => {
  const count = Math.min(sheet.rows('ways') + 1, mostRows('ways'));
  return Array.from({ length: count }, (_, place) => <WayBoxes place={place} key={place} />);
});
