/** Everything behind the fold of what is kept, in one piece. */
export { Keeping } from '../parts/Keeping.tsx';
export { backupSentence } from '../words/backup-words.ts';
export { backupOf, takeBackup } from './backup.ts';
