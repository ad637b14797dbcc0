import type { ControllerSetting } from "../../core/application/controller-setting";
import { settingWords } from "../../workbook/answer/answer-sentence";
import { type NamedCell, textIn } from "../workbook/named";
import type { Audit } from "./audit";

/** What to set at the controller: whole steps, pulses rounded up. */
export function SettingBox({
  setting,
  audit,
  basis,
}: {
  setting: ControllerSetting;
  audit: Audit;
  basis: NamedCell | undefined;
}) {
  const based = textIn(basis);
  return (
    <div className="driest">
      <p>
        Controller: <strong>{settingWords(setting)}</strong>
      </p>
      <p className="note">
        Rounded up to the controller's step
        {based && `; based on ${based === "share of pots" ? "a share of the pots" : `the ${based}`}`}, {audit.weighting}
        .
      </p>
    </div>
  );
}
