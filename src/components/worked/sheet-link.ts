/** The address that opens the worksheet with an invented mill's sheet in place, packed as any link of the worksheet is. */
import { getEntry } from 'astro:content';
import { packed } from '../../worksheet/io/packing.ts';
import { path } from '../shell/path.ts';
import { exampleDocument } from '../worksheet/example-documents.ts';

/** The address for a mill of content/mills by its file's name. @throws RangeError where there is no such mill */
export async function sheetLink(mill: string): Promise<string> {
  const entry = await getEntry('mills', mill);
  if (!entry) throw new RangeError(`mill must be in content/mills (was ${mill})`);
  return path(`/worksheet/#${await packed(exampleDocument(entry))}`);
}
