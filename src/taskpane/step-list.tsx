import { Spinner, Tab, TabList } from "@fluentui/react-components";
import { Activity, Suspense, useState } from "react";
import type { StepProps } from "./step";
import { STEPS } from "./steps";

/** The steps as tabs; a step that was once open keeps what was typed in it. */
export function StepList({ current, choose, ...props }: StepProps & { current: string; choose: (id: string) => void }) {
  const [opened, setOpened] = useState<readonly string[]>([]);
  if (!opened.includes(current)) setOpened([...opened, current]);
  return (
    <>
      <TabList
        className="steps"
        size="small"
        aria-label="Steps of the audit"
        selectedValue={current}
        onTabSelect={(_, { value }) => choose(String(value))}
      >
        {STEPS.map(({ id, title }) => (
          <Tab
            key={id}
            id={`canfall-tab-${id}`}
            value={id}
            aria-controls={id === current ? `canfall-step-${id}` : undefined}
          >
            {title}
          </Tab>
        ))}
      </TabList>
      {STEPS.filter(({ id }) => opened.includes(id)).map(({ id, Part }) => (
        <Activity key={id} mode={id === current ? "visible" : "hidden"}>
          <div role="tabpanel" id={`canfall-step-${id}`} aria-labelledby={`canfall-tab-${id}`}>
            <Suspense fallback={<Spinner size="tiny" label="Loading …" />}>
              <Part {...props} />
            </Suspense>
          </div>
        </Activity>
      ))}
    </>
  );
}
