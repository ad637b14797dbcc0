import { Button } from "@fluentui/react-components";
import { useState } from "react";
import { runContract } from "../../hosts/contract/contract";
import type { Host } from "../../hosts/host";

/** Runs every promise of the host port in this spreadsheet and says what failed. */
export function SelfTest({ host }: { host: Host }) {
  const [progress, setProgress] = useState("");
  const [failures, setFailures] = useState<{ name: string; error?: string }[]>([]);
  const [running, setRunning] = useState(false);

  async function run(): Promise<void> {
    setRunning(true);
    setFailures([]);
    setProgress("Running the checks…");
    const results = await runContract(host);
    const failed = results.filter(({ error }) => error !== undefined);
    setFailures(failed);
    setProgress(`${results.length - failed.length} of ${results.length} checks passed in ${host.label}.`);
    setRunning(false);
  }

  return (
    <section aria-labelledby="canfall-self-test">
      <h2 id="canfall-self-test">Self-test</h2>
      <p className="note">
        Checks that the pane and this spreadsheet understand each other, on trial sheets that it adds and removes.
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
    </section>
  );
}
