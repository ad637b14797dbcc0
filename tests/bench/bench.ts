import { bedBench } from "./bed-bench";
import { intervalBench } from "./interval-bench";
import { summaryBench } from "./summary-bench";

summaryBench().then(intervalBench).then(bedBench);
