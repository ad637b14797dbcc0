import type { Host } from "../../hosts/host";
import { allWanted, type Snapshot, type Wanted } from "../../hosts/snapshot";
import { latest } from "./latest";

/** Somebody who follows the workbook. */
export interface Reader {
  /** What it wants of the next snapshot. */
  wants(): Wanted;
  show(snapshot: Snapshot): void;
  fail(reason: unknown): void;
}

/** Lets everybody who follows a workbook share one snapshot a refresh. */
class Refresh {
  readonly #readers = new Set<Reader>();
  readonly #line: { ask(): void };
  #watching: Promise<() => void> | null = null;
  #asked = false;

  constructor(private readonly host: Host) {
    const wanted = () => {
      const { names, areas, typed } = allWanted([...this.#readers].map((reader) => reader.wants()));
      return { names, areas, inputs: [...names, ...areas].filter(typed) };
    };
    this.#line = latest(
      () => host.snapshot(wanted()),
      (snapshot) => this.#each((reader) => reader.show(snapshot)),
      (reason) => this.#each((reader) => reader.fail(reason)),
    );
  }

  follow(reader: Reader): () => void {
    this.#readers.add(reader);
    this.#watching ??= this.host.watch(() => this.ask());
    this.#watching.catch((reason) => reader.fail(reason));
    this.ask();
    return () => {
      this.#readers.delete(reader);
      if (this.#readers.size > 0) return;
      this.#watching?.then(
        (stop) => stop(),
        () => {},
      );
      this.#watching = null;
    };
  }

  /** Asks for a new snapshot; those who ask in one turn share it. */
  ask(): void {
    if (this.#asked) return;
    this.#asked = true;
    queueMicrotask(() => {
      this.#asked = false;
      if (this.#readers.size > 0) this.#line.ask();
    });
  }

  #each(tell: (reader: Reader) => void): void {
    for (const reader of [...this.#readers]) {
      try {
        tell(reader);
      } catch (reason) {
        reader.fail(reason);
      }
    }
  }
}

const refreshes = new WeakMap<Host, Refresh>();

/** The one refresh of a workbook. */
export function refreshOf(host: Host): Refresh {
  const known = refreshes.get(host) ?? new Refresh(host);
  refreshes.set(host, known);
  return known;
}
