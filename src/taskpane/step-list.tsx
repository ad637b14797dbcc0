import { Button, Spinner, Tab, TabList, ToggleButton } from "@fluentui/react-components";
import { Activity, Suspense, useState } from "react";
import { MissingPart } from "./missing-part";
import type { StepProps } from "./step";
import { GROUPS, type Group, groupOf, STEPS } from "./steps";

type Props = StepProps & {
  current: string;
  choose: (id: string) => void;
  /** Whether something was typed in the pane. */
  typed: () => boolean;
};

const reload = () => location.reload();

/** The steps of one group as tabs; a step that was once open keeps what was typed in it. */
export function StepList({ current, choose, typed, ...props }: Props) {
  const [opened, setOpened] = useState<readonly string[]>([]);
  const [before, setBefore] = useState<Readonly<Partial<Record<Group, string>>>>({});
  const group = groupOf(current);
  if (!opened.includes(current)) setOpened([...opened, current]);
  if (before[group] !== current) setBefore({ ...before, [group]: current });
  const enter = (id: Group) => choose(before[id] ?? STEPS.find((step) => step.group === id)!.id);
  return (
    <>
      <fieldset className="groups" aria-label="What the pane is about">
        {GROUPS.map(({ id, title }) => (
          <ToggleButton key={id} size="small" checked={id === group} onClick={() => enter(id)}>
            {title}
          </ToggleButton>
        ))}
        <Button size="small" appearance="subtle" aria-pressed={group === "help"} onClick={() => enter("help")}>
          Functions
        </Button>
      </fieldset>
      <TabList
        className="steps"
        size="small"
        aria-label="Steps"
        selectedValue={current}
        onTabSelect={(_, { value }) => choose(String(value))}
      >
        {STEPS.filter((step) => step.group === group).map(({ id, title }) => (
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
          <div
            role="tabpanel"
            id={`canfall-step-${id}`}
            aria-labelledby={id === current ? `canfall-tab-${id}` : undefined}
          >
            <Suspense fallback={<Spinner size="tiny" label="Loading …" />}>
              <MissingPart typed={typed} reload={reload}>
                <Part {...props} />
              </MissingPart>
            </Suspense>
          </div>
        </Activity>
      ))}
    </>
  );
}
