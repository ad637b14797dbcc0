/** What the desk can do with whole files. */
export interface DeskFiles {
  /** The name of the open one. */
  readonly name: string;
  /** The open workbook as an .xlsx file, without marking it as saved. */
  bytes(): Promise<Uint8Array>;
  /** Throws where the open file lets no sheet come, go, move or get another name. */
  refuseSheets(): void;
  /** Adds all sheets of an .xlsx file behind those that are open, with its defined names. */
  insert(file: Uint8Array): Promise<void>;
  /** Opens a file in place of the open workbook; asks first when unsaved work would go. Answers whether it was opened. */
  open(file: Uint8Array, name: string): Promise<boolean>;
  /** Hands a finished file to the person as a download. */
  deliver(file: Uint8Array, name: string): void;
}
