const CANS = 'IF(B2:B26="","x",B2:B26)';
const BED = 'IF(D2:H6="","x",D2:H6)';

/** One formula for each worksheet function, with its ranges wrapped so that a blank cell is never taken for a dry can. */
export const EXAMPLES: Record<string, string> = {
  "CU.CHRISTIANSEN": `=CANFALL.CU.CHRISTIANSEN(${CANS})`,
  "DU.QUARTER": `=CANFALL.DU.QUARTER(${CANS})`,
  "SC.CAN": `=CANFALL.SC.CAN(${CANS})`,
  "SC.QUARTER": `=CANFALL.SC.QUARTER(${CANS})`,
  "SC.SHARE": `=CANFALL.SC.SHARE(${CANS},0.9)`,
  "SC.PATCH": `=CANFALL.SC.PATCH(${BED},0.1)`,
  INTERVAL: `=CANFALL.INTERVAL(${CANS},"DU.QUARTER",0.9)`,
  "DEPTH.CAUGHT": `=CANFALL.DEPTH.CAUGHT(${CANS},100)`,
  "RATE.CAUGHT": `=CANFALL.RATE.CAUGHT(${CANS},20,100)`,
  MAR: `=CANFALL.MAR(${CANS},20,100)`,
  "RATE.HEAD": "=CANFALL.RATE.HEAD(480,8,6)",
  RUNTIME: `=CANFALL.RUNTIME(${CANS},20,100,6,"can")`,
  "WATER.ANNUAL": `=CANFALL.WATER.ANNUAL(${CANS},180,6,300,"can",0.8)`,
  "COST.ANNUAL": `=CANFALL.COST.ANNUAL(${CANS},180,6,300,2.5,"can",0.8)`,
  SUMMARY: `=CANFALL.SUMMARY(${CANS},20,100)`,
};
