import type { Figure } from "../copy-report";
import type { Finding } from "../finding";
import { NOT_GIVEN } from "./agreement";

const MEANING = "This means that the figures follow from these readings, not that the readings are true.";

/** `2 changed, 1 hides or misleads`, by the classes that speak against a copy. */
function countsOf(findings: readonly Finding[]): string {
  const count = (wanted: Finding["class"]) => findings.filter((one) => one.class === wanted).length;
  const [changed, hides] = [count("changed"), count("hides or misleads")];
  return [
    changed > 0 &&
      (changed === 1
        ? "1 thing was changed or is not as it should be"
        : `${changed} things were changed or are not as they should be`),
    hides > 0 && `${hides} ${hides === 1 ? "thing hides or misleads" : "things hide or mislead"}`,
  ]
    .filter(Boolean)
    .join("; ");
}

/** What a check says in one or two sentences, figures counted first. */
export function sentenceOf(
  figures: readonly Figure[],
  findings: readonly Finding[],
  follows: number,
  why: string,
): string {
  if (figures.length === 0) return "This file has no figure that could be recomputed from readings.";
  const wrong = figures.filter((figure) => !figure.agrees).length;
  const lacking = figures.filter((figure) => figure.agrees && figure.recomputed === NOT_GIVEN).length;
  const agree = figures.length - wrong - lacking;
  const cannot = lacking === 0 ? "" : `; ${lacking} cannot be given${why ? `: ${why}` : ", since entries are missing"}`;
  const against = countsOf(findings);
  const more = follows > 0 ? `, from which ${follows} more ${follows === 1 ? "follows" : "follow"}` : "";
  const rest = against === "" ? "" : ` ${against}${more}.`;
  if (wrong > 0) {
    return `${wrong} of ${figures.length} figures ${wrong === 1 ? "does" : "do"} not agree with what was recomputed from the readings; ${agree} agree${cannot}.${rest} Where figures agree: ${MEANING.charAt(0).toLowerCase()}${MEANING.slice(1)}`;
  }
  const all = lacking === 0 ? `All ${agree} figures agree` : `${agree} agree${cannot}`;
  return `${rest} ${all}. ${MEANING}`.trim();
}
