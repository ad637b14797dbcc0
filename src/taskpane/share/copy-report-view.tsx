import { useId } from "react";
import type { Stated } from "../../cells/stated";
import type { Host } from "../../hosts/host";
import { NOT_GIVEN } from "../../share/check/agreement";
import type { CheckedFile, CopyReport, Figure } from "../../share/copy-report";
import type { FindingClass } from "../../share/finding";
import { figureText, plainNumber } from "../../share/looks/cells/shown";
import { useRevealed } from "../parts/use-revealed";
import { OwnReport } from "./own-report";

/** Of figures that agree; more are shown of those that do not, since they may differ only far behind. */
const DIGITS = 6;
const DIGITS_APART = 12;

function inWords(value: Stated, unit: string, digits: number): string {
  if (value === null || value === "") return "blank";
  if (typeof value === "number") return `${plainNumber(value, digits)} ${unit}`.trim();
  return typeof value === "boolean" ? String(value).toUpperCase() : value;
}

function Row({ one: { label, name, place, unit, stated, recomputed, shown, agrees } }: { one: Figure }) {
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
        {!agrees && <span className="detail">shown as {shown || "nothing"}</span>}
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

/** Its entries are missing, in the file as in what is recomputed. */
const isLacking = ({ agrees, recomputed }: Figure) => agrees && recomputed === NOT_GIVEN;

function Sentences({ label, sentences }: { label: string; sentences: readonly string[] }) {
  return (
    <ul aria-label={label}>
      {sentences.map((sentence) => (
        <li key={sentence}>{sentence}</li>
      ))}
    </ul>
  );
}

const CLASSES: readonly [FindingClass, string][] = [
  ["changed", "Changed"],
  ["hides or misleads", "Hides or misleads"],
  ["added", "Added, harmless"],
];
const MAIN = ["Used_MAR", "Used_CU", "Used_DU", "Used_SC_Can", "Result_Run_Time_min", "Result_Water_kL"];

function MainFigures({ figures }: { figures: readonly Figure[] }) {
  const main = figures.filter(({ name, stated }) => MAIN.includes(name) && typeof stated === "number");
  if (main.length === 0) return null;
  return (
    <dl className="figures">
      {main.map(({ name, label, unit, stated, format }) => (
        <div key={name}>
          <dt>{label}</dt>
          <dd>{`${figureText(stated, format)} ${unit}`.trim()}</dd>
        </div>
      ))}
    </dl>
  );
}

interface Props {
  host: Host;
  report: CopyReport;
  name: string;
  other: string;
}

function Report({ host, report, name, other }: Props) {
  const { facts, figures, findings, follows, code, oldCode, agrees, sentence, news } = report;
  const differing = figures.filter((one) => !one.agrees);
  const lacking = figures.filter(isLacking);
  const agreeing = figures.filter((one) => one.agrees && !isLacking(one));
  return (
    <>
      <p className="where">{[facts.kind, facts.site, facts.block, facts.date].filter(Boolean).join(" · ")}</p>
      <p className={agrees ? "driest" : "problem"}>
        <span aria-hidden="true">{agrees ? "✓ " : "✗ "}</span>
        {sentence}
      </p>
      {other && <p className="problem">✗ {other}</p>}
      {news && <p className="note">{news}</p>}
      {code && (
        <p className="note">
          Code of what was typed: <strong>{code}</strong>.{" "}
          {oldCode
            ? `Its pages have the code ${oldCode} of the copy as it was made.`
            : "It is of entries alone: an unchanged copy has it on Report and at the foot of each page, and so may one whose figures or looks were changed."}
        </p>
      )}
      {agrees && <MainFigures figures={figures} />}
      {CLASSES.map(([kind, heading]) => {
        const here = findings.filter((one) => one.class === kind).map(({ text }) => text);
        if (here.length === 0) return null;
        return (
          <div key={kind}>
            <h4>
              {heading}: {here.length}
            </h4>
            <Sentences label={`${heading} in ${name}`} sentences={here} />
          </div>
        );
      })}
      <OwnReport host={host} file={name} report={report} other={other} />
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
      {lacking.length > 0 && (
        <details>
          <summary>Figures that cannot be given: {lacking.length}</summary>
          <Figures caption="Their entries are missing; the file says so too" figures={lacking} />
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

/**
 * What the check of one file found, findings first.
 *
 * @param other What speaks of another code than the first of its site, block and date; "" where nothing does
 * @param revealed Brings it into view
 */
export function CopyReportView({
  host,
  checked,
  other = "",
  revealed = false,
}: {
  host: Host;
  checked: CheckedFile;
  other?: string;
  revealed?: boolean;
}) {
  const { name, report, problem } = checked;
  const id = useId();
  const heading = useRevealed(revealed ? checked : null);
  return (
    <section aria-labelledby={id}>
      <h3 id={id} ref={heading} tabIndex={-1}>
        {name}
      </h3>
      {report ? <Report host={host} report={report} name={name} other={other} /> : <p className="problem">{problem}</p>}
    </section>
  );
}
