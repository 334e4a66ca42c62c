/** Keeps the slow answers in step with the sheet: the prediction at once, the stress by trials after a rest. */
import { effect, type ReadonlySignal, signal } from '@preact/signals-core';
import { emptyWorksheet } from '../../core/worksheet.ts';
import { curveTorques } from '../chart/of-results.ts';
import type { Answers, Question } from './answers.ts';
import { Asker, type Start } from './asker.ts';
import { lasting } from './lasting.ts';
import type { Reckoning } from './results.ts';

const REST = 500; // ms without a change

/** The newest answers; what they are about is asked only when it has changed. */
export function keepAnswers({ read, results }: Reckoning, start?: Start): ReadonlySignal<Answers> {
  const found = signal<Answers>({});
  const asker = new Asker((answers) => {
    found.value = { ...found.peek(), ...answers };
  }, start);
  const prediction = lasting((): Question | undefined => {
    const { predicted, points } = results.value;
    if (!predicted.ready && !points.ready) return undefined;
    const { mill, band, tensioner, readings } = read.value.worksheet;
    const worksheet = { ...emptyWorksheet, mill, band, tensioner, readings };
    return { about: 'prediction', worksheet, torques: curveTorques(results.value) };
  });
  const stress = lasting((): Question | undefined => {
    const { target: _, label: __, ...measured } = read.value.worksheet;
    if (!results.value.measured.ready) return undefined;
    return { about: 'stress', worksheet: { ...emptyWorksheet, ...measured } };
  });
  effect(() => {
    const question = prediction.value;
    const { prediction: last, ...others } = found.peek();
    // The old curve stays drawn until the new one is there; its numbers are no longer said.
    found.value =
      question && last
        ? { ...others, prediction: { curve: last.curve, trials: undefined } }
        : others;
    if (question) asker.ask(question);
    else asker.forget('prediction');
  });
  effect(() => {
    const question = stress.value;
    found.value = { ...found.peek(), stress: undefined };
    asker.forget('stress');
    if (!question) return undefined;
    const waiting = setTimeout(() => asker.ask(question), REST);
    return () => clearTimeout(waiting);
  });
  return found;
}
