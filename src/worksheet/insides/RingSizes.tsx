/** The two diameters of the ring that rubs under the nut or the screw's head. */
import { washerDiameterSpread } from '../../core/worksheet.ts';
import { Box } from '../kit/Box.tsx';
import { part } from '../kit/part.tsx';

const RING = ['tensioner.collar.outerDiameter', 'tensioner.collar.innerDiameter'] as const;

/** The ring's two diameters, with those of the thread's washer to be taken. */
export const RingSizes = part<{ readonly isWasher: boolean }>(({ isWasher }, sheet) => {
  const screw = sheet.result('screw');
  const { plain } = sheet.shown();
  const [outer, inner] = RING;
  const offered = screw?.ready &&
    screw.washer && {
      [outer]: plain(screw.washer.outerDiameter, 'length'),
      [inner]: plain(screw.washer.innerDiameter, 'length'),
    };
  const isOpen = RING.some((path) => sheet.text(path) === '');
  return (
    <>
      <Box path={outer} />
      <Box path={inner} />
      {isWasher && offered && isOpen && (
        <p class="hint">
          The plain washer of your thread is {offered[outer]} across with a hole of {offered[inner]}
          . Left empty, it stands for yours, give or take {100 * washerDiameterSpread} %.{' '}
          <button
            type="button"
            class="button plain"
            onClick={() => {
              const texts = RING.map((path) => [path, offered[path]] as const);
              sheet.run({ do: 'fill', path: outer, texts });
            }}
          >
            Take these
          </button>
        </p>
      )}
    </>
  );
});
