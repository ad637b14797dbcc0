import { type CanField, ratesRead } from "./can-field";
import { edgesOf } from "./edges";

/** Lines of cans each way from which a bed has edges and a middle. */
const FEWEST_A_SIDE = 3;
/** Halves are told apart where one gets less than this part of the other. */
const APART = 0.9;
/** Edges and middle are called equal where the one is within this part of the other. */
const EQUAL = 0.05;
/** A line this near the middle [m] is in neither half. */
const IN_THE_MIDDLE = 0.001;

const percent = (part: number, whole: number) => `${Math.round((100 * part) / whole)} %`;

/** Mean rate of the cans that a rule picks; undefined of none. */
function meanWhere({ rates }: CanField, rule: (row: number, column: number) => boolean): number | undefined {
  const picked = rates.flatMap((line, row) =>
    line.flatMap((rate, column) => (rate !== null && rule(row, column) ? [rate] : [])),
  );
  return picked.length === 0 ? undefined : picked.reduce((sum, rate) => sum + rate, 0) / picked.length;
}

function edgesSentence(field: CanField): string {
  if (field.across.length < FEWEST_A_SIDE || field.along.length < FEWEST_A_SIDE) return "";
  const onEdge = (row: number, column: number) => edgesOf(field, row, column).length > 0;
  const edges = meanWhere(field, onEdge);
  const middle = meanWhere(field, (row, column) => !onEdge(row, column));
  if (edges === undefined || !middle) return "";
  if (Math.abs(edges / middle - 1) < EQUAL) return "The edges get about as much as the middle. ";
  return `The edges get ${percent(edges, middle)} of the middle. `;
}

interface Halves {
  names: readonly [before: string, after: string];
  before: number;
  after: number;
  ratio: number;
}

function halves(
  field: CanField,
  names: Halves["names"],
  places: readonly number[],
  along: boolean,
): Halves | undefined {
  const middle = (places[0]! + places.at(-1)!) / 2;
  const of = (sign: number) =>
    meanWhere(field, (row, column) => sign * (places[along ? row : column]! - middle) > IN_THE_MIDDLE);
  const [before, after] = [of(-1), of(1)];
  if (before === undefined || after === undefined) return undefined;
  const most = Math.max(before, after);
  return most > 0 ? { names, before, after, ratio: Math.min(before, after) / most } : undefined;
}

function halvesSentence(field: CanField): string {
  const along = halves(field, ["top", "bottom"], field.along, true);
  const across = halves(field, ["left", "right"], field.across, false);
  const found = across && (!along || across.ratio < along.ratio) ? across : along;
  if (!found || found.ratio >= APART) return "";
  const { names, before, after } = found;
  const [less, more] = before < after ? names : ([names[1], names[0]] as const);
  return `The ${less} half gets ${percent(Math.min(before, after), Math.max(before, after))} of the ${more} half. `;
}

/**
 * What the parts of a bed get against each other, in sentences that end with a space; "" where there is nothing to say.
 *
 *     edges: mean of the outer rows and columns over that of the rest, called equal within 5 %        halves: the two along, or across where they differ
 *     more, where one gets under 0.9 of the other
 */
export function partsOfBed(field: CanField): string {
  return ratesRead(field).length === 0 ? "" : edgesSentence(field) + halvesSentence(field);
}
