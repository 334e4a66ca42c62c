/**
 * Asks two workers, one what is quick and one what takes long, so that a long question broken off costs the quick ones no
 * new start. Each is asked one question at a time, the most urgent first; of several about the same thing the newest is
 * asked, and an answer to an older one is dropped. Typing never waits. Where no worker starts, what is quick is worked
 * out on the page's own thread, the prediction once it rests; long trials and plans are left out, and the interval to first
 * order stands.
 */
import type { Answers, Question } from './answers.ts';

/** As much of a worker as is needed; a test brings its own. */
export interface Answerer {
  readonly ask: (question: Question) => void;
  readonly end: () => void;
}

/** Starts someone who answers; `failed` is told when no one can. */
export type Start = (answered: (answers: Answers) => void, failed: () => void) => Answerer;

/** A worker of the browser's. @throws where the browser has none */
export const inWorker: Start = (answered, failed) => {
  const worker = new Worker(new URL('./worker.ts', import.meta.url), { type: 'module' });
  worker.onmessage = ({ data }: MessageEvent<Answers>) => answered(data);
  worker.onerror = failed;
  return { ask: (question) => worker.postMessage(question), end: () => worker.terminate() };
};

const RESTED = 200; // ms

/** The page's own thread. */
export const onThisThread: Start = (answered) => ({
  ask: (question) => {
    if (question.about === 'stress') return answered({});
    if (question.about === 'plan') return answered({ plan: { key: question.key } });
    setTimeout(async () => {
      const { answerTo } = await import('./answers.ts');
      answered(answerTo(question));
    }, RESTED);
  },
  end: () => {},
});

const URGENT_FIRST = ['results', 'stress', 'plan'] as const;
const LONG: ReadonlySet<Question['about']> = new Set(['stress', 'plan']);

/** Whether a question that is out takes long, and another is at least as urgent. */
const isOvertaken = (out: Question, { about }: Question): boolean =>
  LONG.has(out.about) && URGENT_FIRST.indexOf(about) <= URGENT_FIRST.indexOf(out.about);

/** Is told the answer to a question. */
type Tell = (answers: Answers, question: Question) => void;

/** Keeps the questions and who answers them. */
export class Asker {
  private start: Start;
  private readonly tell: Tell;
  private readonly wanted = new Map<Question['about'], Question>();
  private answerer: Answerer | undefined;
  private asked: Question | undefined;

  constructor(tell: Tell, start: Start = inWorker) {
    this.tell = tell;
    this.start = start;
  }

  /** Asks as soon as no other question is out; a long one that is overtaken is broken off. */
  ask(question: Question): void {
    const { asked } = this;
    if (asked && isOvertaken(asked, question)) {
      this.wanted.set(asked.about, asked); // unless this one takes its place
      this.breakOff();
    }
    this.wanted.set(question.about, question);
    this.next();
  }

  /** Forgets what was to be asked about something. */
  forget(about: Question['about']): void {
    this.wanted.delete(about);
    if (this.asked?.about === about) this.breakOff();
    this.next();
  }

  private breakOff(): void {
    this.answerer?.end();
    this.answerer = undefined;
    this.asked = undefined;
  }

  private next(): void {
    const about = URGENT_FIRST.find((each) => this.wanted.has(each));
    const question = about && this.wanted.get(about);
    if (this.asked || !question) return;
    this.wanted.delete(question.about);
    this.asked = question;
    this.started()?.ask(question);
  }

  private started(): Answerer | undefined {
    if (this.answerer) return this.answerer;
    let mine: Answerer | undefined;
    const isMine = () => mine !== undefined && mine === this.answerer;
    try {
      mine = this.start(
        (answers) => isMine() && this.answered(answers),
        () => isMine() && this.failed(),
      );
    } catch {
      return this.failed();
    }
    this.answerer = mine;
    return mine;
  }

  private answered(answers: Answers): void {
    const question = this.asked;
    this.asked = undefined;
    if (question && !this.wanted.has(question.about)) this.tell(answers, question);
    this.next();
  }

  private failed(): undefined {
    if (this.start === onThisThread) return;
    this.start = onThisThread;
    const again = this.asked;
    this.breakOff();
    if (again) this.ask(again);
  }
}

/** Who is asked, and what is no longer wanted of. */
export type AnyAsker = Pick<Asker, 'ask' | 'forget'>;

/** The asker of what is quick and that of what takes long, as one; the second worker starts with its first question. */
export function twoAskers(tell: Tell, start?: Start): AnyAsker {
  const [quick, patient] = [new Asker(tell, start), new Asker(tell, start)];
  const askerOf = (about: Question['about']) => (LONG.has(about) ? patient : quick);
  return {
    ask: (question) => askerOf(question.about).ask(question),
    forget: (about) => askerOf(about).forget(about),
  };
}
