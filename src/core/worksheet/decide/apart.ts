/**
 * Whether calculation and measurement are both there and do not agree.
 * Units: none.
 * Source: definition; the verdict is that of agreement.ts.
 */
import type { Outcome } from '../outcome.ts';
import type { AgreementResult } from './agreement.ts';

/** What is known of the agreement, if anything. */
export interface Compared {
  readonly agreement: Outcome<AgreementResult> | undefined;
}

/** True only where both are there. */
export const isApart = ({ agreement }: Compared): boolean =>
  agreement?.ready === true && agreement.verdict !== 'agree';
