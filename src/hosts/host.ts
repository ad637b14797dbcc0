import type { Area } from "../cells/area";
import type { Cell, Input } from "../cells/cell";
import type { Snapshot, Wanted } from "./snapshot";

/** What is to be typed into an area. */
export interface Write {
  area: Area;
  inputs: Input[][];
}

/** A picture over the cells. */
export interface Picture {
  /** Tells the pictures of a sheet apart. */
  name: string;
  png: Uint8Array;
  /** What it shows, in words, for those who don't see it. */
  alternative: string;
  /** Its top left cell. */
  at: Area;
  /** [px] */
  width: number;
  /** [px] */
  height: number;
}

/** The signs that a formula is typed with. */
export interface Separators {
  decimal: string;
  /** Between arguments. */
  list: string;
}
export const PLAIN_SEPARATORS: Separators = { decimal: ".", list: "," };

/** The one port through which the pane speaks to a spreadsheet. */
export interface Host {
  /** What the pane calls it: `Excel` or `desk`. */
  readonly label: string;
  /** The spreadsheet's kind and version, for a record of the self-test. */
  readonly platform: string;
  /** What became of a workbook that was handed over to be opened, after its name. */
  readonly opened: string;
  /** Whether the page itself may save tables and pictures, and print. */
  readonly saves: boolean;
  /** Opens a page that lies beside this one in the browser. */
  openPage(address: string): void;
  /** Calls back when the spreadsheet has not answered for 5 s, and when it does again; the answer stops that. */
  slow(tell: (waiting: boolean) => void): () => void;
  separators(): Promise<Separators>;
  /** The workbook at one moment: what these names and areas hold, the selection, the sheets. */
  snapshot(wanted: Wanted): Promise<Snapshot>;
  /** The selected rectangle, cut to the used part of its sheet. */
  selection(): Promise<Area>;
  /** `toType`: what is typed next goes there, where the spreadsheet lets a pane move the keys. */
  select(area: Area, toType?: boolean): Promise<void>;
  /** Calls back when the selection moves or a cell changes; the answer stops that. */
  watch(changed: () => void): Promise<() => void>;
  /** Exact values, spilled ones too. */
  read(area: Area): Promise<Cell[][]>;
  /** What was typed into each cell: formula text in A1 form, value, or "" for a blank cell and for the body of a spill. */
  inputs(area: Area): Promise<Input[][]>;
  /** Also into a protected sheet, which stays protected; one with a password refuses. */
  write(area: Area, inputs: Input[][]): Promise<void>;
  /** Several areas in one go. */
  writeTogether(writes: readonly Write[]): Promise<void>;
  /** Writes values that the pane keeps in the workbook; at the desk outside what the typist can undo. */
  writeKept(writes: readonly Write[]): Promise<void>;
  /** The area behind a defined name, or null where there is none. */
  named(name: string): Promise<Area | null>;
  sheets(): Promise<string[]>;
  /** The smallest rectangle around all that a sheet holds; null where it holds nothing. */
  used(sheet: string): Promise<Area | null>;
  addSheet(name: string): Promise<void>;
  /** Removes a sheet with the defined names that led there. */
  removeSheet(name: string): Promise<void>;
  /** Resolves when every formula has been calculated. */
  settled(): Promise<void>;
  /** The open workbook as an .xlsx file. */
  bytes(): Promise<Uint8Array>;
  /**
   * Adds all sheets of an .xlsx file behind those that are there, with its defined names; refuses, before any change,
   * where the name of a sheet or a defined name is taken. Answers in a sentence what of the file it had to leave out,
   * or "".
   */
  insertSheets(file: Uint8Array): Promise<string>;
  /** Opens an .xlsx file as a workbook of its own; false when the person kept the open one. */
  openBook(file: Uint8Array, name: string): Promise<boolean>;
  /** Hands a finished file to the person, other than a workbook only where it `saves`; answers where it went. */
  deliver(file: Uint8Array, name: string): Promise<string>;
  /** Places a picture; one of the same name on the same sheet is replaced. */
  placePicture(picture: Picture): Promise<void>;
  removePicture(sheet: string, name: string): Promise<void>;
  /** The pictures on a sheet, such that placing them again looks the same; their bytes may be drawn anew. */
  pictures(sheet: string): Promise<Picture[]>;
}
