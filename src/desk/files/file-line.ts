import { UNCHECKED } from "./share-copy";

/** Says something of the open file; that a share copy is not checked leads to where it can be. */
export function fileLine(place: HTMLElement, toCheck: () => void): (sentence: string) => void {
  return (sentence) => {
    const [before, after] = sentence.split(UNCHECKED);
    place.textContent = before!;
    if (after === undefined) return;
    const button = document.createElement("button");
    button.type = "button";
    button.className = "link";
    button.textContent = UNCHECKED;
    button.addEventListener("click", toCheck);
    place.append(button, after);
  };
}
