/** How to take readings, the caution first, and the rows to write them into. */
import type { JSX } from 'preact';
import { CLAMPS_FROM_WHEELS } from '../../form/fields.ts';
import { Both } from '../kit/Box.tsx';
import { part } from '../kit/part.tsx';
import { MarksAsked } from '../rows/MarksAsked.tsx';
import { ReadingRows } from '../rows/ReadingRows.tsx';
import { AnotherSeries } from '../rows/Series.tsx';
import { TurnsAsked } from '../rows/TurnsAsked.tsx';
import { WithTurns } from '../rows/WithTurns.tsx';

function Caution(): JSX.Element {
  return (
    <aside class="caution" aria-label="Caution">
      <p class="caution-word">CAUTION</p>
      <ul>
        <li>
          Switch the power off and lock it out; take the key, plug or spark-plug lead away; wait
          until the wheels are still. Only then bring a hand or a clamp near the band. Never measure
          on a moving band.
        </li>
        <li>
          Wear gloves and eye protection. Tighten slowly, and stand out of the plane of the band:
          under tension it can leave the wheels. A coiled band stores more energy than a tensioned
          one, and lets go in the hands.
        </li>
        <li>
          Stay within the limits of the mill’s and the band’s makers, whatever this sheet says.
        </li>
        <li>
          Afterwards remove the bar, dial and clamps, count them, and let the tension off as the
          mill’s maker says. Local rules and a qualified person come first.
        </li>
      </ul>
    </aside>
  );
}

const HowTo = part((_, sheet) => (
  <ul class="how">
    <li>
      Clamp at least <Both {...CLAMPS_FROM_WHEELS} kind="length" /> from wheels and guides, near the
      middle of the body.
    </li>
    <li>
      Take eight to twelve steps from about a tenth of the load, always {sheet.shown().load.turning}
      , never above what a maker allows.
    </li>
    <li>
      At each step read the {sheet.shown().load.name} {sheet.shown().load.moving}, then the dial. If
      you go past a step, do not go back: write down the {sheet.shown().load.name} you reached and
      go on.
    </li>
    {sheet.chosen('rig.dialWritten') !== 'together' && (
      <li>
        A turn counts each time the dial’s hand passes zero, wherever it started. Write 1 from the
        first pass on, 2 from the second, whichever way it runs.
      </li>
    )}
  </ul>
));

/** All of it. */
export function ReadingsBoxes(): JSX.Element {
  return (
    <>
      <Caution />
      <p class="how needs-script no-print">
        Not at the mill yet? <a href="#plan">Plan your measurement first</a>.
      </p>
      <HowTo />
      <p class="hint wedge">
        The Enter key goes to the next row, so a gauge that types can fill the column. A table can
        be pasted.
      </p>
      <WithTurns />
      <ReadingRows />
      <MarksAsked />
      <TurnsAsked />
      <AnotherSeries />
    </>
  );
}
