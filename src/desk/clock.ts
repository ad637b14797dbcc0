/** The time of day as this machine writes it, such as 10:42. */
export const clock = (time: Date): string =>
  time.toLocaleTimeString([], { hour: "2-digit", minute: "2-digit", hour12: false });
