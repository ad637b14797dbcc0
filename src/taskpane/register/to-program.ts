import type { Area } from "../../cells/area";
import { boxAddress, boxOf, reference } from "../../cells/box";
import type { Cell, Input } from "../../cells/cell";
import { isoDay } from "../../cells/day-number";
import { MEASURES } from "../../core/figures/measures";
import { plainName, type RegisteredAudit, sameBlock } from "../../core/register/registered-audit";
import type { Host } from "../../hosts/host";
import type { Filled } from "../../hosts/snapshot";
import type { Question } from "../parts/task/question";
import type { Act } from "../workbook/act";
import { type Reading, readNow } from "../workbook/reading";
import { type Write, writeAll } from "../workbook/writes";
import { REGISTER, type RegisterBook, type RegisterLine, textOf, usable } from "./read-register";

/** Columns of Program_Blocks, from 0: name, then area, MAR and multiplier side by side, and flow. */
const NAME = 0;
const AREA = 2;
const FLOW = 8;

const isPositive = (value: number | null): value is number => value !== null && value > 0;

/** The last audit of each block. */
export function latestLines(lines: readonly RegisterLine[]): RegisterLine[] {
  return lines.filter(
    ({ audit }) => !lines.some((other) => sameBlock(other.audit, audit) && other.audit.day > audit.day),
  );
}

/** Why the Program cannot take an audit; "" where it can. */
function lack({ audit, multiplier }: RegisterLine, all: readonly RegisterLine[]): string {
  const twice = all.some((other) => other.audit !== audit && plainName(other.audit.block) === plainName(audit.block));
  if (twice) return "two sites have a block of this name";
  const missing = [
    !isPositive(audit.mar) && MEASURES.MAR.short,
    !isPositive(multiplier) && "the multiplier",
    !isPositive(audit.area) && "the area",
  ].filter(Boolean);
  return missing.length > 0 ? `needs ${missing.join(", ")}` : "";
}

interface Row {
  line: RegisterLine;
  /** Whether the Program had no row of this block. */
  isNew: boolean;
  /** Whether other figures are typed there. */
  differs: boolean;
  writes: Write[];
}

function cellsOf(area: Area, index: number, column: number, columns: number): Area {
  const box = boxOf(area);
  return {
    sheet: area.sheet,
    address: boxAddress({ row: box.row + index, column: box.column + column, rows: 1, columns }),
  };
}

function rowOf(area: Area, cells: readonly (readonly Cell[])[], line: RegisterLine, index: number): Row {
  const { audit, multiplier, flow } = line;
  const there = cells[index]!;
  const isNew = textOf(there[NAME]) === "";
  const figures: Input[] = [audit.area!, audit.mar!, multiplier!];
  const writes: Write[] = [
    ...(isNew ? [{ area: cellsOf(area, index, NAME, 1), inputs: [[`'${audit.block}`]] }] : []),
    { area: cellsOf(area, index, AREA, figures.length), inputs: [figures] },
    ...(flow === null ? [] : [{ area: cellsOf(area, index, FLOW, 1), inputs: [[flow]] }]),
  ];
  const typed = [
    ...figures.map((figure, place) => [there[AREA + place], figure]),
    ...(flow === null ? [] : [[there[FLOW], flow]]),
  ];
  const differs = typed.some(([cell, figure]) => cell !== null && cell !== "" && cell !== figure);
  return { line, isNew, differs, writes };
}

/** The rows for these audits: that of the block's name, else the first empty one. */
function rowsOf(area: Area, cells: readonly (readonly Cell[])[], lines: readonly RegisterLine[]) {
  const free = cells.flatMap((line, index) => (line.every((cell) => cell === null || cell === "") ? [index] : []));
  const rows: Row[] = [];
  const left: RegisterLine[] = [];
  for (const line of lines) {
    const there = cells.findIndex((one) => plainName(textOf(one[NAME])) === plainName(line.audit.block));
    const index = there >= 0 ? there : free.shift();
    if (index === undefined) left.push(line);
    else rows.push(rowOf(area, cells, line, index));
  }
  return { rows, left };
}

