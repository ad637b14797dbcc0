import { useEffect, useState } from "react";
import type { Host } from "../hosts/host";

/** Says why nothing happens while the spreadsheet does not answer. */
export function SlowNotice({ host }: { host: Host }) {
  const [waiting, setWaiting] = useState(false);
  useEffect(() => host.slow(setWaiting), [host]);
  return (
    <p role="status" className="note">
      {waiting &&
        `${host.label} has not answered for some seconds. If a cell there is being typed in, press Enter in it. What you typed here stays.`}
    </p>
  );
}
