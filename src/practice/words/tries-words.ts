/** What each try of the slack handle showed, in words. */
import { turnsSlack } from '../../core/bench.ts';
import type { View } from '../state/view.ts';
import { say } from './say.ts';

/** Try by try. */
export const triesInWords = ({ bench, mill }: View): readonly string[] =>
  bench.tries.map((torque, at) => {
    const set = say(torque, 'torque', bench.system);
    return turnsSlack(mill, torque, at)
      ? `${set}: the handle turns`
      : `${set}: the wrench clicks, the handle stays`;
  });
