import type { Desk } from "./desk-page";

/** Lets scripts of the page ask for the grid's own service that has a member of a name: `window.service("legacyPaste")`. */
export const offerServices = ({ page }: Desk): Promise<void> =>
  page.evaluate(() => {
    interface Resolved {
      resolvedDependencyCollection: { resolvedDependencies: Map<unknown, object[]> };
    }
    const { resolvedDependencies } = (window.desk.grid.injector as unknown as Resolved).resolvedDependencyCollection;
    Object.assign(window, {
      service: (member: string) => {
        const found = [...resolvedDependencies.values()].flat().find((one) => one && member in one);
        if (!found) throw new Error(`no service of the grid has ${member}`);
        return found;
      },
    });
  });
