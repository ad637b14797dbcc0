/** Something that the pane did to the workbook, and what takes it back. */
export interface Act {
  /** `insert in Example!H2`; Undo names it. */
  label: string;
  /** Said once it is taken back. */
  taken: string;
  /** Asked when it was changed since: whether to take it back all the same. */
  doubt: string;
  /** The button that does so; "Put back" where left out. */
  yes?: string;
  /** True when it still is as it was left. */
  untouched(): Promise<boolean>;
  takeBack(): Promise<void>;
}
