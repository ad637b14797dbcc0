import { useEffect, useRef } from "react";

/** Scrolls an element into sight as soon as, and whenever, something else is in it; not where that is null or "". */
export function useInSight(what: unknown) {
  const place = useRef<HTMLDivElement>(null);
  useEffect(() => {
    if (what) place.current?.scrollIntoView({ block: "nearest" });
  }, [what]);
  return place;
}
