/** Timings, never run by `npm test`: prints one line for each. */
import { sliderToPaint } from './slider-to-paint.ts';
import { trialsAgainstMathjs } from './trials.ts';
import { worksheetEvaluation } from './worksheet.ts';

for (const line of [
  ...trialsAgainstMathjs(),
  ...worksheetEvaluation(),
  ...(await sliderToPaint()),
]) {
  console.log(line);
}
