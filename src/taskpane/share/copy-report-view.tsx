import { useId } from "react";
import type { Stated } from "../../cells/stated";
import type { CheckedFile, CopyReport, Figure } from "../../share/copy-report";
import { useRevealed } from "../parts/use-revealed";

/** Of figures that agree; more are shown of those that do not, since they may differ only far behind. */
const DIGITS = 6;
const DIGITS_APART = 12;

function inWords(value: Stated, unit: string, digits: number): string {
  if (value === null || value === "") return "blank";
  if (typeof value === "number") return `${Number(value.toPrecision(digits))} ${unit}`.trim();
  return typeof value === "boolean" ? String(value).toUpperCase() : value;
}

function Row({ one: { label, name, place, unit, stated, recomputed, agrees } }: { one: Figure }) {
  const digits = agrees ? DIGITS : DIGITS_APART;
  return (
    <tr>
      <th scope="row">
        {label || name}
        {!agrees && <span className="detail">{place}</span>}
      </th>
      <td>
        <span className="detail">stated</span>
        {inWords(stated, unit, digits)}
      </td>
      <td>
        <span className="detail">recomputed</span>
        {inWords(recomputed, unit, digits)}
      </td>
      <td>
        <span aria-hidden="true">{agrees ? "✓ " : "✗ "}</span>
        {agrees ? "agrees" : "does not agree"}
      </td>
    </tr>
  );
}

function Figures({ caption, figures }: { caption: string; figures: readonly Figure[] }) {
  return (
    <table className="report">
      <caption>{caption}</caption>
      <thead>
        <tr>
          <th scope="col">Figure</th>
          <th scope="col">Stated</th>
          <th scope="col">Recomputed</th>
          <th scope="col">Agrees</th>
        </tr>
      </thead>
      <tbody>
        {figures.map((one) => (
          <Row key={one.name} one={one} />
        ))}
      </tbody>
    </table>
  );
}

function Sentences({ label, sentences }: { label: string; sentences: readonly string[] }) {
  return (
    <ul aria-label={label}>
      {sentences.map((sentence) => (
        <li key={sentence}>{sentence}</li>
      ))}
    </ul>
  );
}

function Report({ report, name }: { report: CopyReport; name: string }) {
  const { facts, figures, findings, follows, agrees, sentence, news } = report;
  const differing = figures.filter((one) => !one.agrees);
  const agreeing = figures.filter((one) => one.agrees);
  return (
    <>
      <p className="where">{[facts.kind, facts.site, facts.block, facts.date].filter(Boolean).join(" · ")}</p>
      <p className={agrees ? "driest" : "problem"}>
        <span aria-hidden="true">{agrees ? "✓ " : "✗ "}</span>
        {sentence}
      </p>
      {news && <p className="note">{news}</p>}
      {findings.length > 0 && <Sentences label={`Findings in ${name}`} sentences={findings} />}
      {follows.length > 0 && (
        <details>
          <summary>What follows from that: {follows.length} more cells</summary>
          <Sentences label={`What follows from the findings in ${name}`} sentences={follows} />
        </details>
      )}
      {differing.length > 0 && (
        <details open>
          <summary>Figures that do not agree: {differing.length}</summary>
          <Figures
            caption="As the file states them in their cells, and as its readings give them"
            figures={differing}
          />
        </details>
      )}
      {agreeing.length > 0 && (
        <details>
          <summary>Figures that agree: {agreeing.length}</summary>
          <Figures caption="As the file states them, and as its readings give them" figures={agreeing} />
        </details>
      )}
    </>
  );
}

/** What the check of one file found, findings first; `revealed` brings it into view. */
export function CopyReportView({ checked, revealed = false }: { checked: CheckedFile; revealed?: boolean }) {
  const { name, report, problem } = checked;
  const id = useId();
  const heading = useRevealed(revealed ? checked : null);
  return (
    <section aria-labelledby={id}>
      <h3 id={id} ref={heading} tabIndex={-1}>
        {name}
      </h3>
      {report ? <Report report={report} name={name} /> : <p className="problem">{problem}</p>}
    </section>
  );
}
