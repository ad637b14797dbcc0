import { reference } from "../../cells/box";
import type { Host } from "../../hosts/host";
import { CellLink } from "../parts/cell-link";
import { Failure } from "../parts/task/failure";
import { useWatched } from "../workbook/use-watched";
import { SPEAKING_CHECKS, type SpeakingCheck } from "./read-checks";

const isIdle = ({ words }: SpeakingCheck) => words.startsWith("not checked");

function Checks({ host, checks }: { host: Host; checks: readonly SpeakingCheck[] }) {
  return (
    <ul>
      {checks.map(({ label, words, cell }) => (
        <li key={`${label} ${reference(cell)}`}>
          {label}: {words} <CellLink host={host} cell={cell} />
        </li>
      ))}
    </ul>
  );
}

/** What the data checks of the sheets Cans and Heads say, each with its cell; nothing where all are content. */
export function DataChecks({ host }: { host: Host }) {
  const { found, failure } = useWatched(host, SPEAKING_CHECKS);
  if (failure) return <Failure words={failure} />;
  const idle = found?.filter(isIdle) ?? [];
  const speaking = found?.filter((check) => !isIdle(check)) ?? [];
  return (
    <>
      <div role="status">
        {speaking.length > 0 && (
          <div className="problem">
            Data checks of the workbook
            <Checks host={host} checks={speaking} />
          </div>
        )}
      </div>
      {idle.length > 0 && (
        <details>
          <summary>Data checks that lack something: {idle.length}</summary>
          <Checks host={host} checks={idle} />
        </details>
      )}
    </>
  );
}
