import type { Book, Look } from "./book";

/** What the keys of an example's sheets begin with. */
export const EXAMPLE_MARK = "example";

/** A book without pictures as a text that names each look once. */
export function packed(book: Book): string {
  const places = new Map<string, number>();
  const text = JSON.stringify(book, (name, value) => {
    if (name !== "look") return value;
    const look = JSON.stringify(value);
    places.set(look, places.get(look) ?? places.size);
    return places.get(look);
  });
  return `{"looks":[${[...places.keys()]}],"book":${text}}`;
}

/** The book of such a text. */
export function unpacked(text: string): Book {
  const { looks, book } = JSON.parse(text) as { looks: Look[]; book: Book };
  for (const { cells, conditions } of book.sheets)
    for (const one of [...cells, ...conditions])
      if (one.look !== undefined) one.look = looks[one.look as unknown as number]!;
  return book;
}
