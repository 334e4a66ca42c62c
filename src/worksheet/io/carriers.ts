/** Everything that carries a sheet in or out, and what is told of it, in one piece: fetched with the first touch, or with a link that is opened. */
export { arrivalNotice, refusalNotice } from '../words/refusal-notices.ts';
export { backupName, download, fileName, sealed } from './file.ts';
export { fromFile, fromLink } from './outside.ts';
export { LONGEST_LINK, packed } from './packing.ts';
