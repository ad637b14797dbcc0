import { programOf } from "../../workbook/nursery/program/entries";
import type { FileBook } from "../../xlsx/parts/workbook-file";
import type { Figure } from "../copy-report";
import type { Finding } from "../finding";
import type { FileLooks } from "../looks/cells/file-looks";
import { demandAnswers } from "./demand-answers";
import { nightFindings } from "./night-findings";
import { planFigures } from "./plan-cells";
import { leachingAnswers, programAnswers, programSheet } from "./program-answers";
import { planWeather, weatherAnswers } from "./weather-answers";

/** Everything of a nursery plan that core gives from what was typed, and what its start times break. */
export function checkedPlan(book: FileBook, looks: FileLooks): { figures: Figure[]; findings: Finding[] } {
  const weather = planWeather(book);
  const sheet = programSheet(book);
  const program = sheet && programOf(sheet).program;
  const answers = [
    ...weatherAnswers(weather),
    ...demandAnswers(book, weather),
    ...leachingAnswers(book),
    ...(sheet && program ? programAnswers(sheet, program) : []),
  ];
  return { figures: planFigures(book, answers, looks), findings: nightFindings(book, program) };
}
