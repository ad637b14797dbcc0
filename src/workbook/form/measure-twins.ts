/** The figures of a range of readings that others are built from, as native expressions of `*` and `/`. */
export interface MeasureTwins {
  mean: string;
  christiansen: string;
  distribution: string;
  ofDriestCan: string;
  ofLowQuarter: string;
  /** The scheduling coefficient of a share, given as an operand. */
  ofShare: (share: string) => string;
}

/** A cell, a range or a defined name, with its sheet or without. */
const REFERENCE = /^(?:(?:'(?:[^']|'')+'|[\w.]+)!)?[A-Z_$][\w$.]*(?::[$\w]+)?$/i;

/** Each can with equal weight. */
export function equalTwins(r: string): MeasureTwins {
  const count = `MAX(1,ROUND(COUNT(${r})/4,0))`;
  const lowest = `SUMPRODUCT(SMALL(${r},ROW($A$1:INDEX($A:$A,${count}))))/${count}`;
  return {
    mean: `AVERAGE(${r})`,
    christiansen: `100*(1-AVEDEV(${r})/AVERAGE(${r}))`,
    distribution: `100*${lowest}/AVERAGE(${r})`,
    ofDriestCan: `AVERAGE(${r})/MIN(${r})`,
    ofLowQuarter: `AVERAGE(${r})/(${lowest})`,
    ofShare: (share) => `AVERAGE(${r})/LARGE(${r},MAX(1,ROUNDUP(${share}*COUNT(${r})-1/10^9,0)))`,
  };
}

/**
 * Each can by its area; null where one of the two is no plain reference, since SUMIF takes none else.
 *
 * The catch t in which the driest quarter ends is found by its rank: the cans whose own catch and all lower ones cover
 * less than a quarter. SUMIF compares 15 digits, hence the factor that makes a catch reach itself.
 */
export function areaTwins(r: string, a: string): MeasureTwins | null {
  if (!REFERENCE.test(r) || !REFERENCE.test(a)) return null;
  const caught = `SUMPRODUCT(${r},${a})`;
  const ground = `SUMPRODUCT(--ISNUMBER(${r}),${a})`;
  const mean = `${caught}/${ground}`;
  const under = (limit: string) => `(${r}<${limit})*ISNUMBER(${r})`;
  const short = (limit: string) => `(${limit}*SUMPRODUCT(${under(limit)},${a})-SUMPRODUCT(${under(limit)},${r},${a}))`;
  const each = `SMALL(${r},ROW($A$1:INDEX($A:$A,COUNT(${r}))))`;
  const passing = (sign: string, factor: string, wanted: string) =>
    `1+SUMPRODUCT(--(SUMIF(${r},"${sign}"&${each}*${factor},${a})<${wanted}))`;
  const quarterEnd = `SMALL(${r},${passing("<=", "(1+1/10^14)", `${ground}/4*(1-1/10^12)`)})`;
  const quarter = `(${quarterEnd}*${ground}/4-${short(quarterEnd)})`;
  return {
    mean,
    christiansen: `100*(1-2*${short(`(${mean})`)}/${caught})`,
    distribution: `400*${quarter}/${caught}`,
    ofDriestCan: `${mean}/MIN(${r})`,
    ofLowQuarter: `${caught}/4/${quarter}`,
    ofShare: (share) => {
      const wanted = `${ground}*(${share}-1/10^9/COUNT(${r}))`;
      return `${mean}/LARGE(${r},${passing(">=", "(1-1/10^14)", wanted)})`;
    },
  };
}
