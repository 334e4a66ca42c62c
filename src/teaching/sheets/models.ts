/** The models of the lessons chosen, each fetched when it is first chosen and kept. */
import type { Model } from '../../models/define-model.ts';

const modules = import.meta.glob<Record<string, unknown>>('../../lessons/*/model.ts');
const fetched = new Map<string, Promise<Model>>();

const isModelOf = (lesson: string, value: unknown): value is Model =>
  typeof value === 'object' && value !== null && 'evaluate' in value && 'name' in value
    ? value.name === lesson
    : false;

async function load(lesson: string): Promise<Model> {
  const module = await modules[`../../lessons/${lesson}/model.ts`]?.();
  const model = Object.values(module ?? {}).find((value) => isModelOf(lesson, value));
  if (!model) throw new RangeError(`${lesson} must be a lesson with a model`);
  return model as Model;
}

function modelOf(lesson: string): Promise<Model> {
  const known = fetched.get(lesson);
  if (known) return known;
  const asked = load(lesson);
  fetched.set(lesson, asked);
  asked.catch(() => fetched.delete(lesson)); // asked for again the next time
  return asked;
}

/** The models by the names of their lessons. @throws where one does not arrive */
export async function fetchModels(
  lessons: readonly string[],
): Promise<Readonly<Record<string, Model>>> {
  const models = await Promise.all(lessons.map(modelOf));
  return Object.fromEntries(models.map((model) => [model.name, model]));
}
