/** Native twin of the gap rule of layouts: equal gaps, at most 5 % wider than the spacing asked for. */
function gaps(size: string, spacing: string): string {
  return `MAX(1,ROUNDUP(${size}/(1.05*${spacing})-1/10^9,0))`;
}

/** How many heads are before a place along one side of the bed, for heads on the border or half a gap inside. */
function headsBefore(place: string, size: string, spacing: string, inset: boolean): string {
  return `MAX(0,ROUNDUP(${place}*${gaps(size, spacing)}/${size}-${inset ? "0.5" : "0"}-1/10^9,0))`;
}

/** The strip of a column or row of cans, and the side of the bed that it is on. */
export interface Side {
  from: string;
  to: string;
  size: string;
  spacing: string;
  layout: string;
  /** Whether a centre line runs across this side, so that its heads are in the middle of it. */
  crossed: boolean;
}

/** How many heads of a layout are in a strip; "" where it is not known where they are. */
export function headsInStrip({ from, to, size, spacing, layout, crossed }: Side): string {
  const between = (inset: boolean) => {
    const all = `${gaps(size, spacing)}${inset ? "" : "+1"}`;
    const upTo = `IF(${to}>=${size},${all},${headsBefore(to, size, spacing, inset)})`;
    return `${upTo}-${headsBefore(from, size, spacing, inset)}`;
  };
  const middle = `IF(AND(${from}<=${size}/2,${size}/2<${to}),1,0)`;
  const line = crossed ? middle : between(true);
  const spaced = (formula: string) => `IF(ISNUMBER(${spacing}),IF(${spacing}>0,${formula},""),"")`;
  const byLayout = `IF(${layout}="border",${spaced(between(false))},IF(${layout}="inset",${spaced(between(true))},IF(${layout}="centre line",${crossed ? line : spaced(line)},"")))`;
  return `IF(ISNUMBER(${from}),${byLayout},"")`;
}
