/** Our figures for all published cases. */
import type { Answers } from './answer.ts';
import { agreementAnswers } from './answers/agreement.ts';
import { beltAnswers } from './answers/belts.ts';
import { elasticityAnswers } from './answers/elasticity.ts';
import { endGaugeAnswers } from './answers/end-gauge.ts';
import { gaugeBlockAnswers } from './answers/gauge-block.ts';
import { lineAnswers } from './answers/lines.ts';
import { materialAnswers } from './answers/materials.ts';
import { angledScrewAnswers } from './answers/screws-angled.ts';
import { squareScrewAnswers } from './answers/screws-square.ts';
import { spanAnswers } from './answers/spans.ts';
import { threadAnswers } from './answers/threads.ts';
import { trialAnswers } from './answers/trials.ts';
import { uncertaintyAnswers } from './answers/uncertainty.ts';
import { unitAnswers } from './answers/units.ts';
import { univariateAnswers } from './answers/univariate.ts';

export const allAnswers: Answers = {
  ...squareScrewAnswers,
  ...angledScrewAnswers,
  ...threadAnswers,
  ...beltAnswers,
  ...elasticityAnswers,
  ...spanAnswers,
  ...lineAnswers,
  ...univariateAnswers,
  ...endGaugeAnswers,
  ...uncertaintyAnswers,
  ...trialAnswers,
  ...gaugeBlockAnswers,
  ...agreementAnswers,
  ...unitAnswers,
  ...materialAnswers,
};
