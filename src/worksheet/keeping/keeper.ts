/**
 * Keeps what changes: soon, a few times a second at most, so that a key is drawn before it is written; one write after
 * the other, with what another tab has written merged in. Says of each sheet when it was last kept, and whether the
 * browser refuses.
 */
import { type Signal, signal } from '@preact/signals-core';
import { documentOf, type WorksheetDocument } from '../../form/document.ts';
import { bareUnits } from '../../form/units.ts';
import type { SheetRecord } from '../io/database.ts';
import type { Shelf } from '../io/shelf.ts';
import type { Project } from '../state/project.ts';
import { mergedOver } from './merging.ts';

const SOON = 200; // ms from a change to its write, and between two writes
const RETRY = 5000; // ms after one that was refused
const LATE = 3000; // ms after which one that has not ended counts as refused for now

/** The state that a sheet is to have on the shelf. */
export interface Wanted {
  readonly project: Project;
  readonly removedAt?: number | undefined; // ms since 1970
}

/** A state that is known to lie on the shelf. */
interface Known {
  readonly project: Project;
  readonly stamp: string;
}

/** Reads what lies in a record; undefined where it is no sheet that this page can read. */
export type ReadRecord = (record: SheetRecord) => Project | undefined;

/** The document of a project as it stands. */
export const documentFrom = ({ typed, system, aside }: Project): WorksheetDocument =>
  documentOf(typed, bareUnits(system), aside);

/** Told what was kept: the record, the state that was to be kept, and the one that was, with another tab's changes. */
export type Kept = (record: SheetRecord, was: Project, is: Project) => void;

/** The one that writes. */
export class Keeper {
  /** When each sheet was last kept, ms since 1970. */
  readonly savedAt: Signal<ReadonlyMap<string, number>> = signal(new Map());
  /** The sheets whose last change the browser has not kept. */
  readonly refused: Signal<ReadonlySet<string>> = signal(new Set());
  /** Reads what lies in a record. */
  readonly read: ReadRecord;
  private readonly shelf: Shelf;
  private readonly kept: Kept;
  private readonly wanted = new Map<string, Wanted>();
  private readonly known = new Map<string, Known>();
  private readonly changedBefore = new Set<string>();
  private waiting: ReturnType<typeof setTimeout> | undefined;
  private work: Promise<void> | undefined;

  constructor(shelf: Shelf, read: ReadRecord, kept: Kept) {
    this.shelf = shelf;
    this.read = read;
    this.kept = kept;
  }

  /** What the shelf was last known to hold of a sheet. */
  knownAt(id: string): Known | undefined {
    return this.known.get(id);
  }

  /** Takes note of a state that lies on the shelf. */
  knows(record: SheetRecord, project: Project): void {
    this.known.set(record.id, { project, stamp: record.stamp });
    this.savedAt.value = new Map(this.savedAt.value).set(record.id, record.savedAt);
  }

  /** A sheet is to be kept as it now stands. */
  want(id: string, wanted: Wanted): void {
    this.wanted.set(id, wanted);
    if (!this.work) this.waitFor(SOON);
  }

  /** What has not been written yet. */
  unwritten(): ReadonlyMap<string, Wanted> {
    return this.wanted;
  }

  /** Writes what is to be written now, and ends when it is. */
  async flush(): Promise<void> {
    await this.work; // what is being written may be older
    await this.begin();
  }

  private begin(): Promise<void> {
    clearTimeout(this.waiting);
    this.waiting = undefined;
    this.work ??= this.writeAll().finally(() => {
      this.work = undefined;
    });
    return this.work;
  }

  private async writeAll(): Promise<void> {
    const ids = [...this.wanted.keys()];
    for (const id of ids) await this.write(id);
    if (this.wanted.size > 0) this.waitFor(this.refused.peek().size > 0 ? RETRY : SOON);
  }

  private waitFor(rest: number): void {
    this.waiting ??= setTimeout(() => void this.begin(), rest);
  }

  private async write(id: string): Promise<void> {
    const wanted = this.wanted.get(id);
    if (!wanted) return;
    const late = setTimeout(() => this.refuse(id, true), LATE);
    let { project } = wanted;
    try {
      const record = await this.shelf.keep({
        id,
        over: (stored) => {
          project = this.merged(wanted.project, stored);
          return documentFrom(project);
        },
        removedAt: wanted.removedAt,
        isFirst: !this.changedBefore.has(id),
      });
      if (this.wanted.get(id) === wanted) this.wanted.delete(id);
      this.changedBefore.add(id);
      this.knows(record, project);
      this.refuse(id, false);
      this.kept(record, wanted.project, project);
    } catch {
      this.refuse(id, true);
    } finally {
      clearTimeout(late);
    }
  }

  /** What to keep: where another tab has written since, its changes stay and ours go over them. */
  private merged(project: Project, stored: SheetRecord | undefined): Project {
    const known = this.known.get(stored?.id ?? '');
    const theirs = stored && known && stored.stamp !== known.stamp ? this.read(stored) : undefined;
    return theirs && known ? mergedOver(theirs, known.project, project) : project;
  }

  private refuse(id: string, isRefused: boolean): void {
    if (this.refused.peek().has(id) === isRefused) return;
    const refused = new Set(this.refused.peek());
    if (isRefused) refused.add(id);
    else refused.delete(id);
    this.refused.value = refused;
  }
}
