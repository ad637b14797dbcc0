import { ASKED_FIRST, ENTRIES, type EntryName } from "../../core/figures/entries";
import { entryLabel } from "../../core/figures/entry";
import type { Host } from "../../hosts/host";
import { CANOPY_OVER, WALK_THROUGH } from "../../workbook/audit/block/lines";
import { entryReader } from "../parts/fields/entry-reader";
import { NamedChoice } from "../parts/fields/named-choice";
import { NamedField } from "../parts/fields/named-field";
import { Failure } from "../parts/task/failure";
import type { Act } from "../workbook/act";
import { useNamed } from "../workbook/use-named";

const asked = (name: EntryName, label: string) => ({ name, label, read: entryReader(ENTRIES[name]) });

const FACTS = [
  { name: "Site_Name", label: "Site", read: String },
  { name: "Block_Name", label: "Block", read: String },
  asked("Bed_Width_m", "Bed width, across [m]"),
  asked("Bed_Length_m", "Bed length, along [m]"),
  asked("Test_Minutes", entryLabel(ENTRIES.Test_Minutes)),
  asked("Can_Mouth_mm", entryLabel(ASKED_FIRST.Can_Mouth_mm)),
];
/** What is seen before the test, water running. */
const SEEN = [
  {
    name: "Walk_Through",
    label: "Walk-through before the test: blocked, leaning, mixed, leaking heads",
    of: WALK_THROUGH,
    blank: "not done",
  },
  { name: "Canopy_Over", label: "Hanging baskets or wet leaves over the cans", of: CANOPY_OVER, blank: "not said" },
];
const NAMES = [...FACTS, ...SEEN].map(({ name }) => name);

/** The facts without which an audit has no figures, where the workbook has cells for them. */
export function FirstFacts({ host, keep }: { host: Host; keep: (act: Act) => void }) {
  const { found, failure } = useNamed(host, NAMES);
  if (failure) return <Failure words={failure} />;
  if (!found?.Site_Name) return null;
  return (
    <section aria-labelledby="canfall-facts">
      <h2 id="canfall-facts">First facts</h2>
      <p className="note">Written into the workbook's own cells; the sheets Block and Cans ask for the rest.</p>
      <div className="fields">
        {FACTS.filter(({ name }) => found[name]).map(({ name, label, read }) => (
          <NamedField key={name} host={host} label={label} found={found[name]!} read={read} keep={keep} />
        ))}
        {SEEN.filter(({ name }) => found[name]).map(({ name, label, of, blank }) => (
          <NamedChoice key={name} host={host} label={label} found={found[name]!} of={of} blank={blank} keep={keep} />
        ))}
      </div>
    </section>
  );
}
