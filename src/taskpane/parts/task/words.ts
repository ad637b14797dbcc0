/** Whether a file of Canfall could not be loaded. */
export const isMissing = (reason: unknown): boolean => reason instanceof Error && reason.name === "ChunkLoadError";

/** What an error says. */
export function words(reason: unknown): string {
  if (isMissing(reason))
    return "A part of Canfall did not load. Look at the connection; where a newer version was put up, close the pane and open it again";
  return reason instanceof Error ? reason.message : String(reason);
}
