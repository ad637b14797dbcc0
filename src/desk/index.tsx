import "./custom-functions";
import "../functions/uniformity";
import "../functions/application";
import "../functions/water";
import "../functions/summary";
import "../functions/demand";
import "../functions/layout";
import { LifecycleService, LifecycleStages } from "@univerjs/core";
import { createRoot } from "react-dom/client";
import { deskHost } from "../hosts/desk";
import { Pane } from "../taskpane/pane";
import type { Blank } from "./arguments";
import { mendChecks } from "./checks";
import { mendComparison } from "./comparison";
import { mendDependencies } from "./dependencies";
import { mendDrawing } from "./drawing";
import { mendEditing } from "./editing";
import { exampleWorkbook } from "./example";
import { fileButtons } from "./file-buttons";
import { Files } from "./files";
import { mendFormulaCache } from "./formula-cache";
import { freeHost } from "./free-host";
import { startGrid } from "./grid";
import { mendLists } from "./lists";
import { Messages } from "./messages";
import { functionsMetadata } from "./metadata";
import { openFirst, readFirst } from "./open-first";
import { partsByKey } from "./parts-by-key";
import { mendPlainTexts } from "./plain-texts";
import { ProtectedCells } from "./protected-cells";
import { mendRefusals } from "./refusals";
import { registerFunctions } from "./register";
import { scriptAccess } from "./script-access";
import { mendShades } from "./shades";
import { mendSort } from "./sort";
import { mendTabStart } from "./tab-start";
import { mendTypedValues } from "./typed-values";
import { mendValues } from "./values";
import "./page.css";

const BLANKS = ["zero", "null", "empty"] as const;

function blank(): Blank {
  const asked = new URLSearchParams(location.search).get("blank");
  return BLANKS.find((one) => one === asked) ?? "null";
}

function part(id: string): HTMLElement {
  const found = document.getElementById(id);
  if (!found) throw new Error(`the page must hold an element "${id}"`);
  return found;
}

async function start(): Promise<void> {
  const [known, first] = await Promise.all([functionsMetadata(), readFirst()]);
  const grid = startGrid(part("grid"), "file" in first ? {} : exampleWorkbook());
  registerFunctions(grid.injector, known, blank());
  mendSort(grid.injector);
  mendComparison();
  mendValues();
  mendPlainTexts();
  mendDependencies(grid.injector);
  mendDrawing();
  mendEditing(grid.injector);
  mendFormulaCache();
  mendChecks(grid.injector);
  mendLists(grid.injector);
  mendTypedValues(grid.injector);
  mendRefusals(grid, part("refusal") as HTMLDialogElement);
  mendShades(grid.injector);
  const messages = new Messages(part("message"));
  const cells = new ProtectedCells(grid, (sentence) => messages.refuse(sentence));
  mendTabStart(grid.injector); // after ProtectedCells, which moves on once more after Tab
  const files = new Files(grid, cells, (name) => {
    part("file").textContent = name;
  });
  const host = freeHost(deskHost(grid, files), cells);
  part("file").textContent = await openFirst(first, grid, files, host);
  await messages.follow(host, grid);
  createRoot(part("pane")).render(<Pane host={host} functions={known} />);
  fileButtons(files, { open: part("open"), save: part("save"), name: part("file") });
  partsByKey([part("grid"), part("pane"), part("open").parentElement!]);
  await grid.injector.get(LifecycleService).onStage(LifecycleStages.Rendered);
  window.desk = scriptAccess(host);
}

void start();
