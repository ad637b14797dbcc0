import { isoDay } from "../../cells/day-number";
import { SAME_BASIS } from "../../core/register/basis";
import { labelOf, type RegisterBook, type RegisterLine, usable } from "./read-register";

const isDue = ({ retest }: RegisterLine) => /^(due|overdue)/.test(retest);

function List({ title, none, lines }: { title: string; none: string; lines: readonly [key: number, words: string][] }) {
  return (
    <>
      <h3>{title}</h3>
      {lines.length === 0 ? (
        <p>{none}</p>
      ) : (
        <ul>
          {lines.map(([key, words]) => (
            <li key={key}>{words}</li>
          ))}
        </ul>
      )}
    </>
  );
}

/** What is due, what may not be compared, and what is wrong with a line: all as the sheet says it. */
export function Findings({ book }: { book: RegisterBook }) {
  const lines = usable(book);
  const due = lines
    .filter(isDue)
    .sort((one, other) => (one.due ?? 0) - (other.due ?? 0))
    .map(({ row, audit, retest, due: day }): [number, string] => [
      row,
      `${labelOf(audit)}: ${retest} (last tested ${isoDay(audit.day)}${day === null ? "" : `, re-test by ${isoDay(day)}`})`,
    ]);
  const apart = lines
    .filter(({ earlier, basis }) => earlier !== null && basis !== SAME_BASIS)
    .map(({ row, audit, earlier, basis }): [number, string] => [
      row,
      `${labelOf(audit)}, ${isoDay(earlier)} and ${isoDay(audit.day)}: ${basis}`,
    ]);
  const wrong = book.lines
    .filter(({ said }) => said !== "ok" && said !== "")
    .map(({ row, audit, said }): [number, string] => [row, `Row ${row}${audit.block && ` (${audit.block})`}: ${said}`]);
  const lack = lines.find(({ retest }) => retest.startsWith("needs "))?.retest;
  return (
    <div role="status">
      <List title="Due for a re-test" none={lack ? `Not known: ${lack}.` : "No block is due."} lines={due} />
      <List title="May not be compared" none="Every audit is on the basis of the one before it." lines={apart} />
      {wrong.length > 0 && <List title="Lines that take no part" none="" lines={wrong} />}
    </div>
  );
}
