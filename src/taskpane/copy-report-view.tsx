import { useId } from "react";
import type { CheckedFile, CopyReport, Figure, Stated } from "../workbook/share/copy-report";
import { figure } from "./figure";

function inWords(value: Stated, unit: string): string {
  if (value === null || value === "") return "blank";
  if (typeof value === "number") return `${Number.isInteger(value) ? value : figure(value)} ${unit}`.trim();
  return typeof value === "boolean" ? String(value).toUpperCase() : value;
}

function Row({ one: { label, name, unit, stated, recomputed, agrees } }: { one: Figure }) {
  return (
    <tr>
      <th scope="row">{label || name}</th>
      <td>
        <span className="detail">stated</span>
        {inWords(stated, unit)}
      </td>
      <td>
        <span className="detail">recomputed</span>
        {inWords(recomputed, unit)}
      </td>
      <td>
        <span aria-hidden="true">{agrees ? "✓ " : "✗ "}</span>
        {agrees ? "agrees" : "does not agree"}
      </td>
    </tr>
  );
}

function Report({ report, name }: { report: CopyReport; name: string }) {
  const { facts, figures, findings, agrees, sentence } = report;
  const differing = figures.filter((one) => !one.agrees);
  return (
    <>
      <p className="where">{[facts.kind, facts.site, facts.block, facts.date].filter(Boolean).join(" · ")}</p>
      <p className={agrees ? "driest" : "problem"}>
        <span aria-hidden="true">{agrees ? "✓ " : "✗ "}</span>
        {sentence}
      </p>
      {findings.length > 0 && (
        <ul aria-label={`Findings in ${name}`}>
          {findings.map((finding) => (
            <li key={finding}>{finding}</li>
          ))}
        </ul>
      )}
      <table className="report">
        <caption>
          Each figure as the file states it and as its readings give it; those that do not agree come first
        </caption>
        <thead>
          <tr>
            <th scope="col">Figure</th>
            <th scope="col">Stated</th>
            <th scope="col">Recomputed</th>
            <th scope="col">Agrees</th>
          </tr>
        </thead>
        <tbody>
          {[...differing, ...figures.filter((one) => one.agrees)].map((one) => (
            <Row key={one.name} one={one} />
          ))}
        </tbody>
      </table>
    </>
  );
}

/** What the check of one file found, findings first. */
export function CopyReportView({ checked: { name, report, problem } }: { checked: CheckedFile }) {
  const id = useId();
  return (
    <section aria-labelledby={id}>
      <h3 id={id}>{name}</h3>
      {report ? <Report report={report} name={name} /> : <p className="problem">{problem}</p>}
    </section>
  );
}