const listed = (lines: readonly { audit: RegisteredAudit }[]) => lines.map(({ audit }) => audit.block).join(", ");

/** Which audits are of another nursery than the plan; "" where none is. */
function elsewhere(audits: readonly RegisteredAudit[], nursery: string): string {
  const others = audits.filter(({ site }) => site !== "" && nursery !== "" && plainName(site) !== plainName(nursery));
  if (others.length === 0) return "";
  return `Of another nursery than this plan's, ${nursery}: ${others.map(({ site, block }) => `${block} (${site})`).join(", ")}.`;
}

/** The register, and the plan's nursery and blocks of the Program. */
const BOTH: Reading<{ book: RegisterBook | null; blocks: Filled | null; nursery: string }> = {
  wants: { names: [...REGISTER.wants.names!, "Program_Blocks", "Nursery_Name"] },
  read: (snapshot) => ({
    book: REGISTER.read(snapshot),
    blocks: snapshot.named("Program_Blocks"),
    nursery: textOf(snapshot.named("Nursery_Name")?.cells[0]?.[0]),
  }),
};

/**
 * Writes name, area, MAR, multiplier and, where it is known, flow of each block's last audit into the Program; other
 * figures that are typed there are replaced only when told so.
 */
export async function putIntoProgram(host: Host, keep: (act: Act) => void): Promise<string | Question> {
  const { book, blocks, nursery } = await readNow(host, BOTH);
  if (!book) throw new Error("This workbook has no register: add the nursery plan sheets first");
  if (!blocks) throw new Error("This workbook has no sheet Program: add the nursery plan sheets first");
  const latest = latestLines(usable(book));
  const lacking = latest.flatMap((line) => {
    const why = lack(line, latest);
    return why === "" ? [] : [`${line.audit.block} of ${isoDay(line.audit.day)} ${why}`];
  });
  const { area } = blocks;
  const { rows, left } = rowsOf(
    area,
    blocks.cells,
    latest.filter((line) => lack(line, latest) === ""),
  );
  const notes = [
    elsewhere(
      rows.map(({ line }) => line.audit),
      nursery,
    ),
    lacking.length > 0 && `Left out: ${lacking.join("; ")}.`,
    left.length > 0 && `The Program is full: no row is left for ${listed(left)}.`,
  ].filter(Boolean);
  if (rows.length === 0) return ["There is no audit to put into the Program.", ...notes].join(" ");

  const write = async (): Promise<string> => {
    keep(
      await writeAll(
        host,
        rows.flatMap((row) => row.writes),
        "audits",
      ),
    );
    const fresh = rows.filter(({ isNew }) => isNew);
    const known = rows.length - fresh.length;
    const done = [
      known > 0 && `updated for ${known === 1 ? "1 block" : `${known} blocks`}`,
      fresh.length > 0 && `added for ${fresh.length === 1 ? "1 block" : `${fresh.length} blocks`}`,
    ].filter(Boolean);
    const still = fresh.length > 0 ? [" A new block still needs its group or a depth."] : [];
    return [
      `Area, ${MEASURES.MAR.short}, multiplier and flow ${done.join(", ")} in ${reference(area)}: ${listed(rows.map(({ line }) => line))}.${still.join("")}`,
      ...notes,
      "Undo puts back what was there.",
    ].join(" ");
  };

  const other = rows.filter(({ differs }) => differs);
  if (other.length === 0) return write();
  return {
    text: `The Program has other figures for ${listed(other.map(({ line }) => line))}. Put those of the register in their place?${notes.map((note) => ` ${note}`).join("")}`,
    yes: "Replace them",
    no: "Leave the Program as it is",
    doing: "Writing into the Program",
    act: write,
  };
}
