import { Button } from "@fluentui/react-components";
import { useEffect, useId, useRef } from "react";
import type { Question } from "./question";
import type { Task } from "./use-task";

/** Asks before something is overwritten; keeping what is there has the focus. */
export function QuestionBox({ question, task }: { question: Question; task: Task }) {
  const id = useId();
  const keep = useRef<HTMLButtonElement | null>(null);
  useEffect(() => {
    const before = document.activeElement as HTMLElement | null;
    keep.current?.focus();
    return () => before?.focus();
  }, []);
  return (
    <div role="alertdialog" aria-labelledby={id} className="problem">
      <p id={id}>{question.text}</p>
      <div className="actions">
        <Button onClick={() => task.attempt(question.doing, question.act)}>{question.yes}</Button>
        <Button
          appearance="primary"
          onClick={task.clear}
          ref={(button: HTMLButtonElement | null) => {
            keep.current = button;
          }}
        >
          {question.no}
        </Button>
      </div>
    </div>
  );
}
