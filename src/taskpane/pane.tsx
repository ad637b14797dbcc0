import { FluentProvider } from "@fluentui/react-components";
import { useCallback, useEffect, useMemo, useRef, useState } from "react";
import type { Host } from "../hosts/host";
import { FIRST_STEP } from "./first-step";
import type { FunctionInfo } from "./help/function-info";
import "./pane.css";
import { useAnswer } from "./answer/use-answer";
import { Failure } from "./parts/task/failure";
import { useDark } from "./parts/use-dark";
import { useSheetFollows } from "./sheet-follows";
import { SlowNotice } from "./slow-notice";
import { StepList } from "./step-list";
import { theme } from "./theme";
import { UndoBar } from "./undo-bar";
import { useTyped } from "./use-typed";
import { notingMoves } from "./workbook/own-moves";
import { useUndo } from "./workbook/use-undo";
import { useWatched } from "./workbook/use-watched";

interface Props {
  host: Host;
  /** The list from functions.json, fetched where left out. */
  functions?: FunctionInfo[];
  /** Is given what opens the step Share and checks files there, for the page around the pane. */
  lead?: (check: (files: readonly File[]) => void) => void;
}

/** The whole pane over one spreadsheet. */
export function Pane({ host: given, functions, lead }: Props) {
  const dark = useDark();
  const moves = useRef({ sheet: "", opened: false });
  const host = useMemo(() => notingMoves(given, moves.current), [given]);
  const { answer, entries, change, failure, readings } = useAnswer(host);
  const undo = useUndo(host);
  const [current, setCurrent] = useState<string | null>(null);
  const first = useWatched(host, FIRST_STEP);
  const step = first.found ?? (first.failure ? "new" : null);
  if (current === null && step !== null) setCurrent(step);
  const place = useRef<HTMLDivElement>(null);
  const typed = useTyped(place);
  const content = useRef<HTMLDivElement>(null);
  const { clear } = undo.task;
  const go = useCallback(
    (id: string) => {
      clear();
      content.current?.scrollTo?.({ top: 0 });
      setCurrent(id);
    },
    [clear],
  );
  const [handed, setHanded] = useState<readonly File[]>();
  useEffect(() => {
    lead?.((files) => {
      setHanded(files);
      go("share");
    });
  }, [lead, go]);
  const toSheetOf = useSheetFollows(host, { place, moves }, current, go);
  const choose = (id: string) => {
    go(id);
    toSheetOf(id);
  };

  return (
    <FluentProvider theme={theme(dark)} className="canfall">
      <div className="frame" ref={place}>
        <div className="content" ref={content}>
          <h1>Canfall</h1>
          <Failure words={failure} />
          {current && (
            <StepList
              {...{ host, answer, readings, entries, change, functions, current, handed }}
              keep={undo.keep}
              choose={choose}
              typed={typed}
            />
          )}
        </div>
        <div>
          <SlowNotice host={host} />
          <UndoBar {...{ host, undo }} />
        </div>
      </div>
    </FluentProvider>
  );
}
