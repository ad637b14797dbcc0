import { Button, Checkbox, Field, Input, ProgressBar, Select } from "@fluentui/react-components";
import { useEffect, useRef, useState } from "react";
import { ENTRIES } from "../../../core/figures/entries";
import { shortWithUnit } from "../../../core/figures/figure";
import { LAYOUT } from "../../../core/figures/layout";
import type { LayoutBasis } from "../../../core/layout/multiplier";
import type { Candidate } from "../../../core/layout/search/search";
import type { Host } from "../../../hosts/host";
import { TaskLine } from "../../parts/task/task-line";
import { useTask } from "../../parts/task/use-task";
import type { Act } from "../../workbook/act";
import { readNamed } from "../../workbook/named";
import { HeadList } from "../head-list";
import type { LayoutEntries } from "../layout-entries";
import type { Found } from "../worker/messages";
import { type Planner, wrongWith } from "../worker/planner";
import { fromAudit, SEARCH_NAMES } from "./audit-basis";
import { FIRST_SEARCH, type HeadEntries, type SearchEntries, STANDS, searchOf } from "./entries";
import { SearchResults } from "./results";
import { writeAfter } from "./write-after";

interface Props {
  host: Host;
  plans: Planner | null;
  entries: LayoutEntries;
  /** Shows a layout in the plan above. */
  open: (candidate: Candidate, head: HeadEntries) => void;
  keep: (act: Act) => void;
  id: string;
}

type TextName = Exclude<keyof SearchEntries, "heads" | "stands" | "basis">;

/** Tries every head, spacing and layout, and ranks them by what they cost a year. */
export function SearchSection({ host, plans, entries, open, keep, id }: Props) {
  const [search, setSearch] = useState(FIRST_SEARCH);
  const [progress, setProgress] = useState<{ tried: number; total: number } | null>(null);
  const [found, setFound] = useState<{ result: Found; asked: SearchEntries } | null>(null);
  const [problem, setProblem] = useState("");
  /** Whether the limits are those of the audit. */
  const [limited, setLimited] = useState(false);
  const running = useRef<{ stop(): void } | null>(null);
  const task = useTask();
  const change = (changed: Partial<SearchEntries>) => setSearch((before) => ({ ...before, ...changed }));

  useEffect(() => {
    readNamed(host, SEARCH_NAMES).then(
      (found) => {
        setSearch((before) => ({ ...before, ...fromAudit(found) }));
        setLimited(found.Limits_Table !== undefined);
      },
      () => {},
    );
  }, [host]);

  async function run(): Promise<void> {
    setProblem("");
    task.clear();
    try {
      const { found: asked, stop } = plans!.search(searchOf(search, entries), (tried, total) =>
        setProgress({ tried, total }),
      );
      running.current = { stop };
      setProgress({ tried: 0, total: 1 });
      setFound({ result: await asked, asked: search });
    } catch (reason) {
      setProblem(wrongWith(reason).message);
    }
    running.current = null;
    setProgress(null);
  }

  const write = (candidate: Candidate) =>
    task.attempt("Writing", () => writeAfter(host, candidate, found!.asked.basis, keep));

  const text = (name: TextName, label: string, hint = "") => (
    <Field label={label} hint={hint || null}>
      <Input value={search[name]} autoComplete="off" onChange={(_, { value }) => change({ [name]: value })} />
    </Field>
  );
  const fromLimits = limited ? "from the sheet Limits; blank: no limit" : "blank where there is no limit";
  return (
    <section aria-labelledby={`${id}-search`}>
      <h3 id={`${id}-search`}>Search for a better one</h3>
      <p className="note">Over the bed, cell, depth and pump that are typed above.</p>
      <HeadList heads={search.heads} change={(heads) => change({ heads })} />
      <fieldset>
        <legend>Layouts to try</legend>
        {Object.keys(STANDS).map((name) => (
          <Checkbox
            key={name}
            label={name}
            checked={search.stands.includes(name)}
            onChange={(_, { checked }) =>
              change({
                stands: checked ? [...search.stands, name] : search.stands.filter((each) => each !== name),
              })
            }
          />
        ))}
      </fieldset>
      <div className="fields pairs">
        {text("spacings", "Spacings across [m]", "with blanks between them")}
        {text("rowSpacings", "Spacings along [m]", "with blanks between them")}
        {text("highest", "Highest SC", fromLimits)}
        {text("lowRate", `Lowest ${shortWithUnit(LAYOUT.MAR)}`, fromLimits)}
        {text("highRate", `Highest ${shortWithUnit(LAYOUT.MAR)}`, fromLimits)}
        <Field label="SC and water by">
          <Select value={search.basis} onChange={(_, { value }) => change({ basis: value as LayoutBasis })}>
            <option value="driest">the driest cell</option>
            <option value="quarter">the low quarter</option>
          </Select>
        </Field>
        {text("waterPrice", "Price of water [per kL]")}
        {text("days", "Days watered a year")}
        {text("riserPrice", "Riser, each")}
        {text("pipePrice", "Pipe [per m]", "a lateral for each line of heads and a main across")}
        {text("life", "Life [years]")}
        {text("discount", `${ENTRIES.Upgrade_Rate.label} [% a year]`)}
      </div>
      <div className="actions">
        <Button appearance="primary" disabled={!plans || progress !== null} onClick={run}>
          Search
        </Button>
        {progress && <Button onClick={() => running.current?.stop()}>Stop</Button>}
      </div>
      {progress && (
        <Field label={`${progress.tried} of ${progress.total} tried`}>
          <ProgressBar value={progress.tried / progress.total} />
        </Field>
      )}
      {problem && (
        <p role="alert" className="problem">
          {problem}
        </p>
      )}
      <TaskLine task={task} />
      {found && (
        <SearchResults
          found={found.result}
          basis={found.asked.basis}
          open={(candidate) => open(candidate, found.asked.heads.find(({ name }) => name === candidate.head)!)}
          write={write}
        />
      )}
    </section>
  );
}
