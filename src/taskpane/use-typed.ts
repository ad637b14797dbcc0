import { type RefObject, useCallback, useEffect, useRef } from "react";

/** Whether somebody has typed anything into the fields of a part of the page. */
export function useTyped(place: RefObject<HTMLElement | null>): () => boolean {
  const typed = useRef(false);
  useEffect(() => {
    const note = () => {
      typed.current = true;
    };
    const element = place.current;
    element?.addEventListener("input", note);
    return () => element?.removeEventListener("input", note);
  }, [place]);
  return useCallback(() => typed.current, []);
}
