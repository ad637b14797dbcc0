import { RUN_TIME } from "../../core/figures/run-time";
import type { Host } from "../../hosts/host";
import { NamedChoice } from "../parts/fields/named-choice";
import { NamedField } from "../parts/fields/named-field";
import { figure } from "../parts/figure";
import { Failure } from "../parts/task/failure";
import { Term } from "../parts/term";
import type { Act } from "../workbook/act";
import { type NamedCells, numberIn, textIn } from "../workbook/named";
import { useNamed } from "../workbook/use-named";
import { RUN_TIME_FIELDS } from "./fields";
import { GROUP_NAMES, PotGroups } from "./pot-groups";

const ANSWERS = [
  "Result_Run_Time_min",
  "Valve_Run_min",
  "Valve_Words",
  "Net_Depth_mm",
  "Run_Multiplier",
  "Gross_Depth_mm",
  "Mean_Drained_Share",
  "Between_Pots_Share",
  "Pots_Drained_Share",
  "Pulse_Count",
  "Pulse_min",
  "Pulses_Elapsed_min",
  "Bed_Litres_A_Day",
];
/** Not used where pot groups are filled in: each has its own on the sheet Pots. */
const ONE_SIZE: ReadonlySet<string> = new Set(["Depth_Typed_mm", "Pot_Use_mL", "Capture_Factor"]);
const NAMES = [...ANSWERS, ...GROUP_NAMES, ...RUN_TIME_FIELDS.map(({ name }) => name)];

/** One line for each answer that the workbook has; a bare text says what is still needed. */
function lines(found: NamedCells): string[] {
  const of = (name: string) => numberIn(found[name]);
  const [net, gross] = [of("Net_Depth_mm"), of("Gross_Depth_mm")];
  const [count, each, elapsed] = [of("Pulse_Count"), of("Pulse_min"), of("Pulses_Elapsed_min")];
  const [between, pots] = [of("Between_Pots_Share"), of("Pots_Drained_Share")];
  const [drained, litres] = [of("Mean_Drained_Share"), of("Bed_Litres_A_Day")];
  return [
    gross !== undefined ? `${RUN_TIME.GROSS_DEPTH.name} ${figure(gross)} mm` : "",
    count !== undefined && count > 1 && each !== undefined && elapsed !== undefined
      ? `In ${count} pulses of ${figure(each)} min, ${figure(elapsed)} min from start to end`
      : "",
    net !== undefined && between !== undefined && pots !== undefined
      ? `Of the bed's water ${figure(between * 100)} % falls between the pots and ${figure(pots * 100)} % drains from them`
      : net !== undefined && drained !== undefined
        ? `${figure(drained * 100)} % of the water that reaches pots drains, on average over the pots`
        : "",
    litres !== undefined ? `${figure(litres)} L a day falling on ${textIn(found.Valve_Words) || "the bed"}` : "",
  ].filter(Boolean);
}

function Planned({ found }: { found: NamedCells }) {
  const minutes = numberIn(found.Result_Run_Time_min);
  const valve = numberIn(found.Valve_Run_min) ?? minutes;
  const [net, times] = [numberIn(found.Net_Depth_mm), numberIn(found.Run_Multiplier)];
  return (
    <div className="driest" role="status">
      {minutes === undefined ? (
        <p>
          {RUN_TIME.TIME.name}: {textIn(found.Result_Run_Time_min)}
        </p>
      ) : (
        <p>
          Run for <strong>{figure(valve!)} min</strong> a day
          {valve! > minutes &&
            `: the longest run of the beds on the valve. This bed alone needs ${figure(minutes)} min`}
        </p>
      )}
      {net !== undefined && times !== undefined && (
        <p>
          {RUN_TIME.NET_DEPTH.short} {figure(net)} mm; <Term of="run-time multiplier" shown="multiplier" />{" "}
          {figure(times)}
        </p>
      )}
      {lines(found).map((line) => (
        <p key={line}>{line}</p>
      ))}
    </div>
  );
}

/** The run time as the audit workbook works it out, and what it is calculated from. */
export function PlannedRun({ host, keep }: { host: Host; keep: (act: Act) => void }) {
  const { found, failure } = useNamed(host, NAMES);
  if (failure) return <Failure words={failure} />;
  if (!found?.Result_Run_Time_min) return null;
  const several = (numberIn(found.Groups_In_Use) ?? 0) > 0;
  return (
    <section aria-labelledby="canfall-planned">
      <h2 id="canfall-planned">{RUN_TIME.TIME.name} in the workbook</h2>
      <Planned found={found} />
      <PotGroups host={host} found={found} />
      <div className="fields">
        {RUN_TIME_FIELDS.filter(({ name }) => !(several && ONE_SIZE.has(name))).map((field) => {
          const cell = found[field.name];
          if (!cell) return null;
          const given = { host, keep, found: cell, label: field.label };
          return "of" in field ? (
            <NamedChoice key={field.name} {...given} of={field.of} />
          ) : (
            <NamedField key={field.name} {...given} read={field.read} />
          );
        })}
      </div>
    </section>
  );
}
