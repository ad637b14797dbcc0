import { Button } from "@fluentui/react-components";
import { useState } from "react";
import { recordSelfTest } from "../../hosts/contract/record";
import type { Host } from "../../hosts/host";

/** Runs every promise of the host port in this spreadsheet and says what failed. */
export function SelfTest({ host }: { host: Host }) {
  const [progress, setProgress] = useState("");
  const [failures, setFailures] = useState<{ name: string; error?: string }[]>([]);
  const [running, setRunning] = useState(false);
  const [record, setRecord] = useState("");

  async function run(): Promise<void> {
    setRunning(true);
    setFailures([]);
    setRecord("");
    const { results, text } = await recordSelfTest(host, (done, of) => setProgress(`Check ${done + 1} of ${of} …`));
    const failed = results.filter(({ error }) => error !== undefined);
    setFailures(failed);
    setProgress(`${results.length - failed.length} of ${results.length} checks passed in ${host.label}.`);
    setRecord(text);
    setRunning(false);
  }

  return (
    <section aria-labelledby="canfall-self-test">
      <h2 id="canfall-self-test">Self-test</h2>
      <p className="note">
        Checks that the pane and this spreadsheet understand each other, on trial sheets that it adds and removes. In
        Excel this empties Excel's own Undo, as do adding and removing sheets from the pane.
      </p>
      <Button disabledFocusable={running} onClick={run}>
        Run self-test
      </Button>
      <p role="status">{progress}</p>
      {failures.length > 0 && (
        <ul aria-label="Failed checks">
          {failures.map(({ name, error }) => (
            <li key={name}>
              {name}: {error}
            </li>
          ))}
        </ul>
      )}
      {record !== "" && (
        <details>
          <summary>The record, to send on: it holds no cell of your workbook</summary>
          <Button onClick={() => navigator.clipboard.writeText(record)}>Copy the record</Button>
          <pre>{record}</pre>
        </details>
      )}
    </section>
  );
}
