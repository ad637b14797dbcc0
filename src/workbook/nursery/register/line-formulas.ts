import { SAME_BASIS, SHARE_KIND, WHY_NOT } from "../../../core/register/basis";
import { nestedIfs, quoted } from "../../form/nested-ifs";
import { FIRST_LINE, REGISTER_COLUMNS } from "./columns";
import { above, answer, counts, earlier, input, LAST_INPUT, plainGrid } from "./places";

/** Whether a line may take part, or what is wrong with it. */
export function lineCheck(row: number): string {
  const [block, day] = [input("block", row), input("day", row)];
  const twice =
    row === FIRST_LINE
      ? []
      : ([
          [
            `SUMPRODUCT((${above("w.key", row)}=${answer("w.key", row)})*(${above("w.rawDay", row)}=${answer("w.rawDay", row)}))>0`,
            '"a line above has this block and date"',
          ],
        ] as const);
  return nestedIfs(
    [
      [`COUNTA($A${row}:$${LAST_INPUT}${row})=0`, '""'],
      [`TRIM(${block})=""`, '"needs a block"'],
      [`${day}=""`, '"needs a date"'],
      [`${answer("w.rawDay", row)}=0`, '"the date must be a day such as 2026-11-25"'],
      ...twice,
      ...REGISTER_COLUMNS.flatMap(({ id, wrong }) =>
        wrong ? [[wrong[0].replaceAll("#", input(id, row)), quoted(wrong[1])] as const] : [],
      ),
    ],
    '"ok"',
  );
}

/** Whether a line may be compared with the earlier audit of its block, or why not. */
export function basisOf(row: number): string {
  const unknown = (id: string, why: string) =>
    [`OR(${input(id, row)}="",${earlier(id, row)}="")`, quoted(why)] as const;
  const differs = (id: string, why: string, as = (cell: string) => cell) =>
    [
      `${as(earlier(id, row))}<>${as(input(id, row))}`,
      `"${why}: "&${earlier(id, row)}&" and "&${input(id, row)}`,
    ] as const;
  return counts(
    row,
    nestedIfs(
      [
        [`${answer("w.earlierLine", row)}=0`, '"no earlier audit of this block"'],
        unknown("grid", WHY_NOT.gridUnknown),
        differs("grid", WHY_NOT.grid, plainGrid),
        unknown("cans", WHY_NOT.cansUnknown),
        differs("cans", WHY_NOT.cans),
        unknown("wind", WHY_NOT.windUnknown),
        differs("wind", WHY_NOT.wind),
        unknown("kind", WHY_NOT.kindUnknown),
        differs("kind", WHY_NOT.kind),
        [`${input("kind", row)}="${SHARE_KIND}"`, quoted(WHY_NOT.share)],
      ],
      quoted(SAME_BASIS),
    ),
  );
}

/** When a block is to be tested again, and why. */
export function retestOf(row: number): string {
  const drift = answer("drift", row);
  const drifted = `IF(ISNUMBER(${drift}),ABS(${drift})>Pressure_Drift_Percent,FALSE)`;
  const days = `(As_Of_Used-${answer("due", row)})`;
  const date = nestedIfs(
    [
      [`${days}>1`, `"overdue by "&${days}&" days"`],
      [`${days}=1`, '"overdue by 1 day"'],
      [`${days}=0`, '"due today"'],
    ],
    '""',
  );
  const pressure = `"pressure drifted by "&ROUND(${drift},0)&" %"`;
  return counts(
    row,
    nestedIfs(
      [
        [`${answer("w.later", row)}>0`, '"tested again"'],
        ['Retest_Lack<>""', "Retest_Lack"],
        [drifted, `IF(${days}>=0,${date}&"; ","due: ")&${pressure}`],
        [`${days}<0`, '"not due"'],
      ],
      date,
    ),
  );
}
