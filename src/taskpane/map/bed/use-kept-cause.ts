import { useEffect, useRef } from "react";
import type { Host } from "../../../hosts/host";
import { keepCause } from "./keep-cause";
import type { BedReading } from "./use-bed-reading";

/** Keeps the first verdict after the step was opened in the workbook: later ones may come while somebody types. */
export function useKeptCause(host: Host, { cause }: BedReading, stamp: string): void {
  const kept = useRef(false);
  useEffect(() => {
    if (kept.current || !cause || stamp === "") return;
    kept.current = true;
    keepCause(host, cause.verdict, stamp).catch(() => {
      kept.current = false;
    });
  }, [host, cause, stamp]);
}
