import { ASKED, UNCHECKED } from "./share-copy";

/** Says something of the open file; that a share copy is not checked has it checked. */
export function fileLine(place: HTMLElement, toCheck: () => void): (sentence: string) => void {
  return (sentence) => {
    const [before, after] = sentence.split(UNCHECKED);
    place.textContent = before!;
    if (after === undefined) return;
    const button = document.createElement("button");
    button.type = "button";
    button.className = "link";
    button.textContent = UNCHECKED;
    button.addEventListener("click", () => {
      button.textContent = ASKED;
      toCheck();
    });
    place.append(button, after);
  };
}
