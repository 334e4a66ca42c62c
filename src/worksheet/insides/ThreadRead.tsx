/** Under the box of a thread that no list has: the sizes that were read out of its name, in the units of such threads. */
import { threadByName } from '../../core/threads.ts';
import { formatQuantity } from '../../units/format-quantity.ts';
import { part } from '../kit/part.tsx';

/** The sentence; nothing where the name is that of a listed thread, or of none. */
export const ThreadRead = part((_, sheet) => {
  const read = threadByName(sheet.text('tensioner.thread.designation'));
  if (!read || read.isListed) return null;
  const told = (length: number, kind: 'length' | 'thickness') =>
    formatQuantity(length, kind, read.isInch ? 'us' : 'metric');
  return (
    <p class="hint">
      Taken as {told(read.majorDiameter, 'length')} across with a pitch of{' '}
      {told(read.pitch, 'thickness')}. Our list of standard threads does not have that: measure the
      pitch again over ten turns.
    </p>
  );
});
