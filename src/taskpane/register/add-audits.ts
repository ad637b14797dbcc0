import { boxAddress, boxOf, reference } from "../../cells/box";
import type { Input } from "../../cells/cell";
import { isoDay } from "../../cells/day-number";
import { type RegisteredAudit, sameBlock } from "../../core/register/registered-audit";
import type { Host } from "../../hosts/host";
import type { Question } from "../parts/task/question";
import type { Act } from "../workbook/act";
import { readNow } from "../workbook/reading";
import { type Write, writeAll } from "../workbook/writes";
import type { FileLine } from "./file-line";
import { REGISTER, type RegisterBook } from "./read-register";

type Audit = Extract<FileLine, { inputs: Input[] }>;

/** What is to be done with the audits of some files. */
interface Plan {
  /** New lines, each with its row among those of the register, from 0. */
  added: { audit: Audit; index: number }[];
  /** Audits whose block and date the register has. */
  there: { audit: Audit; index: number; row: number }[];
  /** Audits for which no line is left. */
  left: Audit[];
  /** Audits whose block and date another of the files has. */
  twice: Audit[];
}

const siteOf = ({ inputs }: Audit) => String(inputs[0]).replace(/^'/, "");
const asAudit = (audit: Audit) => ({ site: siteOf(audit), block: audit.block }) as RegisteredAudit;
const titleOf = ({ block, day }: Audit) => `${block} of ${isoDay(day)}`;
const count = (number: number) => (number === 1 ? "1 audit" : `${number} audits`);

function planOf({ area, lines }: RegisterBook, audits: readonly Audit[]): Plan {
  const plan: Plan = { added: [], there: [], left: [], twice: [] };
  const used = new Set(lines.map(({ index }) => index));
  const free = Array.from({ length: boxOf(area).rows }, (_, index) => index).filter((index) => !used.has(index));
  audits.forEach((audit, place) => {
    const same = (other: Audit) => other.day === audit.day && sameBlock(asAudit(other), asAudit(audit));
    const line = lines.find((one) => one.audit.day === audit.day && sameBlock(one.audit, asAudit(audit)));
    if (audits.slice(0, place).some(same)) plan.twice.push(audit);
    else if (line) plan.there.push({ audit, index: line.index, row: line.row });
    else if (free.length === 0) plan.left.push(audit);
    else plan.added.push({ audit, index: free.shift()! });
  });
  return plan;
}

/** The line of the register by its index. */
function lineArea({ area }: RegisterBook, index: number) {
  const box = boxOf(area);
  return { sheet: area.sheet, address: boxAddress({ ...box, row: box.row + index, rows: 1 }) };
}

const writesOf = (book: RegisterBook, lines: readonly { audit: Audit; index: number }[]): Write[] =>
  lines.map(({ audit, index }) => ({ area: lineArea(book, index), inputs: [audit.inputs] }));

/** What could not be added, a sentence each. */
export const unread = (lines: readonly FileLine[]): string[] =>
  lines.flatMap((line) => ("problem" in line ? [`${line.name}: ${line.problem}`] : []));

/** Types an audit into the first line of an empty register. */
export async function firstAudit(host: Host, audit: FileLine): Promise<void> {
  const book = await readNow(host, REGISTER);
  if (!book || !("inputs" in audit)) return;
  await host.writeTogether(writesOf(book, [{ audit, index: 0 }]));
}

/**
 * Adds the audits of files to the register's first empty lines; what a line holds is never written over without asking.
 */
export async function addAudits(
  host: Host,
  files: readonly FileLine[],
  keep: (act: Act) => void,
): Promise<string | Question> {
  const book = await readNow(host, REGISTER);
  if (!book) throw new Error("This workbook has no register: add the nursery plan sheets first");
  const audits = files.filter((file): file is Audit => "inputs" in file);
  const { added, there, left, twice } = planOf(book, audits);
  if (added.length > 0) keep(await writeAll(host, writesOf(book, added), "audits"));
  const said = [
    added.length > 0
      ? `${count(added.length)} added from ${reference(lineArea(book, added[0]!.index))} on. Undo takes them out.`
      : "No audit was added.",
    twice.length > 0 && `In more than one file, only the first of them used: ${twice.map(titleOf).join(", ")}.`,
    left.length > 0 && `The register is full: no line is left for ${left.map(titleOf).join(", ")}.`,
  ]
    .filter(Boolean)
    .join(" ");
  if (there.length === 0) return said;
  const listed = there.map(({ audit, row }) => `${titleOf(audit)} in row ${row}`).join(", ");
  return {
    text: `${said} The register has ${there.length === 1 ? "this audit" : "these audits"} already: ${listed}. Replace what is there by what the file says?`,
    yes: "Replace",
    no: "Keep what is there",
    doing: "Replacing",
    act: async () => {
      keep(await writeAll(host, writesOf(book, there), "audits"));
      return `${count(there.length)} replaced. Undo puts back what was there.`;
    },
  };
}
