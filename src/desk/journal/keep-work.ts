import type { Grid } from "../../hosts/desk/grid";
import type { Files } from "../files/files";
import type { ProtectedCells } from "../protected-cells";
import { Journal } from "./journal";
import { offerLeftWork } from "./offer";
import { restore } from "./restore";
import { Store } from "./store";

/** From now on unsaved work is kept in the browser, and what was left behind is offered; null where the browser refuses. */
export async function keepWork(
  grid: Grid,
  files: Files,
  cells: ProtectedCells,
  box: HTMLElement,
  say: (sentence: string) => void,
): Promise<Journal | null> {
  try {
    const store = await Store.open();
    const journal = new Journal(grid, files, store);
    files.replaced = (by) => (by === "another" ? journal.clear() : journal.noteWhole());
    void offerLeftWork(store, {
      box,
      say,
      mayGo: () => files.mayGo(),
      restore: (work) => restore(grid, files, cells, store, work),
    });
    return journal;
  } catch (problem) {
    console.warn("unsaved work is not kept: this browser allows no storage", problem);
    return null;
  }
}
