import type { ControllerSetting } from "../../core/application/controller-setting";
import { FEWEST } from "../../core/summary/verdict";
import { weightWords } from "../bed/weight-words";
import { capital } from "../form/capital";
import { rateWords } from "./rate-words";
import { shown } from "./shown";

/** Mean wind of a test [m/s] over which it gives no setting (Irrigation Association, Recommended Audit Guidelines, 2009). */
export const MOST_WIND_ms = 2.2;
/** Change of pressure during a test over which it gives no setting (common practice, no source). */
export const MOST_DRIFT = 0.1;
/** What is chosen on Block where a test must be repeated. */
export const NOT_VALID = "not valid";

/** What the answer is made of: what was typed, and what follows from it. */
export interface AnswerFacts {
  /** "" where it has no name. */
  block: string;
  /** Cans read. */
  cans: number;
  /** Whether the test was marked as not valid. */
  notValid: boolean;
  wind?: number | undefined;
  /** Mean pressure after / before the test, less 1. */
  drift?: number | undefined;
  setting?: ControllerSetting | undefined;
  /** Run time of the valve before it is rounded up to the setting [min]. */
  minutes?: number | undefined;
  /** Run time of this bed [min] where another one on the valve needs more, which the setting is for. */
  ofThisBed?: number | undefined;
  /** Why there is no setting, such as "the run time needs the net depth"; "" where there is one. */
  lack: string;
  /** Whether a measure of uniformity is outside its limit. */
  uneven: boolean;
  /** Edges against the middle, one half against the other; "" for nothing. */
  parts: string;
  cause?: { cause: string; where: string; weight: number; certain: boolean } | undefined;
  /** Whether the cause is still being looked for. */
  looking?: boolean;
  /** A can that reads 0 among wet ones. */
  zero?: { cell: string; between: readonly [number, number] } | undefined;
  /** A can that reads ten times those beside it, so that every figure may be wrong. */
  high?: { cell: string; value: number; around: number } | undefined;
  /** What the planned change saves [kL a year]. */
  saved?: number | undefined;
  /** Water of a year [kL]: today's use against what is needed now and after the change; undefined where not known. */
  water?: { used: number; needed: number; after: number } | undefined;
  /** The application rate [mm/h] and the limit that it breaks; undefined where it keeps them. */
  rate?: { value: number; limit: number } | undefined;
  /** What is wrong about the places of the cans, so that every can has equal weight; "" for nothing. */
  places?: string;
}

const NO_CAUSE = "nothing wrong found";
/** What is done first about a cause that is not mended at a head. */
const FIRST: Readonly<Record<string, string>> = {
  wind: "test again when it is calm",
  "heads inside the edge": "move the outer heads to the edge first, then test again",
  "one line of heads": "plan lines of heads at the sides first, then test again",
  "no heads in the corners": "put heads in the corners first, then test again",
  "heads too far apart": "plan heads closer together first, then test again",
};
const percent = (share: number) => `${Number((100 * share).toPrecision(2))} %`;

/** Why a test gives no setting, and what is to be repeated; "" where it gives one. */
export function toRepeat({ notValid, wind, drift }: Pick<AnswerFacts, "notValid" | "wind" | "drift">): string {
  const reasons: string[] = [];
  const how: string[] = [];
  if (notValid) reasons.push("the test is marked as not valid");
  if (wind !== undefined && wind > MOST_WIND_ms) {
    reasons.push(`the mean wind was ${shown(wind)} m/s (limit ${MOST_WIND_ms})`);
    how.push("in less wind");
  }
  if (drift !== undefined && Math.abs(drift) > MOST_DRIFT) {
    reasons.push(
      `the pressure ${drift > 0 ? "rose" : "fell"} by ${percent(Math.abs(drift))} during the test (limit 10 %)`,
    );
    how.push("at steady pressure");
  }
  if (reasons.length === 0) return "";
  return `no setting, because ${reasons.join(" and ")}. Test again${how.length > 0 ? ` ${how.join(" and ")}` : ""}.`;
}

const minutes = (value: number) => String(Number(value.toFixed(2)));

/** `68 min (2 × 34)`. */
export function settingWords({ pulses, each, total }: ControllerSetting): string {
  return `${minutes(total)} min${pulses > 1 ? ` (${pulses} × ${minutes(each)})` : ""}`;
}

