/** The first step of the hands: the handle on the slack band, and the no-load torque that it shows. */
import { say } from '../words/say.ts';
import { triesInWords } from '../words/tries-words.ts';
import { Box } from './Box.tsx';
import type { DeskProps } from './desk.ts';
import { Told } from './Told.tsx';

/** What the owner knows, the try, and the box for what was found. */
export function SlackStep({ desk }: { readonly desk: DeskProps }) {
  const { view, press } = desk;
  const { system } = view.bench;
  const { dragTorque } = view.mill.told;
  const owner =
    dragTorque === undefined
      ? 'Nobody has tried it at this mill.'
      : `The owner found ${say(dragTorque, 'torque', system)}.`;
  return (
    <section class="bench-step">
      <h2>1 Try the slack handle</h2>
      <p class="hint">The lowest torque that turns it is the no-load torque. {owner}</p>
      <Box name="slack" label="Try with" system={system} desk={desk} onEnter={() => press('try')} />
      <button class="button" type="button" onClick={() => press('try')}>
        Try the handle on the slack band
      </button>
      <Told title="Tried" lines={triesInWords(view)} />
      <Box name="drag" label="No-load torque, as I found it" system={system} desk={desk} />
    </section>
  );
}
