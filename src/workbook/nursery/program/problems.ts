import { InputError } from "../../../core/errors";
import type { PlacedCell } from "./stated-program";

/** Collects what is wrong and what is missing while cells are read. */
export class Reading {
  readonly wrong: string[] = [];
  readonly missing: string[] = [];
  /** The blocks that lack something, each with what. */
  readonly leftOut: string[] = [];
  private readonly lacks = new Map<string, string[]>();

  /** Notes what a block lacks; `sumUp` says it once for all blocks that lack the same. */
  lacking(what: string, block: string): void {
    this.lacks.set(what, [...(this.lacks.get(what) ?? []), block]);
  }

  sumUp(): void {
    for (const [what, [first, ...others]] of this.lacks) {
      const whose = others.length > 0 ? `${others.length + 1} blocks, the first is ${first}` : first;
      this.missing.push(`${what} for ${whose}`);
    }
    this.lacks.clear();
  }

  /** What `work` makes of a cell, undefined where it refuses. */
  of<Value>(place: string, work: () => Value): Value | undefined {
    try {
      return work();
    } catch (error) {
      if (!(error instanceof InputError)) throw error;
      this.wrong.push(error.at(place).message);
      return undefined;
    }
  }

  optional(cell: PlacedCell, read: (value: unknown) => number): number | undefined {
    return cell.value === null ? undefined : this.of(cell.place, () => read(checkable(cell)));
  }
}

/** A cell's value for a check; an error value is one that no rule takes. */
const checkable = ({ value }: PlacedCell): unknown => (typeof value === "object" && value ? value.error : value);
/** A name as it is compared: blanks at its ends and doubled ones do not count. */
export const nameIn = ({ value }: PlacedCell): string =>
  value === null ? "" : typeof value === "object" ? value.error : String(value).trim().replace(/ +/g, " ");
export const isBlank = (cells: readonly PlacedCell[]) => cells.every(({ value }) => value === null);
