/** F6 goes on to the next part of the page, since the grid keeps Tab for itself; each part takes the focus where it left it. */
export function partsByKey(parts: HTMLElement[]): void {
  const left = new Map<HTMLElement, HTMLElement>();
  addEventListener(
    "keydown",
    (event) => {
      if (event.key !== "F6") return;
      event.preventDefault();
      const focused = document.activeElement as HTMLElement | null;
      const current = parts.findIndex((part) => part.contains(focused));
      if (focused && current >= 0) left.set(parts[current]!, focused);
      const next = parts[(current + 1) % parts.length]!;
      const remembered = left.get(next);
      const target = remembered?.isConnected
        ? remembered
        : next.querySelector<HTMLElement>("button, input, [tabindex]");
      target?.focus();
    },
    { capture: true },
  );
}
