import { type IWorkbookData, LocaleType, LogLevel, mergeLocales, ThemeService, Univer } from "@univerjs/core";
import { FUniver } from "@univerjs/core/facade";
import { UniverSheetsConditionalFormattingPreset } from "@univerjs/preset-sheets-conditional-formatting";
import conditionalWords from "@univerjs/preset-sheets-conditional-formatting/locales/en-US";
import { UniverSheetsCorePreset } from "@univerjs/preset-sheets-core";
import coreWords from "@univerjs/preset-sheets-core/locales/en-US";
import { UniverSheetsDataValidationPreset } from "@univerjs/preset-sheets-data-validation";
import validationWords from "@univerjs/preset-sheets-data-validation/locales/en-US";
import { UniverSheetsDrawingPreset } from "@univerjs/preset-sheets-drawing";
import drawingWords from "@univerjs/preset-sheets-drawing/locales/en-US";
import { UniverSheetsNotePreset } from "@univerjs/preset-sheets-note";
import noteWords from "@univerjs/preset-sheets-note/locales/en-US";
import type { Grid } from "../hosts/desk/grid";
import { plainCalculation } from "./plain-calculation";
import "@univerjs/preset-sheets-core/lib/index.css";
import "@univerjs/preset-sheets-conditional-formatting/lib/index.css";
import "@univerjs/preset-sheets-data-validation/lib/index.css";
import "@univerjs/preset-sheets-drawing/lib/index.css";
import "@univerjs/preset-sheets-note/lib/index.css";

const WATER = {
  50: "#e6f6f4",
  100: "#c7eae5",
  200: "#9dd6d0",
  300: "#7cc5be",
  400: "#5ab4ac",
  500: "#358f86",
  600: "#01665e",
  700: "#06615a",
  800: "#07423d",
  900: "#042320",
};

/** Words that the grid asks for and lacks. */
const MISSING_WORDS = {
  "sheets-formula": {
    progress: {
      analyzing: "Looking for what follows",
      calculating: "Calculating",
      "array-analysis": "Looking for tables",
      "array-calculation": "Calculating tables",
      done: "Calculated",
    },
  },
};

/** Starts the grid in `container` with its first workbook; functions can be registered only after that. */
export function startGrid(container: HTMLElement, workbook: Partial<IWorkbookData>): Grid {
  const univer = new Univer({
    locale: LocaleType.EN_US,
    locales: {
      [LocaleType.EN_US]: mergeLocales(
        coreWords,
        conditionalWords,
        validationWords,
        drawingWords,
        noteWords,
        MISSING_WORDS,
      ),
    },
    logLevel: LogLevel.ERROR,
  });
  const presets = [
    UniverSheetsCorePreset({ container }),
    UniverSheetsConditionalFormattingPreset(),
    UniverSheetsDataValidationPreset({ showSearchOnDropdown: false }),
    UniverSheetsDrawingPreset(),
    UniverSheetsNotePreset(),
  ];
  for (const plugin of presets.flatMap((preset) => preset.plugins)) {
    if (Array.isArray(plugin)) univer.registerPlugin(plugin[0], plugin[1]);
    else univer.registerPlugin(plugin);
  }
  const injector = univer.__getInjector();
  const look = injector.get(ThemeService);
  look.setTheme({ ...look.getCurrentTheme(), primary: WATER });
  const api = FUniver.newAPI(univer);
  api.createWorkbook(workbook);
  const grid: Grid = { api, injector, calculation: plainCalculation(api) };
  container.addEventListener("keydown", ({ key }) => grid.calculation.keyPressed(key), { capture: true });
  return grid;
}
