/** Answers questions away from the page's own thread. */
import { answerTo, type Question } from './answers.ts';
import { newsOnly } from './news.ts';

const news = newsOnly();

addEventListener('message', ({ data }: MessageEvent<Question>) =>
  postMessage(news(answerTo(data))),
);
