import type { ControllerSetting } from "../../core/application/controller-setting";
import { settingWords } from "../../workbook/answer/answer-sentence";
import { figure } from "../parts/figure";
import { type NamedCell, textIn } from "../workbook/named";
import type { Audit } from "./audit";

/** More of the run time than this is said [share]. */
const SAID_ABOVE = 0.005;

/** That water and cost are of the run time as it was before it was rounded up; "" where they are the same. */
export function overWords(total: number, minutes: number): string {
  const more = total / minutes - 1;
  if (more < SAID_ABOVE) return "";
  return ` Water and cost are of the run time, ${figure(minutes)} min: ${figure(total)} min use ${(100 * more).toFixed(1)} % more.`;
}

/** What to set at the controller: whole steps, pulses rounded up. */
export function SettingBox({
  setting,
  minutes,
  ofThisBed,
  audit,
  basis,
  untested,
}: {
  setting: ControllerSetting;
  /** Before it is rounded up. */
  minutes?: number | undefined;
  /** Run time of this bed, where another one on the valve needs more. */
  ofThisBed?: number | undefined;
  audit: Audit;
  basis: NamedCell | undefined;
  /** What is said of beds on the valve that have no test; blank where all have one. */
  untested: NamedCell | undefined;
}) {
  const based = textIn(basis);
  const basedOn = `based on ${based === "share of pots" ? "a share of the pots" : `the ${based}`}, ${audit.weighting}`;
  return (
    <div className="driest">
      <p>
        Controller: <strong>{settingWords(setting)}</strong>
      </p>
      <p className="note">
        Rounded up to the controller's step
        {ofThisBed !== undefined ? "; another bed on the valve needs it" : based && `; ${basedOn}`}.
        {minutes !== undefined && overWords(setting.total, minutes)}
        {textIn(untested) && ` ${textIn(untested)}`}
      </p>
    </div>
  );
}
