import { positive, within } from "../core/checks";
import type { Host } from "../hosts/host";
import type { Done } from "./done";
import { Failure } from "./failure";
import { NamedField } from "./named-field";
import { typedNumber } from "./typed-number";
import { useNamed } from "./use-named";

const bed = (side: string) =>
  typedNumber(`bed ${side}`, "m", (name, value, unit) => within(name, value, 0.3, 500, unit));

const FACTS = [
  { name: "Site_Name", label: "Site", read: String },
  { name: "Block_Name", label: "Block", read: String },
  { name: "Bed_Width_m", label: "Bed width, across [m]", read: bed("width") },
  { name: "Bed_Length_m", label: "Bed length, along [m]", read: bed("length") },
  { name: "Test_Minutes", label: "Length of the test [min]", read: typedNumber("minutes", "min", positive) },
  {
    name: "Can_Mouth_mm",
    label: "Can mouth, inside diameter [mm]",
    read: typedNumber("mouth", "mm", positive),
  },
];
const NAMES = FACTS.map(({ name }) => name);

/** The facts without which an audit has no figures, where the workbook has cells for them. */
export function FirstFacts({ host, keep }: { host: Host; keep: (done: Done) => void }) {
  const { found, failure } = useNamed(host, NAMES);
  const there = FACTS.filter(({ name }) => found?.[name]);
  if (failure) return <Failure words={failure} />;
  if (there.length === 0) return null;
  return (
    <section aria-labelledby="canfall-facts">
      <h2 id="canfall-facts">First facts</h2>
      <p className="note">Written into the workbook's own cells; the sheets Block and Cans ask for the rest.</p>
      <div className="fields">
        {there.map(({ name, label, read }) => (
          <NamedField key={name} host={host} label={label} found={found![name]!} read={read} keep={keep} />
        ))}
      </div>
    </section>
  );
}
