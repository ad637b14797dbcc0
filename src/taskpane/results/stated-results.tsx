import { MEASURES } from "../../core/figures/measures";
import type { Host } from "../../hosts/host";
import { Failure } from "../parts/failure";
import { figure } from "../parts/figure";
import { Verdict } from "../parts/verdict";
import { type NamedCell, type NamedCells, textIn } from "../workbook/named";
import { useNamed } from "../workbook/use-named";

const ROWS = [
  { figure: MEASURES.MAR, name: "MAR", verdict: "Verdict_MAR" },
  { figure: MEASURES.CU, name: "CU", verdict: "Verdict_CU" },
  { figure: MEASURES.DU, name: "DU_Quarter", verdict: "Verdict_DU" },
  { figure: MEASURES.SC_CAN, name: "SC_Can", verdict: "Verdict_SC" },
  { figure: MEASURES.SC_QUARTER, name: "SC_Quarter", verdict: "Verdict_SCQ" },
];
const NAMES = [
  "Positions_Uneven",
  ...ROWS.flatMap(({ name, verdict }) => [`Result_${name}`, `Weighted_${name}`, verdict]),
];

function Value({ found, unit, kind }: { found: NamedCell | undefined; unit: string; kind: string }) {
  if (!found) return null;
  const { value } = found;
  return (
    <span className="detail">
      {kind} {typeof value === "number" ? <span className="figure">{`${figure(value)} ${unit}`}</span> : textIn(found)}
    </span>
  );
}

function Row({
  found,
  row: {
    figure: { name: label, unit },
    name,
    verdict,
  },
}: {
  found: NamedCells;
  row: (typeof ROWS)[number];
}) {
  const plain = <Value found={found[`Result_${name}`]} unit={unit} kind="plain" />;
  const weighted = <Value found={found[`Weighted_${name}`]} unit={unit} kind="by area" />;
  const uneven = found.Positions_Uneven?.value === true;
  const words = textIn(found[verdict]);
  return (
    <tr>
      <th scope="row">{label}</th>
      <td className="right">
        {uneven ? weighted : plain}
        {uneven ? plain : weighted}
        {words && <Verdict words={words} />}
      </td>
    </tr>
  );
}

/** The results as the audit workbook states them, plain and by the area that each can stands for. */
export function StatedResults({ host }: { host: Host }) {
  const { found, failure } = useNamed(host, NAMES);
  if (failure) return <Failure words={failure} />;
  if (!found?.Result_MAR) return null;
  return (
    <section aria-labelledby="canfall-stated">
      <h2 id="canfall-stated">As the workbook states them</h2>
      <table>
        <caption>
          Verdicts here go by the value alone, since a sheet has no intervals; those above go by the whole interval and
          count every can alike, so the two may differ. Plain counts every can alike; by area counts each can for the
          area it stands for
          {found.Positions_Uneven?.value === true && ", which comes first since the cans stand unevenly"}
        </caption>
        <thead>
          <tr>
            <th scope="col">Measure</th>
            <th scope="col" className="right">
              Values and verdict
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
