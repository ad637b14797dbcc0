import { Button } from "@fluentui/react-components";
import { useState } from "react";
import { contract } from "../hosts/contract";
import type { Host } from "../hosts/host";

interface Failure {
  name: string;
  reason: string;
}

/** Runs every promise of the host port in this spreadsheet and says what failed. */
export function SelfTest({ host }: { host: Host }) {
  const [progress, setProgress] = useState("");
  const [failures, setFailures] = useState<Failure[]>([]);
  const [running, setRunning] = useState(false);

  async function run(): Promise<void> {
    setRunning(true);
    const failed: Failure[] = [];
    for (const [index, { name, check }] of contract.entries()) {
      setProgress(`Check ${index + 1} of ${contract.length}: ${name}`);
      try {
        await check(host);
      } catch (reason) {
        failed.push({ name, reason: reason instanceof Error ? reason.message : String(reason) });
      }
    }
    setFailures(failed);
    setProgress(`${contract.length - failed.length} of ${contract.length} checks passed in ${host.label}.`);
    setRunning(false);
  }

  return (
    <section aria-labelledby="canfall-self-test">
      <h2 id="canfall-self-test">Self-test</h2>
      <p className="note">
        Checks that the pane and this spreadsheet understand each other, on a scratch sheet that it adds and removes.
      </p>
      <Button disabledFocusable={running} onClick={run}>
        Run self-test
      </Button>
      <p role="status">{progress}</p>
      {failures.length > 0 && (
        <ul aria-label="Failed checks">
          {failures.map(({ name, reason }) => (
            <li key={name}>
              {name}: {reason}
            </li>
          ))}
        </ul>
      )}
    </section>
  );
}
