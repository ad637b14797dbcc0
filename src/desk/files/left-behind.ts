import { bookOf, type Grid } from "../../hosts/desk/grid";
import type { XlsxFile } from "../../xlsx/desk-file/desk-file";
import type { BookState } from "./book-state";
import type { ShiftedSheets } from "./shifted-sheets";

const inWords = (sheet: string, kinds: Iterable<string>) => `in ${sheet}: ${[...kinds].join(", ")}`;

const UNSIGNED =
  "The file is digitally signed. What is saved is not what was signed, so the signature is left out: sign the file again.";

/** What of the opened file can't go along with rows, columns and sheets that came, went or moved. */
export class LeftBehind {
  private readonly inSheets = new Map<string, Set<string>>();
  private readonly ofDeleted = new Map<string, { sheet: string; kinds: string[] }>();

  /** Whether the signature of the file is, or would be, left out. */
  unsigned = false;

  constructor(private readonly grid: Grid) {}

  /** Before a file is made: behind that it is not known any more. */
  note(file: XlsxFile | null, shifted: ShiftedSheets, written: BookState | null): void {
    const shifts = shifted.shifts();
    const moved = shifted.moved();
    for (const key of new Set([...shifts.keys(), ...moved])) {
      const kinds = (moved.includes(key) ? file?.anchored(key) : file?.leftBehind(key, shifts.get(key) ?? [])) ?? [];
      this.inSheets.set(key, new Set([...(this.inSheets.get(key) ?? []), ...kinds]));
    }
    for (const { key, name } of written?.sheets ?? []) {
      const kinds = this.nameOf(key) === undefined ? (file?.leaningOn(key) ?? []) : [];
      if (kinds.length > 0) this.ofDeleted.set(key, { sheet: name, kinds });
    }
  }

  private nameOf(key: string): string | undefined {
    return bookOf(this.grid).getSheetBySheetId(key)?.getSheetName();
  }

  /** All of it, as a sentence; "" where nothing. */
  sentence(): string {
    const placed = [...this.inSheets].flatMap(([key, kinds]) => {
      const name = this.nameOf(key);
      return name === undefined || kinds.size === 0 ? [] : [inWords(name, kinds)];
    });
    const lost = [...this.ofDeleted].filter(([key]) => this.nameOf(key) === undefined).map(([, one]) => one);
    return [
      placed.length > 0 &&
        `Rows or columns were inserted, deleted or moved. In the file these stay at their old place: ${placed.join("; ")}.`,
      lost.length > 0 &&
        `Sheets were deleted. In the file these have nothing to read any more: ${lost.map(({ sheet, kinds }) => `${kinds.join(", ")} of ${sheet}`).join("; ")}.`,
      this.unsigned && UNSIGNED,
    ]
      .filter(Boolean)
      .join(" ");
  }

  clear(): void {
    this.inSheets.clear();
    this.ofDeleted.clear();
    this.unsigned = false;
  }
}
