import { BaseSequencer, type TestSpecification } from "vitest/node";

/** Files of the last project that take long for their size: first in it, so that no core waits for one of them at the end. */
const LONG = ["taskpane/map.test.tsx", "taskpane/access.test.tsx"];
const isLong = ({ moduleId }: TestSpecification) => LONG.some((name) => moduleId.endsWith(name));

/** Projects follow one another; in each the long files are first, then the others by their size. */
export class Order extends BaseSequencer {
  override async sort(files: TestSpecification[]): Promise<TestSpecification[]> {
    const sorted = await super.sort(files);
    const projects = [...new Set(sorted.map(({ project }) => project))];
    return projects.flatMap((project) => {
      const own = sorted.filter((file) => file.project === project);
      return [...own.filter(isLong), ...own.filter((file) => !isLong(file))];
    });
  }
}
