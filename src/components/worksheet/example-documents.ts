/** The invented mills of content/mills as documents of our own form, checked as any file from outside is. */
import { type CollectionEntry, getCollection } from 'astro:content';
import { DOCUMENT_FORMAT, type WorksheetDocument } from '../../form/document.ts';
import { readDocument } from '../../form/schema.ts';
import { bareUnits } from '../../form/units.ts';

/** One of them. @throws RangeError where its file is not a worksheet */
export function exampleDocument({ id, data }: CollectionEntry<'mills'>): WorksheetDocument {
  const { about: _, system, ...sheet } = data;
  const read = readDocument({
    format: DOCUMENT_FORMAT,
    version: 1,
    units: bareUnits(system),
    ...sheet,
  });
  if (typeof read === 'string' || read.setAside.length > 0)
    throw new RangeError(`mill ${id} must be a worksheet`);
  return read.document;
}

/** All of them, by name. @throws RangeError where a file in content/mills is not a worksheet */
export async function exampleDocuments(): Promise<readonly WorksheetDocument[]> {
  const mills = (await getCollection('mills')).sort((a, b) => a.id.localeCompare(b.id));
  return mills.map(exampleDocument);
}
