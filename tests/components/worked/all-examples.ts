/** Every worked example as its file has it, with the model that it hangs on. */
import { parse } from 'yaml';
import { valuesIn } from '../../../src/components/worked/told.ts';
import { models } from '../../../src/lessons/all.ts';
import { type Model, numberAt } from '../../../src/models/define-model.ts';
import type { ExampleTemplate } from '../../../src/models/example.ts';
import { filesUnder, textOf } from '../../structure/project-files.ts';

/** What a file of content/worked holds. */
export interface WorkedFile extends ExampleTemplate {
  readonly title: string;
  readonly question: string;
  readonly topic: string;
  readonly place: string;
  readonly caution?: string;
  readonly terms: readonly string[];
  readonly also?: readonly string[];
  readonly sheet?: string;
}

/** One example by its key, the last part of its address. */
export interface KeyedExample {
  readonly key: string;
  readonly file: string;
  readonly example: WorkedFile;
  readonly model: Model;
}

/** The example of one file. */
function keyed(file: string): KeyedExample {
  const example = parse(textOf(file)) as WorkedFile;
  const model = models[example.lesson];
  if (!model) throw new Error(`${file} must name a lesson`);
  return { key: file.replace(/^.*\/|\.yaml$/g, ''), file, example, model };
}

/** All of them. */
export const allExamples = (): readonly KeyedExample[] => filesUnder('content/worked').map(keyed);

/** One of them. */
export function exampleOf(key: string): KeyedExample {
  const found = allExamples().find((each) => each.key === key);
  if (!found) throw new Error(`${key} must be a worked example`);
  return found;
}

/** What an example tells of a quantity in one of its states, SI. */
export function told(key: string, state: string, name: string): number {
  const { example, model } = exampleOf(key);
  return numberAt(valuesIn(example, model, state), name);
}
