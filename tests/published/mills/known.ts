/** The numbers of a part of the worksheet that must be there. */
import type { Outcome } from '../../../src/core/worksheet/outcome.ts';
import { numbersOf } from '../../core/fixtures/ready.ts';

/** The outcome's numbers without its mark, to hand on as inputs. @throws Error where they are not there */
export function known<Value>(outcome: Outcome<Value>): Value {
  const { ready: _, ...numbers } = numbersOf(outcome);
  return numbers as Value;
}
