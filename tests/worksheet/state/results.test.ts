/** What a sheet comes to, by way of a worker that answers when the test lets it. */
import { signal } from '@preact/signals-core';
import { afterEach, beforeEach, describe, expect, it, vi } from 'vitest';
import { evaluateWorksheet } from '../../../src/core/worksheet.ts';
import { DOCUMENT_FORMAT } from '../../../src/form/document.ts';
import type { FieldPath } from '../../../src/form/paths.ts';
import { sheetReader } from '../../../src/form/reading.ts';
import { readDocument } from '../../../src/form/schema.ts';
import { answerTo, type Question } from '../../../src/worksheet/state/answers.ts';
import type { Start } from '../../../src/worksheet/state/asker.ts';
import { apply, emptyProject, type Project } from '../../../src/worksheet/state/project.ts';
import { reckon } from '../../../src/worksheet/state/results.ts';
import exampleA from '../../form/fixtures/version-1/example-a.json' with { type: 'json' };

/** An invented mill with readings. */
function filledProject(): Project {
  const read = readDocument(exampleA);
  if (typeof read === 'string') throw new Error(`${DOCUMENT_FORMAT}: ${read}`);
  return apply(emptyProject('metric'), { do: 'load', document: read.document });
}

/** A reckoning whose worker answers one question at each `turn`. */
function bench(first: Project) {
  const project = signal(first);
  const asked: Question[] = [];
  let answer: Parameters<Start>[0] = () => {};
  const reckoning = reckon(project, (answered) => {
    answer = answered;
    return { ask: (question) => void asked.push(question), end: () => {} };
  });
  const turn = () => answer(answerTo(asked.at(-1) as Question));
  const type = (path: FieldPath, text: string) => {
    project.value = apply(project.value, { do: 'type', path, text });
  };
  return { project, reckoning, asked, turn, type, about: () => asked.map((each) => each.about) };
}

beforeEach(() => void vi.useFakeTimers());
afterEach(() => void vi.useRealTimers());

describe('the results', () => {
  it('of a blank sheet are there at once, and no one is asked', () => {
    const { reckoning, asked } = bench(emptyProject('metric'));
    const { worksheet } = sheetReader()({}, 'metric');
    expect(reckoning.results.value).toEqual(evaluateWorksheet(worksheet));
    expect([asked, reckoning.isBehind.value]).toEqual([[], false]);
  });

  it('of a kept sheet come once, with their prediction', () => {
    const { project, reckoning, turn } = bench(filledProject());
    expect([reckoning.results.value, reckoning.isBehind.value]).toEqual([undefined, true]);
    turn();
    expect(reckoning.answers.prediction?.trials?.low).toBeGreaterThan(0);
    const { worksheet } = sheetReader()(project.value.typed, 'metric');
    expect(reckoning.results.value).toEqual(evaluateWorksheet(worksheet));
    expect(reckoning.isBehind.value).toBe(false);
  });

  it('are asked for again by what they hang on, and keep what has not changed', () => {
    const { reckoning, asked, turn, type } = bench(emptyProject('metric'));
    type('label', 'M');
    expect(asked).toEqual([]);
    type('band.bodyWidth', '29');
    type('band.thickness', '1');
    turn(); // to the first of two
    turn();
    const before = reckoning.results.value;
    expect(before?.section).toMatchObject({ ready: true });
    type('target.stress', '110');
    turn();
    const after = reckoning.results.value;
    expect(after).not.toBe(before);
    expect(after?.section).toBe(before?.section);
    expect(after?.zero).toBe(before?.zero);
  });
});

describe('the slow answers', () => {
  it('are the prediction, at once, and for who looks the stress by trials, after a rest', () => {
    const { reckoning, turn, about } = bench(filledProject());
    turn();
    expect(about()).toEqual(['results']);
    const { prediction } = reckoning.answers;
    const { predicted } = reckoning.results.value ?? {};
    const top = predicted?.ready ? predicted.operands.torque : Number.NaN;
    expect(prediction?.curve.find(({ torque }) => torque === top)?.low).toBeCloseTo(
      prediction?.trials?.low ?? Number.NaN,
      3,
    );
    vi.advanceTimersByTime(10_000);
    reckoning.wantsTrials.value = true;
    vi.advanceTimersByTime(499);
    expect(about()).toEqual(['results']);
    vi.advanceTimersByTime(1);
    expect(about()).toEqual(['results', 'stress']);
    turn();
    expect(reckoning.answers.stress?.low).toBeGreaterThan(0);
    reckoning.wantsTrials.value = false;
    expect(reckoning.answers.stress).toBeUndefined();
  });

  it('are not said of another sheet: they go and come with the results that they belong to', () => {
    const { reckoning, turn, type } = bench(filledProject());
    turn();
    const [results, prediction] = [reckoning.results.value, reckoning.answers.prediction];
    type('band.thickness', '1.1');
    expect(reckoning.results.value).toBe(results);
    expect(reckoning.answers.prediction).toBe(prediction);
    turn();
    expect(reckoning.results.value).not.toBe(results);
    expect(reckoning.answers.prediction?.trials).not.toEqual(prediction?.trials);
    expect(reckoning.answers.stress).toBeUndefined();
    type('band.thickness', '');
    turn();
    expect(reckoning.answers.prediction?.trials).toBeUndefined();
  });

  it('of a sheet on the way are dropped, for who types on', () => {
    const { reckoning, turn, type } = bench(filledProject());
    turn();
    const before = reckoning.results.value;
    type('band.thickness', '1.1');
    type('band.thickness', '1.13');
    turn();
    expect([reckoning.results.value, reckoning.isBehind.value]).toEqual([before, true]);
    turn();
    expect(reckoning.results.value).not.toBe(before);
    expect(reckoning.isBehind.value).toBe(false);
  });

  it('bring the same prediction when the dial or the target moves a little', () => {
    const { reckoning, turn, type, about } = bench(filledProject());
    turn();
    const before = reckoning.answers.prediction;
    const setting = () => {
      const { setting } = reckoning.results.value ?? {};
      return setting?.ready ? setting.torque : Number.NaN;
    };
    const atFirst = setting();
    type('readings.5.dial', '0.431');
    turn();
    type('target.stress', '111');
    turn();
    expect(setting()).not.toBe(atFirst);
    expect(about()).toEqual(['results', 'results', 'results']);
    expect(reckoning.answers.prediction).toBe(before);
  });

  it('take no second prediction for another dial reading, and one for another band', () => {
    const [project, read] = [filledProject(), sheetReader()];
    const predictionWith = (path: FieldPath, text: string) => {
      const { typed } = apply(project, { do: 'type', path, text });
      return answerTo({ about: 'results', worksheet: read(typed, 'metric').worksheet }).prediction;
    };
    const first = predictionWith('readings.5.dial', '0.431');
    expect(first?.curve.length).toBeGreaterThan(0);
    expect(predictionWith('readings.5.dial', '0.432')).toBe(first);
    expect(predictionWith('band.thickness', '1.1')).not.toBe(first);
  });

  it('stay where a key changes nothing that they hang on', () => {
    const { reckoning, turn, type, about } = bench(filledProject());
    reckoning.wantsTrials.value = true;
    turn();
    vi.advanceTimersByTime(500);
    turn();
    const before = { ...reckoning.answers };
    type('label', 'Another');
    type('target.yieldStrength', '1000');
    turn();
    expect(about()).toEqual(['results', 'stress', 'results']);
    expect({ ...reckoning.answers }).toEqual(before);
  });
});
