import { useEffect, useRef } from "react";
import type { Host } from "../../hosts/host";
import type { Snapshot } from "../../hosts/snapshot";
import type { ReadOfBed } from "../../workbook/answer/kept-answer";
import { keepAnswer } from "./keep-answer";

/**
 * Keeps the answer in the workbook once after the step was opened, and once after another sheet was: later ones may come
 * while somebody types. `ready`: the bed was read, or there is none to read.
 */
export function useKeptAnswer(
  host: Host,
  snapshot: Snapshot | null,
  { ready, verdict, whole }: ReadOfBed & { ready: boolean },
): void {
  const kept = useRef("");
  const sheet = snapshot?.seen.selection?.area.sheet ?? "?";
  useEffect(
    () => () => {
      kept.current = "";
    },
    [],
  );
  useEffect(() => {
    if (!snapshot || !ready || snapshot.seen.calculating || kept.current === sheet) return;
    kept.current = sheet;
    // where Excel refuses, the sheets go on saying that it is not kept yet
    void keepAnswer(host, snapshot, { verdict, whole }).catch(() => {});
  }, [host, snapshot, ready, verdict, whole, sheet]);
}
