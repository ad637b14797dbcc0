import { bookOf, type Grid } from "../../../hosts/desk/grid";
import type { XlsxFile } from "../../../xlsx/desk-file/desk-file";
import type { BookState } from "../book-state";
import type { ShiftedSheets } from "../shifted-sheets";

const inWords = (sheet: string, kinds: Iterable<string>) => `in ${sheet}: ${[...kinds].join(", ")}`;

const UNSIGNED =
  "The file is digitally signed. What is saved is not what was signed, so the signature is left out: sign the file again.";

interface Found {
  inSheets: Map<string, Set<string>>;
  ofDeleted: Map<string, { sheet: string; kinds: string[] }>;
}

const nothing = (): Found => ({ inSheets: new Map(), ofDeleted: new Map() });

/** What of the opened file can't go along with rows, columns and sheets that came, went or moved. */
export class LeftBehind {
  private before = nothing();
  private found = nothing();
  private known = "";

  /** Whether the signature of the file would be left out. */
  unsigned = false;

  constructor(private readonly grid: Grid) {}

  /** Before a file is made. */
  note(file: XlsxFile | null, shifted: ShiftedSheets, written: BookState | null): void {
    const inSheets = new Map(this.before.inSheets);
    const ofDeleted = new Map(this.before.ofDeleted);
    const shifts = shifted.shifts();
    const moved = shifted.moved();
    for (const key of new Set([...shifts.keys(), ...moved])) {
      const kinds = (moved.includes(key) ? file?.anchored(key) : file?.leftBehind(key, shifts.get(key) ?? [])) ?? [];
      inSheets.set(key, new Set([...(inSheets.get(key) ?? []), ...kinds]));
    }
    for (const { key, name } of written?.sheets ?? []) {
      const kinds = this.nameOf(key) === undefined ? (file?.leaningOn(key) ?? []) : [];
      if (kinds.length > 0) ofDeleted.set(key, { sheet: name, kinds });
    }
    this.found = { inSheets, ofDeleted };
  }

  /** Before the file takes in what changed, and does not know it any more. */
  settle(file: XlsxFile, shifted: ShiftedSheets, written: BookState | null): void {
    this.note(file, shifted, written);
    this.before = this.found;
  }

  private nameOf(key: string): string | undefined {
    return bookOf(this.grid).getSheetBySheetId(key)?.getSheetName();
  }

  /** All of it, as a sentence; "" where nothing, or nothing that was not known when the file was saved last. */
  news(): string {
    const sentence = this.sentence();
    return sentence === this.known ? "" : sentence;
  }

  /** The file is saved by somebody who knows. */
  told(): void {
    this.known = this.sentence();
  }

  private sentence(): string {
    const placed = [...this.found.inSheets].flatMap(([key, kinds]) => {
      const name = this.nameOf(key);
      return name === undefined || kinds.size === 0 ? [] : [inWords(name, kinds)];
    });
    const lost = [...this.found.ofDeleted].filter(([key]) => this.nameOf(key) === undefined).map(([, one]) => one);
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
    this.before = nothing();
    this.found = nothing();
    this.known = "";
    this.unsigned = false;
  }
}
