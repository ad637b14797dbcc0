import { useEffect, useState } from "react";

const QUERY = "(prefers-color-scheme: dark)";

/** Whether the person's system asks for dark colours. */
export function useDark(): boolean {
  const [dark, setDark] = useState(() => globalThis.matchMedia?.(QUERY).matches ?? false);
  useEffect(() => {
    const media = globalThis.matchMedia?.(QUERY);
    const follow = () => setDark(media.matches);
    media?.addEventListener("change", follow);
    return () => media?.removeEventListener("change", follow);
  }, []);
  return dark;
}
