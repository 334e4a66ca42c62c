/** The worked examples in the order of their lessons, and in groups. */
import { type CollectionEntry, getCollection } from 'astro:content';

/** One of them. */
export type WorkedExample = CollectionEntry<'worked'>;

/** Some of them under one name. */
export interface ExampleGroup {
  readonly name: string;
  readonly examples: readonly WorkedExample[];
}

/** All of them, lesson by lesson. */
export async function workedExamples(): Promise<readonly WorkedExample[]> {
  const order = new Map((await getCollection('lessons')).map(({ id, data }) => [id, data.order]));
  const place = ({ data }: WorkedExample) => order.get(data.lesson) ?? 0;
  const byKey = (one: WorkedExample, other: WorkedExample) => one.id.localeCompare(other.id);
  return (await getCollection('worked')).sort(
    (one, other) => place(one) - place(other) || byKey(one, other),
  );
}

/** Groups by a name, in the order in which the names come. */
export function grouped(
  examples: readonly WorkedExample[],
  nameOf: (example: WorkedExample) => string,
): readonly ExampleGroup[] {
  const names = [...new Set(examples.map(nameOf))];
  return names.map((name) => ({
    name,
    examples: examples.filter((example) => nameOf(example) === name),
  }));
}
