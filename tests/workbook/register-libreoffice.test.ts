import { beforeAll, describe, expect, it } from "vitest";
import { basis, SAME_BASIS } from "../../src/core/register/basis";
import { change } from "../../src/core/register/change";
import { earlierAudit } from "../../src/core/register/earlier-audit";
import { pressureDrift } from "../../src/core/register/pressure-drift";
import { type RegisteredAudit, sameBlock } from "../../src/core/register/registered-audit";
import { retest, retestWords } from "../../src/core/register/retest";
import type { Entries, Results } from "../../src/workbook/form/build";
import { columnOf, FIRST_LINE, LAST_LINE, REGISTER_COLUMNS } from "../../src/workbook/nursery/register/columns";
import { answerColumn } from "../../src/workbook/nursery/register/places";
import { REGISTER } from "../../src/workbook/nursery/register/register";
import { NURSERY } from "../../src/workbook/nursery/start/start";
import { PLANTED_WRONG } from "../support/planted";
import { recalculatedEntries } from "../support/recalculated";
import { type GeneratedRegister, generatedRegisters } from "../support/registers";

const SHEETS = [NURSERY, REGISTER];
const REGISTERS = generatedRegisters();
const TREND_FROM = LAST_LINE + 6;
const TREND_LINES = 12;

const entriesOf = ({ rows, months, drift, asOf, chosen }: GeneratedRegister): Entries => ({
  Register_Rows: rows,
  Retest_Months: months,
  Pressure_Drift_Percent: drift,
  Plan_Date: asOf,
  Register_Block: chosen,
});
const everywhere = (value: string | number): Entries => ({
  Register_Rows: Array.from({ length: 60 }, () => REGISTER_COLUMNS.map(() => value)),
  Retest_Months: value,
  Pressure_Drift_Percent: value,
  As_Of_Date: value,
  Register_Block: value,
});
const ODD: [string, Entries][] = [
  ["blank", {}],
  ["zeros", everywhere(0)],
  ["negatives", everywhere(-1)],
  ["words", everywhere("twelve")],
];

/** The same day so many months later, or the last one of a shorter month. */
function monthsAfter(day: number, months: number): number {
  const zero = Date.UTC(1899, 11, 30);
  const date = new Date(zero + day * 86_400_000);
  const [year, month] = [date.getUTCFullYear(), date.getUTCMonth() + months];
  const lastOfMonth = new Date(Date.UTC(year, month + 1, 0)).getUTCDate();
  return (Date.UTC(year, month, Math.min(date.getUTCDate(), lastOfMonth)) - zero) / 86_400_000;
}

let results: Results[];
beforeAll(async () => {
  results = await recalculatedEntries(SHEETS, [...REGISTERS.map(entriesOf), ...ODD.map(([, odd]) => odd)]);
}, 900_000);

const at = (found: Results, column: string, row: number) => found.get(`Register!${column}${row}`);

function expectSame(theirs: unknown, ours: number | string | null, about: string): void {
  if (typeof ours !== "number") expect(theirs, about).toBe(ours ?? "");
  else
    expect(Math.abs((theirs as number) - ours), `${about}: ${theirs}, ${ours}`).toBeLessThanOrEqual(
      1e-9 * (1 + Math.abs(ours)),
    );
}

