import "./custom-functions";
import "../functions/uniformity";
import "../functions/application";
import "../functions/water";
import "../functions/summary";
import "../functions/demand";
import "../functions/layout";
import { createRoot } from "react-dom/client";
import { deskHost } from "../hosts/desk";
import { Pane } from "../taskpane/pane";
import type { Blank } from "./arguments";
import { calculateAgain } from "./calculate-again";
import { mendComparison } from "./comparison";
import { exampleWorkbook } from "./example";
import { fileButtons } from "./file-buttons";
import { Files } from "./files";
import { freeHost } from "./free-host";
import { startGrid } from "./grid";
import { Messages } from "./messages";
import { functionsMetadata } from "./metadata";
import { openFirst } from "./open-first";
import { partsByKey } from "./parts-by-key";
import { ProtectedCells } from "./protected-cells";
import { registerFunctions } from "./register";
import { scriptAccess } from "./script-access";
import { mendSort } from "./sort";
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
  const known = await functionsMetadata();
  const grid = startGrid(part("grid"), exampleWorkbook());
  registerFunctions(grid.injector, known, blank());
  mendSort(grid.injector);
  mendComparison();
  mendValues();
  calculateAgain(grid);
  const messages = new Messages(part("message"));
  const cells = new ProtectedCells(grid, (sentence) => messages.refuse(sentence));
  const files = new Files(grid, cells);
  const host = freeHost(deskHost(grid, files), cells);
  part("file").textContent = await openFirst(grid, files, host);
  await messages.follow(host, grid);
  createRoot(part("pane")).render(<Pane host={host} functions={known} />);
  fileButtons(files, { open: part("open"), save: part("save"), name: part("file") });
  partsByKey([part("grid"), part("pane"), part("open").parentElement!]);
  window.desk = scriptAccess(host);
}

void start();
