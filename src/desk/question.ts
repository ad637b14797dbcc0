/** Says something and asks how to go on; Escape gives the last answer. */
export function ask<T extends string>(
  sentence: string,
  answers: readonly (readonly [answer: T, words: string])[],
): Promise<T> {
  const dialog = document.createElement("dialog");
  dialog.className = "question";
  const text = document.createElement("p");
  text.id = "question";
  text.textContent = sentence;
  dialog.setAttribute("aria-describedby", text.id);
  dialog.append(text);
  for (const [answer, words] of answers) {
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
      answered((dialog.returnValue || answers.at(-1)![0]) as T);
    });
  });
}
