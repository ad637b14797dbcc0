import type { Host } from "../../../hosts/host";

/** The name, or the name with the first number behind it that no sheet has. */
export async function freeName(host: Host, name: string): Promise<string> {
  const taken = new Set((await host.sheets()).map((sheet) => sheet.toLowerCase()));
  if (!taken.has(name.toLowerCase())) return name;
  let number = 2;
  while (taken.has(`${name} ${number}`.toLowerCase())) number += 1;
  return `${name} ${number}`;
}
