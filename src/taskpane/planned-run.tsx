import { positive, within } from "../core/checks";
import type { Host } from "../hosts/host";
import type { Done } from "./done";
import { Failure } from "./failure";
import { figure } from "./figure";
import { type NamedCells, numberIn, textIn } from "./named";
import { NamedChoice } from "./named-choice";
import { NamedField } from "./named-field";
import { typedNumber } from "./typed-number";
import { useNamed } from "./use-named";

const NAMES = [
  "Result_Run_Time_min",
  "Net_Depth_mm",
  "Multiplier_Basis",
  "Share_Wanted",
  "Run_Multiplier",
  "Leaching_Fraction",
  "Leaching_Rule",
  "Mean_Drained_Share",
];

const share = (name: string, low: number, high: number) =>
  typedNumber(name, "", (parameter, value) => within(parameter, value, low, high));

function Planned({ found }: { found: NamedCells }) {
  const minutes = numberIn(found.Result_Run_Time_min);
  const times = numberIn(found.Run_Multiplier);
  const drained = numberIn(found.Mean_Drained_Share);
  return (
    <div className="driest" role="status">
      <p>
        {minutes === undefined ? (
          textIn(found.Result_Run_Time_min)
        ) : (
          <>
            Run for <strong>{figure(minutes)} min</strong>
          </>
        )}
      </p>
      {times !== undefined && <p>{figure(times)} times what an even bed would need</p>}
      {drained !== undefined && <p>Share of the water that drains, mean of the bed: {figure(drained)}</p>}
    </div>
  );
}

/** The run time as the audit workbook works it out, and what it is worked out from. */
export function PlannedRun({ host, keep }: { host: Host; keep: (done: Done) => void }) {
  const { found, failure } = useNamed(host, NAMES);
  if (failure) return <Failure words={failure} />;
  if (!found?.Result_Run_Time_min) return null;

  function field(name: string, label: string, read: (text: string) => number) {
    const cell = found?.[name];
    return cell && <NamedField host={host} label={label} found={cell} read={read} keep={keep} />;
  }
  function choice(name: string, label: string, of: readonly string[]) {
    const cell = found?.[name];
    return cell && <NamedChoice host={host} label={label} found={cell} of={of} keep={keep} />;
  }
  return (
    <section aria-labelledby="canfall-planned">
      <h2 id="canfall-planned">In the workbook</h2>
      <Planned found={found} />
      <div className="fields">
        {field(
          "Net_Depth_mm",
          "Net depth wanted in each pot, as the workbook has it [mm]",
          typedNumber("depth", "mm", positive),
        )}
        {choice("Multiplier_Basis", "The multiplier goes by", ["driest can", "low quarter", "share of pots"])}
        {field("Share_Wanted", "Share of the pots that must get the depth [0.5 to 1]", share("share", 0.5, 1))}
        {choice("Leaching_Rule", "Leaching", ["none", "larger", "both"])}
        {field("Leaching_Fraction", "Leaching fraction [share of the water]", share("leaching fraction", 0, 0.9))}
      </div>
    </section>
  );
}
