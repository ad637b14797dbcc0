import type { Cell, Input } from "../cells/cell";
import type { Grid } from "../hosts/desk/grid";
import type { Host } from "../hosts/host";
import { cellRectangle, type Rectangle } from "./cell-rectangle";

/** What the page offers to scripts and tests as `window.desk`. */
export interface Desk {
  host: Host;
  grid: Grid;
  read(sheet: string, address: string): Promise<Cell[][]>;
  /** One value or formula, or a rectangle of them that fits the address. */
  write(sheet: string, address: string, inputs: Input | Input[][]): Promise<void>;
  settled(): Promise<void>;
  /** Where a cell is on the page; its sheet comes to the front, and the cell into sight. */
  rectangle(sheet: string, address: string): Rectangle;
}

declare global {
  interface Window {
    desk: Desk;
  }
}

export const scriptAccess = (host: Host, grid: Grid): Desk => ({
  host,
  grid,
  read: (sheet, address) => host.read({ sheet, address }),
  write: (sheet, address, inputs) => host.write({ sheet, address }, Array.isArray(inputs) ? inputs : [[inputs]]),
  settled: () => host.settled(),
  rectangle: (sheet, address) => cellRectangle(grid, sheet, address),
});
