import type { Host } from "../../hosts/host";
import { NamedChoice } from "../parts/fields/named-choice";
import type { Act } from "../workbook/act";
import { textIn } from "../workbook/named";
import { useNamed } from "../workbook/use-named";
import { labelOf, type RegisterBook, usable } from "./read-register";
import { TrendChart } from "./trend-chart";
import { trendsOf } from "./trends";

const CHOICE = ["Register_Block"];

const comparedLabel = (label: string) => label.trim().toLowerCase();

/** The block that the sheet shows, over time. */
export function TrendSection({
  host,
  keep,
  book,
  id,
}: {
  host: Host;
  keep: (act: Act) => void;
  book: RegisterBook;
  id: string;
}) {
  const { found } = useNamed(host, CHOICE);
  const lines = usable(book);
  const labels = lines
    .map(({ audit }) => labelOf(audit))
    .filter((label, index, all) => all.findIndex((other) => comparedLabel(other) === comparedLabel(label)) === index);
  const choice = found?.Register_Block;
  const chosen = choice ? textIn(choice) : "";
  const line = lines.find(({ audit }) => comparedLabel(labelOf(audit)) === comparedLabel(chosen || (labels[0] ?? "")));
  if (lines.length === 0) return null;
  return (
    <section aria-labelledby={`${id}-trend`}>
      <h3 id={`${id}-trend`}>One block over time</h3>
      {choice && (
        <NamedChoice
          host={host}
          keep={keep}
          label="Block"
          found={choice}
          of={labels}
          blank={`none chosen: ${labels[0]}`}
        />
      )}
      {line ? (
        trendsOf(
          lines.map(({ audit }) => audit),
          line.audit,
        ).map((trend) => <TrendChart key={trend.id} trend={trend} block={line.audit.block} />)
      ) : (
        <p>The register has no block named {chosen}: choose one from the list.</p>
      )}
    </section>
  );
}
