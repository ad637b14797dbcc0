import { Field, Select } from "@fluentui/react-components";
import { useState } from "react";
import { NamedChoice } from "../parts/fields/named-choice";
import { NamedField } from "../parts/fields/named-field";
import type { StepProps } from "../step";
import { FACTS } from "./group-facts";
import { titleOf } from "./missing";
import type { Group } from "./read-demand";

/** One pot group at a time, written into the workbook's own cells. */
export function GroupForm({ host, keep, groups }: Pick<StepProps, "host" | "keep"> & { groups: readonly Group[] }) {
  const [chosen, setChosen] = useState(0);
  const group = groups[chosen]!;
  return (
    <section aria-labelledby="canfall-pot-group">
      <h3 id="canfall-pot-group">A pot group</h3>
      <p className="note">
        Where pots of the group were weighed in a month (sheet Weighings), those count; else ET0 × coefficient × area. A
        coefficient means nothing without the area that it was found for: the pot's top, the canopy, or the ground.
      </p>
      <div className="fields">
        <Field label="Group">
          <Select value={String(chosen)} onChange={(_, { value }) => setChosen(Number(value))}>
            {groups.map((each, index) => (
              <option key={each.number} value={index}>
                {titleOf(each)}
              </option>
            ))}
          </Select>
        </Field>
        {FACTS.map((fact) => {
          const given = { host, keep, found: group.facts[fact.name], label: fact.label };
          const key = `${fact.name} ${group.number}`;
          return "of" in fact ? (
            <NamedChoice key={key} {...given} of={fact.of} />
          ) : (
            <NamedField key={key} {...given} read={fact.read} />
          );
        })}
      </div>
    </section>
  );
}
