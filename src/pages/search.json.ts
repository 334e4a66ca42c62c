/** The index of the page of search, made at build. */
import MiniSearch from 'minisearch';
import { documents } from '../components/search/documents.ts';
import { SEARCH } from '../live/search/options.ts';

/** The index as the library writes it. */
export async function GET(): Promise<Response> {
  const index = new MiniSearch(SEARCH);
  index.addAll([...(await documents())]);
  return new Response(JSON.stringify(index));
}
