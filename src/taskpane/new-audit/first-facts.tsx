import { within } from "../../core/checks";
import type { Host } from "../../hosts/host";
import { Failure } from "../parts/failure";
import { NamedField } from "../parts/named-field";
import { typedNumber } from "../parts/typed-number";
import type { Act } from "../workbook/act";
import { useNamed } from "../workbook/use-named";

/** Bounds as in the workbook's own checks, which hold for what is typed into cells only. */
const measure = (name: string, unit: string, least: number, most: number) =>
  typedNumber(name, unit, (parameter, value) => within(parameter, value, least, most, unit));

const FACTS = [
  { name: "Site_Name", label: "Site", read: String },
  { name: "Block_Name", label: "Block", read: String },
  { name: "Bed_Width_m", label: "Bed width, across [m]", read: measure("bed width", "m", 0.3, 500) },
  { name: "Bed_Length_m", label: "Bed length, along [m]", read: measure("bed length", "m", 0.3, 500) },
  { name: "Test_Minutes", label: "Length of the test [min]", read: measure("minutes", "min", 0.1, 1440) },
  {
    name: "Can_Mouth_mm",
    label: "Can mouth, inside diameter [mm]",
    read: measure("mouth", "mm", 10, 1000),
  },
];
const NAMES = FACTS.map(({ name }) => name);

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
      </div>
    </section>
  );
}
