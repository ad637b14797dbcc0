import { Button, ProgressBar } from "@fluentui/react-components";
import { useEffect, useState } from "react";
import type { Night } from "../../core/program/fit-night";
import type { Program } from "../../core/program/program";
import type { Remedy } from "../../core/program/remedies";
import { Failure } from "../parts/task/failure";
import { remedyWords } from "./night-words";
import { useRun } from "./use-run";

/** The single changes that would make a night fit, each found by fitting the changed night. */
export function RemediesSection({ program, night, id }: { program: Program; night: Night; id: string }) {
  const [found, setFound] = useState<Remedy[]>([]);
  const [state, setState] = useState<"looking" | "all" | "stopped">("looking");
  const { running, problem, start, stop } = useRun();

  useEffect(() => {
    let left = false;
    setFound([]);
    setState("looking");
    start({ kind: "remedies", program, night }, (said) => {
      if (said.kind === "remedy" && !left) setFound((before) => [...before, said.remedy]);
    }).then((whole) => {
      if (!left) setState(whole ? "all" : "stopped");
    });
    return () => {
      left = true;
      stop();
    };
  }, [program, night, start, stop]);

  return (
    <section aria-labelledby={`${id}-remedies`}>
      <h3 id={`${id}-remedies`}>One change that would make it fit</h3>
      {running && (
        <>
          <p role="status">Trying changes one by one …</p>
          <ProgressBar aria-label="Trying changes" />
          <div className="actions">
            <Button onClick={stop}>Stop</Button>
          </div>
        </>
      )}
      <ul aria-live="polite">
        {found.map((remedy) => (
          <li key={JSON.stringify(remedy)}>{remedyWords(program, remedy)}</li>
        ))}
      </ul>
      {state === "all" && found.length === 0 && (
        <p>No single change that was tried makes it fit: several are needed.</p>
      )}
      {state === "stopped" && <p className="note">Stopped: not all changes were tried.</p>}
      {state === "all" && found.length > 0 && (
        <p className="note">{found.length === 1 ? "This" : "Each of them"} alone is enough. Others may be, too.</p>
      )}
      <Failure words={problem} />
    </section>
  );
}