/** `K9 reads 0 between 71 and 58`. */
export const zeroWords = ({ cell, between: [one, other] }: NonNullable<AnswerFacts["zero"]>): string =>
  `${cell} reads 0 between ${shown(one)} and ${shown(other)}`;

/** Why a reading far above its neighbours is in doubt, and what to do. */
const highWords = ({ cell, value, around }: NonNullable<AnswerFacts["high"]>): string =>
  `${cell} reads ${shown(value)}, the cans beside it about ${shown(around)}. Type it again, or x where a leak filled it`;

function whyUneven({ parts, cause, looking, zero, high }: AnswerFacts): string {
  if (high) return "";
  const seen = parts.trim().replace(/\.$/, "");
  if (zero) return `${seen ? ` ${seen}; the` : " The"} cause can be told once ${zero.cell} is checked.`;
  if (!cause || cause.cause === NO_CAUSE)
    return seen ? ` ${seen}; the cause is ${looking ? "being looked for" : "not known yet"}.` : "";
  const lead = `${cause.cause}${cause.where ? `, ${cause.where}` : ""} (${weightWords(cause.weight)})`;
  const told = cause.certain ? `cause: ${lead}` : `the cause is not certain; leading: ${lead}`;
  return ` ${seen ? `${seen}; ${told}` : capital(told)}.`;
}

function whatToDo(facts: AnswerFacts): string {
  const { setting, lack, uneven, cause, zero, high, ofThisBed } = facts;
  if (high) return `no setting yet: ${highWords(high)}.`;
  const known = !zero && cause !== undefined && cause.cause !== NO_CAUSE && cause.certain;
  const head = /^head \d+/.exec(cause?.where ?? "")?.[0];
  const mend = FIRST[cause?.cause ?? ""] ?? `mend ${head ? `${head} ` : ""}first, then test again`;
  if (!setting) {
    const why = zero ? `${zeroWords(zero)}: unread, blocked head or typing error?` : `${lack}.`;
    return `${uneven && known ? `${mend}; ` : ""}no setting yet: ${why.replace(/([?.])\.$/, "$1")}`;
  }
  const set = `set ${settingWords(setting)}${ofThisBed === undefined ? "" : `, for another bed on the valve (this one needs ${shown(ofThisBed)})`}`;
  const asked = zero ? ` ${zeroWords(zero)}: check it.` : "";
  if (!uneven) return `${set}.${asked}`;
  if (zero)
    return `check ${zero.cell} first, which reads 0 between ${zero.between.map(shown).join(" and ")}; until then ${set}.`;
  const first = known ? mend : "find the cause at the heads and mend it, then test again";
  return `${first}; until then ${set}.`;
}

/** Today's use under this part of what is needed leaves nothing to save; the limit of the sheet Water and cost. */
const ENOUGH = 0.95;

/** What the planned change saves, in a sentence; no saving is claimed where today's use is less than is needed. */
export function savingWords({ saved, water }: Pick<AnswerFacts, "saved" | "water">): string {
  if (saved === undefined || !(saved > 0)) return "";
  if (!water) {
    return `The planned change needs about ${shown(saved)} kL a year less; what is used today is not known, so that is no saving yet.`;
  }
  const { used, needed, after } = water;
  if (used >= ENOUGH * needed) return `The planned change saves about ${shown(saved)} kL a year.`;
  return `The planned change saves nothing on today's bill: ${shown(used)} kL a year are used, ${shown(needed)} needed, ${shown(after)} after it.`;
}

/** That the uniformity is not judged, where too few cans were read; "" where it is. */
const fewWords = (cans: number) =>
  cans < FEWEST
    ? `${cans} ${cans === 1 ? "can is" : "cans are"} too few to judge the uniformity: set out 24 and test again.`
    : "";

/** The answer of an audit in one line: what to do first, how long to run, why it is uneven, what mending saves. */
export function answerSentence(facts: AnswerFacts): string {
  const start = facts.block ? `${facts.block}: ` : "";
  const begun = (words: string) => (start ? `${start}${words}` : capital(words));
  if (facts.cans === 0) return begun("no readings yet.");
  const repeat = toRepeat(facts);
  if (repeat) return begun(repeat);
  const why = facts.uneven ? whyUneven(facts) : "";
  const saving = facts.uneven && !facts.high ? savingWords(facts) : "";
  const places = facts.places ? `${facts.places} Until that is mended every can has equal weight.` : "";
  return begun(
    [whatToDo(facts) + why, rateWords(facts), fewWords(facts.cans), places, saving].filter(Boolean).join(" "),
  );
}
