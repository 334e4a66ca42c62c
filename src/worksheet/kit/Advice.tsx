/** Beside a measurement that is rough, or gives no stress: what would help most. Fetched when it is wanted. */
import { late } from './late.tsx';
import { part } from './part.tsx';

const Place = () => <div class="advice" />;
const LateHelp = late(() => import('../plan/Help.tsx'), 'Help', <Place />);

/** The advice; nothing beside a good measurement. */
export const Advice = part((_, sheet) => {
  const grade = sheet.result('verdict')?.grade;
  const isWanted = grade === 'rough' || grade === 'none';
  return isWanted && sheet.openParts.value.has('readings') ? <LateHelp /> : null;
});
