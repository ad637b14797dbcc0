import { useEffect, useState } from "react";
import { type Host, PLAIN_SEPARATORS, type Separators } from "../../hosts/host";

/** The signs that formulas are typed with; the plain ones until they are known. */
export function useSeparators(host: Host): Separators {
  const [known, setKnown] = useState(PLAIN_SEPARATORS);
  useEffect(() => {
    let open = true;
    host.separators().then(
      (found) => {
        if (open) setKnown(found);
      },
      () => {},
    );
    return () => {
      open = false;
    };
  }, [host]);
  return known;
}
