/** What each setting is called where it is lacking. */
export const NEEDED = {
  minutes: "the length of the test",
  mouth: "the can's mouth",
  depth: "the net depth wanted",
  share: "the share of the cans",
};

/** `Run time needs the length of the test and the can's mouth: fill them in under Test settings`. */
export function lackOf(measure: string, lacking: string[]): string {
  const last = lacking.at(-1)!;
  const listed = lacking.length > 1 ? `${lacking.slice(0, -1).join(", ")} and ${last}` : last;
  return `${measure} needs ${listed}: fill ${lacking.length > 1 ? "them" : "it"} in under Test settings`;
}
