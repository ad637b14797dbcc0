import type { Member } from "./fake-excel-objects";

/** Defined names as Office.js shows them; `at` finds the range behind a formula. */
export function namedItems(names: Map<string, string>, at: (formula: string) => Member | null): Member {
  const item = (name: string): Member => ({
    name,
    get formula() {
      return names.get(name)!;
    },
    set formula(formula: string) {
      names.set(name, formula);
    },
    getRangeOrNullObject: () => at(names.get(name)!),
    delete: () => void names.delete(name),
  });
  const find = (wanted: string) => [...names.keys()].find((name) => name.toLowerCase() === wanted.toLowerCase());
  return {
    items: () => [...names.keys()].map(item),
    item: (name: string) => item(find(name)!),
    add: (name: string, formula: string) => {
      names.set(name, formula);
      return item(name);
    },
    getItemOrNullObject: (wanted: string) => {
      const name = find(wanted);
      return name === undefined ? null : item(name);
    },
  };
}
