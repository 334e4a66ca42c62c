/** Timings, never run by `npm test`: prints one line for each. */
import { sliderToPaint } from './slider-to-paint.ts';
import { trialsAgainstMathjs } from './trials.ts';

for (const line of [...(await sliderToPaint()), ...trialsAgainstMathjs()]) console.log(line);
