import type { Host } from "../../hosts/host";
import { copyTools } from "../share/copy-tools";
import { type FileLine, fileLine } from "./file-line";

/** The line of the register for the audit that is open, every figure calculated again from its readings. */
export async function ownAudit(host: Host): Promise<FileLine> {
  const { checkedFile } = await copyTools();
  await host.settled();
  return fileLine(await checkedFile("this workbook", await host.bytes()));
}
