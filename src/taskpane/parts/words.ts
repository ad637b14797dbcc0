/** What an error says. */
export const words = (reason: unknown): string => (reason instanceof Error ? reason.message : String(reason));
