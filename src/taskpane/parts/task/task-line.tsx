import { Spinner } from "@fluentui/react-components";
import { Failure } from "./failure";
import { QuestionBox } from "./question-box";
import { useInSight } from "./use-in-sight";
import type { Task } from "./use-task";

/** What a task is doing, asks, has done or could not do. */
export function TaskLine({ task }: { task: Task }) {
  const { busy, message, problem, question } = task;
  const place = useInSight(question ?? (message || problem));
  return (
    <div className="task" ref={place}>
      {question && <QuestionBox question={question} task={task} />}
      <div role="status" className="progress">
        {busy ? <Spinner size="tiny" labelPosition="after" label={`${busy} …`} /> : message && <p>{message}</p>}
      </div>
      <Failure words={problem} />
    </div>
  );
}
