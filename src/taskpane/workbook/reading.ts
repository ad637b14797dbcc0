import type { Host } from "../../hosts/host";
import type { Snapshot, Wanted } from "../../hosts/snapshot";

/** What one part of the pane wants of a workbook, and what it makes of it. */
export interface Reading<T> {
  wants: Wanted;
  read(snapshot: Snapshot): T;
}

/** Reads it once, now. */
export const readNow = async <T>(host: Host, { wants, read }: Reading<T>): Promise<T> =>
  read(await host.snapshot(wants));
