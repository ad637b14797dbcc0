import { reference } from "../../cells/box";
import type { Input } from "../../cells/cell";
import { plainAddress } from "../../cells/letters";
import { placesOf } from "../../cells/places";
import { MOST_HEADS } from "../../core/bed/bed-heads";
import { MOST_ACROSS, MOST_ALONG } from "../../core/pattern/can-field";
import { HEAD_PLACES } from "../../workbook/audit/coverage/head-formulas";
import { paintedRate } from "../../workbook/audit/coverage/painted";
import {
  acrossCell,
  alongCell,
  factCell,
  SOURCE,
  SOURCE_ACROSS,
  SOURCE_ALONG,
  sourceCell,
} from "../../workbook/audit/coverage/places";
import { sourceCells } from "../../workbook/audit/coverage/source";
import type { Settings } from "../answer/settings";
import type { Source } from "./source";

/** What to type into a block of the Coverage sheet. */
export interface Block {
  address: string;
  inputs: Input[][];
}

const FACTS = ["width", "length", "bearing", "layout", "spacing", "rowSpacing"] as const;

const FACT_BLOCK = plainAddress(`${factCell("width")}:${factCell("rowSpacing")}`);
const HEADS_AT = placesOf(HEAD_PLACES);
const grid = (rows: number, columns: number, input: (i: number, j: number) => Input): Input[][] =>
  Array.from({ length: rows }, (_, i) => Array.from({ length: columns }, (_, j) => input(i, j)));

function blocks(
  rate: (i: number, j: number) => Input,
  across: (j: number) => Input,
  along: (i: number) => Input,
  fact: (index: number) => Input,
  groundMean: Input,
  head: (index: number) => Input,
): Block[] {
  return [
    { address: plainAddress(SOURCE), inputs: grid(MOST_ALONG, MOST_ACROSS, rate) },
    { address: plainAddress(SOURCE_ACROSS), inputs: grid(1, MOST_ACROSS, (_, j) => across(j)) },
    { address: plainAddress(SOURCE_ALONG), inputs: grid(MOST_ALONG, 1, (i) => along(i)) },
    { address: FACT_BLOCK, inputs: grid(FACTS.length, 1, (index) => fact(index)) },
    { address: plainAddress(factCell("ground mean")), inputs: [[groundMean]] },
    { address: HEAD_PLACES, inputs: grid(MOST_HEADS, 2, (i, j) => head(2 * i + j)) },
  ];
}

/** The Coverage sheet over the workbook's own cans, as its template has it. */
export function auditBlocks(): Block[] {
  const formulas = new Map(sourceCells().map(({ at, formula }) => [at, `=${formula}`]));
  const at = (address: string): Input => formulas.get(plainAddress(address)) ?? "";
  return blocks(
    (i, j) => at(sourceCell(i, j)),
    (j) => at(acrossCell(j)),
    (i) => at(alongCell(i)),
    (index) => at(factCell(FACTS[index]!)),
    at(factCell("ground mean")),
    (index) => at(HEADS_AT[index]!),
  );
}

/** The Coverage sheet over other cans: each rate a formula over the can's own cell, so that a corrected reading recolours. */
export function sourceBlocks(
  { field, cells }: Source,
  { minutes, mouth }: Pick<Settings, "minutes" | "mouth">,
): Block[] {
  const of = (setting: Settings["minutes"] | Settings["mouth"]) =>
    setting.area ? reference(setting.area) : String(setting.value);
  const across = mouth.value === "mm" ? null : of(mouth);
  const rate = (i: number, j: number): Input => {
    const cell = cells[i]?.[j];
    if (!cell) return "";
    return `=${paintedRate(reference(cell), of(minutes), across)}`;
  };
  return blocks(
    rate,
    (j) => field.across[j] ?? "",
    (i) => field.along[i] ?? "",
    () => "",
    "",
    () => "",
  );
}
