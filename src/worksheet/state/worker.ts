/** Answers questions away from the page's own thread. */
import { answerTo, type Question } from './answers.ts';

addEventListener('message', ({ data }: MessageEvent<Question>) => postMessage(answerTo(data)));
