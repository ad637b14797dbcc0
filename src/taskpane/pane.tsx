import { FluentProvider } from "@fluentui/react-components";
import { useEffect, useState } from "react";
import type { Host } from "../hosts/host";
import { firstStep } from "./first-step";
import type { FunctionInfo } from "./help/function-info";
import "./pane.css";
import { useAnswer } from "./answer/use-answer";
import { Failure } from "./parts/failure";
import { useDark } from "./parts/use-dark";
import { StepList } from "./step-list";
import { theme } from "./theme";
import { UndoBar } from "./undo-bar";
import { useUndo } from "./workbook/use-undo";

/** The whole pane over one spreadsheet; `functions` is the list from functions.json, fetched where left out. */
export function Pane({ host, functions }: { host: Host; functions?: FunctionInfo[] }) {
  const dark = useDark();
  const { answer, entries, change, failure, readings } = useAnswer(host);
  const undo = useUndo(host);
  const [current, setCurrent] = useState<string | null>(null);

  useEffect(() => {
    const open = (step: string) => setCurrent((chosen) => chosen ?? step);
    firstStep(host).then(open, () => open("new"));
  }, [host]);

  return (
    <FluentProvider theme={theme(dark)} className="canfall">
      <h1>Canfall</h1>
      <p className="note">Sprinkler audit from catch cans</p>
      <Failure words={failure} />
      {current && (
        <StepList
          {...{ host, answer, readings, entries, change, functions, current }}
          keep={undo.keep}
          choose={setCurrent}
        />
      )}
      <UndoBar undo={undo} />
    </FluentProvider>
  );
}
