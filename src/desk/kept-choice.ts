/** A choice that was kept in this browser; null where there is none, or the browser keeps nothing. */
export function keptChoice(name: string): string | null {
  try {
    return localStorage.getItem(name);
  } catch {
    return null;
  }
}

/** Keeps a choice for the next start, where the browser keeps anything. */
export function keepChoice(name: string, value: string): void {
  try {
    localStorage.setItem(name, value);
  } catch {
    // the next start then has what is usual
  }
}
