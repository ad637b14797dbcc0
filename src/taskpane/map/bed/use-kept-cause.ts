import { useEffect, useRef } from "react";
import type { Host } from "../../../hosts/host";
import { useWatched } from "../../workbook/use-watched";
import { KEPT_CAUSE, keepCause } from "./keep-cause";
import type { BedReading } from "./use-bed-reading";

/** Keeps the first verdict after the step was opened in the workbook: later ones may come while somebody types. */
export function useKeptCause(host: Host, { cause }: BedReading, stamp: string): void {
  const { found: snapshot } = useWatched(host, KEPT_CAUSE);
  const kept = useRef(false);
  useEffect(() => {
    if (kept.current || !cause || !snapshot || stamp === "") return;
    kept.current = true;
    // where Excel refuses, the sheets go on saying that the cause is not read yet
    void keepCause(host, snapshot, cause.verdict, stamp).catch(() => {});
  }, [host, cause, snapshot, stamp]);
}
