import { useEffect, useState } from "react";
import type { CanField } from "../../core/pattern/can-field";
import type { Host } from "../../hosts/host";
import type { Answer } from "../answer/answer";
import { findSource } from "../map/find-source";

/** The cans of the workbook's audit, or null while there are none that can be read. */
export function useMeasured(host: Host, answer: Answer | null): CanField | null {
  const [field, setField] = useState<CanField | null>(null);
  useEffect(() => {
    if (!answer) return;
    let newest = true;
    findSource(host, "audit", answer, null)
      .then(
        ({ field: found }) => found,
        () => null,
      )
      .then((found) => {
        if (newest) setField(found);
      });
    return () => {
      newest = false;
    };
  }, [host, answer]);
  return field;
}
