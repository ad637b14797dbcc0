import { intervalBench } from "./interval-bench";
import { summaryBench } from "./summary-bench";

await summaryBench();
await intervalBench();
