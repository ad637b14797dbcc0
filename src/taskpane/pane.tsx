import { FluentProvider } from "@fluentui/react-components";
import type { Host } from "../hosts/host";
import { Cautions } from "./cautions";
import type { FunctionInfo } from "./function-info";
import { FunctionList } from "./function-list";
import { InsertFunction } from "./insert-function";
import "./pane.css";
import { SelectionSummary } from "./selection-summary";
import { SelfTest } from "./self-test";
import { TestSettings } from "./test-settings";
import { theme } from "./theme";
import { useAnswer } from "./use-answer";
import { useDark } from "./use-dark";

/** The whole pane over one spreadsheet; `functions` is the list from functions.json, fetched where left out. */
export function Pane({ host, functions }: { host: Host; functions?: FunctionInfo[] }) {
  const dark = useDark();
  const { answer, entries, change, failure, readings } = useAnswer(host);
  return (
    <FluentProvider theme={theme(dark)} className="canfall">
      <h1>Canfall</h1>
      <p className="note">Sprinkler audit from catch cans</p>
      {failure && (
        <p role="alert" className="problem">
          {failure}
        </p>
      )}
      <SelectionSummary answer={answer} select={(area) => void host.select(area)} />
      <TestSettings
        entries={entries}
        settings={answer?.settings ?? null}
        sheet={answer?.selected.sheet ?? ""}
        change={change}
      />
      <InsertFunction
        host={host}
        selected={answer?.selected ?? null}
        readings={readings}
        settings={answer?.settings ?? null}
      />
      <Cautions />
      <FunctionList functions={functions} />
      <SelfTest host={host} />
    </FluentProvider>
  );
}
