import { useEffect, useRef } from "react";

/** Brings a heading into view and the keyboard to it whenever what it heads is another; not where that is null. */
export function useRevealed(what: object | null) {
  const heading = useRef<HTMLHeadingElement>(null);
  useEffect(() => {
    if (!what) return;
    heading.current?.focus({ preventScroll: true });
    heading.current?.scrollIntoView({ block: "start" });
  }, [what]);
  return heading;
}
