import type { Area } from "../../cells/area";
import { boxOf } from "../../cells/box";
import type { Cell } from "../../cells/cell";
import type { RegisteredAudit } from "../../core/register/registered-audit";
import { REGISTER_ANSWERS } from "../../workbook/nursery/register/answers";
import { REGISTER_COLUMNS } from "../../workbook/nursery/register/columns";
import { cellText } from "../workbook/named";
import type { Reading } from "../workbook/reading";

/** A line of the sheet Register that holds something. */
export interface RegisterLine {
  /** From 0, among the lines for audits. */
  index: number;
  /** Its row on the sheet. */
  row: number;
  /** What the sheet says of the line: "ok", or what is wrong with it. */
  said: string;
  audit: RegisteredAudit;
  multiplier: number | null;
  /** [L/min] */
  flow: number | null;
  /** Why it may not be compared with the audit before it, or that it may; "" where the line takes no part. */
  basis: string;
  /** Day of the audit before it. */
  earlier: number | null;
  /** Day on which a re-test is due. */
  due: number | null;
  retest: string;
}

/** The register of the open workbook. */
export interface RegisterBook {
  /** All its lines, used or not. */
  area: Area;
  /** Lines that hold something, in their order. */
  lines: RegisterLine[];
}

const numberOf = (cell: Cell | undefined): number | null => (typeof cell === "number" ? cell : null);
export const textOf = (cell: Cell | undefined): string => cellText(cell).trim();

function lineOf(cells: readonly Cell[], answers: readonly Cell[], index: number, row: number): RegisterLine {
  const typed = (id: string) => cells[REGISTER_COLUMNS.findIndex((column) => column.id === id)];
  const answer = (id: string) => answers[REGISTER_ANSWERS.findIndex((column) => column.id === id)];
  const number = (id: string) => numberOf(typed(id));
  return {
    index,
    row,
    said: textOf(answer("line")),
    audit: {
      site: textOf(typed("site")),
      block: textOf(typed("block")),
      day: Math.floor(number("day") ?? 0),
      cans: number("cans"),
      grid: textOf(typed("grid")) || null,
      wind: textOf(typed("wind")) || null,
      pressure: number("pressure"),
      mar: number("mar"),
      cu: number("cu"),
      du: number("du"),
      scCan: number("scCan"),
      scQuarter: number("scQuarter"),
      kind: textOf(typed("kind")) || null,
      water: number("water"),
      area: number("area"),
    },
    multiplier: number("multiplier"),
    flow: number("flow"),
    basis: textOf(answer("basis")),
    earlier: numberOf(answer("earlier")),
    due: numberOf(answer("due")),
    retest: textOf(answer("retest")),
  };
}

/** The register; null where the workbook has none. */
export const REGISTER: Reading<RegisterBook | null> = {
  wants: { names: ["Register_Rows", "Register_Answers"] },
  read: (snapshot) => {
    const [rows, answers] = [snapshot.named("Register_Rows"), snapshot.named("Register_Answers")];
    if (!rows || !answers) return null;
    const top = boxOf(rows.area).row;
    const lines = rows.cells.flatMap((line, index) =>
      line.every((cell) => cell === null || cell === "")
        ? []
        : [lineOf(line, answers.cells[index]!, index, top + index)],
    );
    return { area: rows.area, lines };
  },
};

/** As the list of blocks on the sheet says it. */
export const labelOf = ({ site, block }: RegisteredAudit): string => (site === "" ? block : `${block} · ${site}`);

/** The lines that the sheet takes into account. */
export const usable = ({ lines }: RegisterBook): RegisterLine[] => lines.filter(({ said }) => said === "ok");
