/** Under the box of a thread that no list has: the sizes that were read out of its name. */
import { threadByName } from '../../core/threads.ts';
import { part } from '../kit/part.tsx';

/** The sentence; nothing where the name is that of a listed thread, or of none. */
export const ThreadRead = part((_, sheet) => {
  const read = threadByName(sheet.text('tensioner.thread.designation'));
  if (!read || read.isListed) return null;
  const { quantity } = sheet.shown();
  const across = quantity(read.majorDiameter, 'length');
  return (
    <p class="hint">
      Taken as {across} across with a pitch of {quantity(read.pitch, 'thickness')}. Not a pitch that
      our list of standard threads has for {across}: measure it again over ten turns.
    </p>
  );
});
