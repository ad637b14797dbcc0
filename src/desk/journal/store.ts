import { type DBSchema, type IDBPDatabase, openDB } from "idb";
import type { Input } from "../../cells/cell";
import type { Shift } from "../../xlsx/desk-file/book";

/** What was done in a sheet: rows or columns that came or went, then cells that were given something. */
export interface Edit {
  sheet: string;
  shift?: Shift;
  /** Row, column, what was typed. */
  cells: [row: number, column: number, input: Input][];
}

/** Text in the open editor of a cell. */
export interface Draft {
  sheet: string;
  row: number;
  column: number;
  text: string;
}

/** A workbook as it was opened or saved last, and what was done since. */
export interface Work {
  id: string;
  name: string;
  /** When it was changed last. */
  at: number;
  base: Uint8Array;
}

interface Schema extends DBSchema {
  works: { key: string; value: Work };
  edits: { key: number; value: Edit & { work: string; at: number }; indexes: { work: string } };
  drafts: { key: string; value: Draft & { work: string } };
}

const lockOf = (id: string) => `canfall-work-${id}`;

/** What browsers keep of unsaved work, here alone: one work a page, and those of pages that ended. */
export class Store {
  private constructor(
    private readonly db: IDBPDatabase<Schema>,
    private readonly id: string,
  ) {}

  /** Opens it for a page, whose work counts as left behind once the page has ended. */
  static async open(): Promise<Store> {
    const id = crypto.randomUUID();
    const db = await openDB<Schema>("canfall", 1, {
      upgrade(db) {
        db.createObjectStore("works", { keyPath: "id" });
        db.createObjectStore("edits", { autoIncrement: true }).createIndex("work", "work");
        db.createObjectStore("drafts", { keyPath: "work" });
      },
    });
    await new Promise<void>((held) => {
      void navigator.locks.request(lockOf(id), () => {
        held();
        return new Promise(() => {}); // held until the page ends, in whatever way
      });
    });
    return new Store(db, id);
  }

  /** Puts a new base in place of all that was noted before. */
  async rebase(name: string, base: Uint8Array): Promise<void> {
    await this.drop(this.id);
    await this.db.put("works", { id: this.id, name, at: Date.now(), base });
  }

  async add(edit: Edit): Promise<void> {
    await this.db.add("edits", { ...edit, work: this.id, at: Date.now() });
  }

  async draft(draft: Draft | null): Promise<void> {
    if (draft) await this.db.put("drafts", { ...draft, work: this.id });
    else await this.db.delete("drafts", this.id);
  }

  /** Forgets a work, this page's where none is named. */
  async drop(id = this.id): Promise<void> {
    const change = this.db.transaction(["works", "edits", "drafts"], "readwrite");
    await change.objectStore("works").delete(id);
    await change.objectStore("drafts").delete(id);
    for (const key of await change.objectStore("edits").index("work").getAllKeys(id)) {
      await change.objectStore("edits").delete(key);
    }
    await change.done;
  }

  /** The works of pages that ended, newest first. */
  async left(): Promise<Work[]> {
    const { held = [] } = await navigator.locks.query();
    const open = new Set(held.map(({ name }) => name));
    const works = (await this.db.getAll("works")).filter(({ id }) => !open.has(lockOf(id)));
    const changed = works.map(async (work) => {
      const last = (await this.db.getAllFromIndex("edits", "work", work.id)).at(-1);
      return { ...work, at: Math.max(work.at, last?.at ?? 0) };
    });
    return (await Promise.all(changed)).sort((a, b) => b.at - a.at);
  }

  edits = (id: string): Promise<Edit[]> => this.db.getAllFromIndex("edits", "work", id);

  draftOf = (id: string): Promise<Draft | undefined> => this.db.get("drafts", id);
}