describe("LibreOffice, recalculating registers with every cached value planted wrong, agrees with core", () => {
  it.each(REGISTERS.map((register, index) => ({ register, index, lines: register.rows.length })))(
    "on register $index of $lines lines",
    ({ register: { audits, months, drift, asOf }, index }) => {
      const found = results[index]!;
      const usable = audits.filter((audit) => audit !== null);
      audits.forEach((audit, line) => {
        const row = FIRST_LINE + line;
        const answer = (id: Parameters<typeof answerColumn>[0]) => at(found, answerColumn(id), row);
        const about = `row ${row}`;
        if (!audit) {
          expect(answer("line"), about).not.toMatch(/^(ok)?$/);
          expect(
            ["basis", "mar", "due", "retest"].map((id) => answer(id as "mar")),
            about,
          ).toEqual(["", "", "", ""]);
          return;
        }
        expect(answer("line"), about).toBe("ok");
        const earlier = earlierAudit(usable, audit);
        expectSame(answer("earlier"), earlier?.day ?? null, `${about}: earlier`);
        const changed = earlier
          ? change(earlier, audit)
          : { basis: "no earlier audit of this block", mar: null, cu: null, du: null, sc: null, water: null };
        for (const id of ["basis", "mar", "cu", "du", "sc", "water"] as const) {
          expectSame(answer(id), changed[id], `${about}: ${id}`);
        }
        expectSame(answer("drift"), pressureDrift(usable, audit), `${about}: drift`);
        const due = monthsAfter(audit.day, months);
        const ours = retest(usable, audit, { months, drift }, due, asOf);
        expectSame(answer("due"), ours.latest ? due : null, `${about}: due`);
        expect(answer("retest"), about).toBe(retestWords(ours));
      });
    },
  );

  it.each(REGISTERS.map((register, index) => ({ register, index })))(
    "on the chosen block of register $index, in the order of its days",
    ({ register: { audits, chosen }, index }) => {
      const found = results[index]!;
      const usable = audits.filter((audit) => audit !== null);
      const label = ({ site, block }: RegisteredAudit) => block.trim() + (site.trim() ? ` · ${site.trim()}` : "");
      const one = usable.find((audit) => label(audit) === chosen)!;
      const all = usable.filter((audit) => sameBlock(audit, one)).sort((a, b) => a.day - b.day);
      const shown = all.slice(-TREND_LINES);
      const latest = shown.at(-1)!;
      for (let k = 0; k < TREND_LINES; k += 1) {
        const row = TREND_FROM + k;
        const audit = shown[k];
        expectSame(at(found, columnOf("day"), row), audit?.day ?? null, `day in row ${row}`);
        expectSame(at(found, columnOf("mar"), row), audit?.mar ?? null, `MAR in row ${row}`);
        const same = audit === latest || (audit && basis(audit, latest) === SAME_BASIS);
        expect(at(found, "A", row)).toBe(audit ? (same ? "as the latest" : "other basis") : "");
      }
      const joined = shown.filter(
        (audit) => audit.cu !== null && (audit === latest || basis(audit, latest) === SAME_BASIS),
      );
      const [, cu] = REGISTER.charts!;
      const [every, line] = cu!.series.map(({ across, values }) => {
        const column = (range: string) => /^[A-Z]+/.exec(range)![0];
        const points = Array.from({ length: TREND_LINES }, (_, k) =>
          [across, values].map((range) => at(found, column(range), TREND_FROM + k)),
        );
        return points;
      });
      const withCu = shown.filter((audit) => audit.cu !== null);
      const points = (list: RegisteredAudit[]) =>
        Array.from({ length: TREND_LINES }, (_, k) => list[Math.min(k, list.length - 1)]).map((audit) =>
          audit ? [audit.day, audit.cu] : ["", ""],
        );
      expect(every).toEqual(points(withCu));
      expect(line).toEqual(points(joined.length > 0 ? joined : withCu.slice(-1)));
    },
  );
});

describe("a register", () => {
  it.each(ODD.map(([title], index) => ({ title, index })))("of $title shows no error value", ({ index }) => {
    const found = [...results[REGISTERS.length + index]!];
    const errors = found.filter(([, value]) => /^(#|Err:)/.test(String(value)) || value === PLANTED_WRONG);
    expect(errors).toEqual([]);
  });

  it("that is blank says nothing beside its lines, and what it needs", () => {
    const found = results[REGISTERS.length]!;
    const beside = Array.from({ length: 60 }, (_, line) => at(found, answerColumn("line"), FIRST_LINE + line));
    expect(new Set(beside)).toEqual(new Set([""]));
    expect([...found.values()]).toContain("needs a line of the register");
  });
});
