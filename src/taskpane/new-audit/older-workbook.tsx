import type { Host } from "../../hosts/host";
import { newsSince } from "../../workbook/earlier/earlier-sheets";
import { textIn } from "../workbook/named";
import { useNamed } from "../workbook/use-named";

const NAMES = ["Workbook_Version"];

/** What is new since the version of the audit that is open, where it is an earlier one. */
export function OlderWorkbook({ host }: { host: Host }) {
  const { found } = useNamed(host, NAMES);
  const news = newsSince(textIn(found?.Workbook_Version));
  return news ? <p className="note">{news}</p> : null;
}
