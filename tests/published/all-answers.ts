/** Our figures for all published cases. */
import type { Answers } from './answer.ts';
import { agreementAnswers } from './answers/agreement.ts';
import { beltAnswers } from './answers/belts.ts';
import { elasticityAnswers } from './answers/elasticity.ts';
import { lineAnswers } from './answers/lines.ts';
import { materialAnswers } from './answers/materials.ts';
import { screwAnswers } from './answers/screws.ts';
import { spanAnswers } from './answers/spans.ts';
import { threadAnswers } from './answers/threads.ts';
import { trialAnswers } from './answers/trials.ts';
import { uncertaintyAnswers } from './answers/uncertainty.ts';
import { unitAnswers } from './answers/units.ts';
import { univariateAnswers } from './answers/univariate.ts';

export const allAnswers: Answers = {
  ...screwAnswers,
  ...threadAnswers,
  ...beltAnswers,
  ...elasticityAnswers,
  ...spanAnswers,
  ...lineAnswers,
  ...univariateAnswers,
  ...uncertaintyAnswers,
  ...trialAnswers,
  ...agreementAnswers,
  ...unitAnswers,
  ...materialAnswers,
};
