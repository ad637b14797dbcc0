import { MEASURES } from "../../core/figures/measures";
import type { Host } from "../../hosts/host";
import { Failure } from "../parts/failure";
import { figure } from "../parts/figure";
import { Verdict } from "../parts/verdict";
import { type NamedCells, textIn } from "../workbook/named";
import { useNamed } from "../workbook/use-named";

const ROWS = [
  { figure: MEASURES.MAR, name: "Used_MAR", verdict: "Verdict_MAR" },
  { figure: MEASURES.CU, name: "Used_CU", verdict: "Verdict_CU" },
  { figure: MEASURES.DU, name: "Used_DU", verdict: "Verdict_DU" },
  { figure: MEASURES.SC_CAN, name: "Used_SC_Can", verdict: "Verdict_SC" },
  { figure: MEASURES.SC_QUARTER, name: "Used_SC_Quarter", verdict: "Verdict_SCQ" },
];
const NAMES = ROWS.flatMap(({ name, verdict }) => [name, verdict]);

function Row({ found, row }: { found: NamedCells; row: (typeof ROWS)[number] }) {
  const { name: label, unit } = row.figure;
  const value = found[row.name]?.value;
  const words = textIn(found[row.verdict]);
  return (
    <tr>
      <th scope="row">{label}</th>
      <td className="right">
        {typeof value === "number" ? (
          <span className="figure">{`${figure(value)} ${unit || "ratio"}`}</span>
        ) : (
          textIn(found[row.name])
        )}
        {words && <Verdict words={words} />}
      </td>
    </tr>
  );
}

/** The results as the audit workbook states them. */
export function StatedResults({ host }: { host: Host }) {
  const { found, failure } = useNamed(host, NAMES);
  if (failure) return <Failure words={failure} />;
  if (!found?.Used_MAR) return null;
  return (
    <section aria-labelledby="canfall-stated">
      <h2 id="canfall-stated">As the workbook states them</h2>
      <table>
        <caption>
          The workbook compares the value alone with the limit; the table above compares the whole 90 % interval. The
          two can differ.
        </caption>
        <thead>
          <tr>
            <th scope="col">Measure</th>
            <th scope="col" className="right">
              Value and verdict
            </th>
          </tr>
        </thead>
        <tbody>
          {ROWS.map((row) => (
            <Row key={row.name} found={found} row={row} />
          ))}
        </tbody>
      </table>
    </section>
  );
}
