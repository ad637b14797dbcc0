import { Bench } from "tinybench";

export interface Contender {
  name: string;
  run: () => unknown;
}

export interface Row {
  name: string;
  milliseconds: number | undefined;
  failure: string | undefined;
}

/** Times each contender in turn within one run; the median of its rounds counts. A contender that throws is shown as failing. */
export async function measured(contenders: Contender[], rounds: number): Promise<Row[]> {
  const rows: Row[] = [];
  for (const { name, run } of contenders) {
    const bench = new Bench({ time: 0, iterations: rounds, warmupTime: 0, warmupIterations: 3, throws: false });
    bench.add(name, () => {
      run();
    });
    await bench.run();
    const result = bench.tasks[0]?.result;
    const error = result?.error;
    rows.push({
      name,
      milliseconds: error ? undefined : result?.latency?.p50,
      failure: error ? String(error instanceof Error ? error.message : error) : undefined,
    });
  }
  return rows;
}

export function printed(title: string, rows: Row[], base: string): void {
  const own = rows.find((row) => row.name === base)?.milliseconds ?? Number.NaN;
  console.log(`\n${title}`);
  console.log("| contender | median ms | times Canfall |\n| --- | --- | --- |");
  for (const { name, milliseconds, failure } of rows) {
    console.log(
      milliseconds === undefined
        ? `| ${name} | fails: ${failure} | |`
        : `| ${name} | ${milliseconds.toPrecision(3)} | ${(milliseconds / own).toPrecision(3)} |`,
    );
  }
}
