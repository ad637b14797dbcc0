import type { Grid } from "../../hosts/desk/grid";

/** A part of the grid's own that a fix replaces or needs: whose it is, its owner, its name. */
export type Member = [owner: string, of: object | null | undefined, name: string];

/** Something that is wrong in the grid, and what is put in its place. */
export interface Fix {
  /** The name of its file. */
  name: string;
  /** What is wrong without it, as a sentence. */
  wrong: string;
  /** The version of the grid in which that was seen last. */
  seen: string;
  members(grid: Grid): Member[];
  mend(grid: Grid): void;
}
