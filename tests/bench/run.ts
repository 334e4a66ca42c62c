/** Timings, never run by `npm test`: prints one line for each. */
import { keyToPaint } from './key-to-paint.ts';
import { searchToPaint } from './search.ts';
import { sliderToPaint } from './slider-to-paint.ts';
import { withSite } from './slowed-browser.ts';
import { trialsAgainstMathjs } from './trials.ts';
import { worksheetEvaluation } from './worksheet.ts';

const inBrowser = await withSite(async (open) => [
  ...(await sliderToPaint(open)),
  ...(await keyToPaint(open)),
  ...(await searchToPaint(open)),
]);
for (const line of [...trialsAgainstMathjs(), ...worksheetEvaluation(), ...inBrowser]) {
  console.log(line);
}
