import type { Host } from "../../hosts/host";
import { newsSince, planNewsSince } from "../../workbook/earlier/earlier-sheets";
import { textIn } from "../workbook/named";
import { useNamed } from "../workbook/use-named";

const NAMES = ["Workbook_Version", "Plan_Version"];

/** What is new since the version of the audit or nursery plan that is open, where it is an earlier one. */
export function OlderWorkbook({ host }: { host: Host }) {
  const { found } = useNamed(host, NAMES);
  const news = [newsSince(textIn(found?.Workbook_Version)), planNewsSince(textIn(found?.Plan_Version))];
  return news
    .filter((one) => one !== null)
    .map((one) => (
      <p key={one} className="note">
        {one}
      </p>
    ));
}
