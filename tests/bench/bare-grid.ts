/** A page with nothing but the grid, on the workbook that the desk shows: what the desk's start is measured against. */
import { type IWorkbookData, LifecycleService, LifecycleStages } from "@univerjs/core";
import { startGrid } from "../../src/desk/grid";

async function start(): Promise<void> {
  const book = (await (await fetch("/book.json")).json()) as IWorkbookData;
  const grid = startGrid(document.getElementById("grid")!, book);
  await grid.injector.get(LifecycleService).onStage(LifecycleStages.Rendered);
  Object.assign(window, { ready: true });
}

void start();
