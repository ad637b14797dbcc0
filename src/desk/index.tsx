import { LifecycleService, LifecycleStages } from "@univerjs/core";
import { createRoot } from "react-dom/client";
import { deskHost } from "../hosts/desk/desk";
import { keepNewest } from "../taskpane/answer/keep-answer";
import { Pane } from "../taskpane/pane";
import { decimalComma } from "./decimal-comma";
import { exampleWorkbook } from "./files/example";
import { fileButtons } from "./files/file-buttons";
import { fileDrops } from "./files/file-drops";
import { fileLine } from "./files/file-line";
import { Files } from "./files/files";
import { openFirst, readFirst } from "./files/open-first";
import { cellFont } from "./font";
import { freeHost } from "./free-host";
import type { Blank } from "./functions/arguments";
import { functionsMetadata } from "./functions/metadata";
import { registerFunctions } from "./functions/register";
import { startGrid } from "./grid";
import { keepWork } from "./journal/keep-work";
import { Messages } from "./messages";
import { partsByKey } from "./parts-by-key";
import { ProtectedCells } from "./protected-cells";
import { scriptAccess } from "./script-access";
import { keepStructure } from "./sheets/locked-structure";
import { askBeforeDeleting } from "./sheets/sheet-deletion";
import { splitter } from "./splitter";
import { mendGrid } from "./univer-fixes/fixes";
import "./page.css";

/** How long the page has to draw itself and to take keys before it calculates an example [ms]. */
const DRAWN_MS = 200;

const BLANKS = ["zero", "null", "empty"] as const;

function blank(): Blank {
  const asked = new URLSearchParams(location.search).get("blank");
  return BLANKS.find((one) => one === asked) ?? "null";
}

/** Fixes of the grid that the page's address leaves out, to see whether they are still needed. */
const leftOut = (): string[] => new URLSearchParams(location.search).get("without")?.split(",") ?? [];

function part(id: string): HTMLElement {
  const found = document.getElementById(id);
  if (!found) throw new Error(`the page must hold an element "${id}"`);
  return found;
}

/** Answers what opens files that are dropped. */
async function start(): Promise<(dropped: readonly File[]) => void> {
  const [known, first] = await Promise.all([functionsMetadata(), readFirst(), cellFont()]);
  const grid = startGrid(part("grid"), "book" in first ? {} : exampleWorkbook());
  registerFunctions(grid.injector, known, blank());
  const messages = new Messages(part("message"));
  const cells = new ProtectedCells(grid, (sentence) => messages.refuse(sentence));
  const unmended = mendGrid(grid, leftOut()); // after ProtectedCells, which moves on once more after Tab
  // a file brings its figures along: the page can be used before they are calculated again
  const goOn = "book" in first ? grid.calculation.hold() : () => {};
  part("unmended").textContent = unmended.join(" ");
  grid.calculation.follow((late, sentences) => {
    part("grid").classList.toggle("late", late);
    part("figures").textContent = [...sentences, ...(late && sentences.length === 0 ? ["Calculating …"] : [])].join(
      ". ",
    );
  });
  let check = (_files: readonly File[]) => {};
  const say = fileLine(part("file"), () => check(files.toCheck()));
  const files: Files = new Files(grid, cells, say);
  const refuse = (sentence: string) => messages.refuse(sentence);
  keepStructure(grid, () => files.locked, refuse);
  askBeforeDeleting(grid, refuse);
  const host = freeHost(deskHost(grid, files), cells);
  say(await openFirst(first, grid, files, host));
  await messages.follow(host, grid);
  createRoot(part("pane")).render(
    <Pane
      host={host}
      functions={known}
      lead={(checks) => {
        check = checks;
      }}
    />,
  );
  const work = await keepWork(grid, files, cells, part("restore"), say);
  const openDropped = fileButtons(
    files,
    { open: part("open"), save: part("save"), say },
    { prepare: () => keepNewest(host).catch(() => {}), saved: () => work?.clear() },
  );
  decimalComma(part("decimal-comma") as HTMLInputElement);
  splitter(part("splitter"));
  partsByKey([part("grid"), part("pane"), part("open").parentElement!]);
  await grid.injector.get(LifecycleService).onStage(LifecycleStages.Rendered);
  if ("book" in first) files.calculate();
  setTimeout(goOn, DRAWN_MS);
  window.desk = scriptAccess(host, grid);
  return openDropped;
}

const started = start();
fileDrops(part("drop"), async (files) => (await started)(files));
