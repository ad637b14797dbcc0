export type SaveAnswer = "other name" | "same name" | "not";

const ANSWERS: [SaveAnswer, string][] = [
  ["other name", "Save under another name"],
  ["same name", "Save under this name"],
  ["not", "Cancel"],
];

/** Says what saving would lose and asks how to go on; Escape cancels. */
export function askBeforeSaving(sentence: string): Promise<SaveAnswer> {
  const dialog = document.createElement("dialog");
  dialog.className = "question";
  const text = document.createElement("p");
  text.id = "save-question";
  text.textContent = sentence;
  dialog.setAttribute("aria-describedby", text.id);
  dialog.append(text);
  for (const [answer, words] of ANSWERS) {
    const button = document.createElement("button");
    button.type = "button";
    button.textContent = words;
    button.addEventListener("click", () => dialog.close(answer));
    dialog.append(button);
  }
  document.body.append(dialog);
  dialog.showModal();
  return new Promise((answered) => {
    dialog.addEventListener("close", () => {
      dialog.remove();
      answered((dialog.returnValue || "not") as SaveAnswer);
    });
  });
}

/** Another name for a file: `bed.xlsx` becomes `bed (2).xlsx`. */
export function otherName(name: string): string {
  const [, base = name, number] = /^(.*?)(?: \((\d+)\))?\.xlsx$/i.exec(name) ?? [];
  return `${base} (${Number(number ?? 1) + 1}).xlsx`;
}
