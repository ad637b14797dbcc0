/** How many bytes become text at once: a call takes a limited number of arguments. */
const STEP = 32_768;

export function toBase64(bytes: Uint8Array): string {
  let text = "";
  for (let start = 0; start < bytes.length; start += STEP) {
    text += String.fromCharCode(...bytes.subarray(start, start + STEP));
  }
  return btoa(text);
}

export function fromBase64(text: string): Uint8Array {
  return Uint8Array.from(atob(text), (letter) => letter.charCodeAt(0));
}
