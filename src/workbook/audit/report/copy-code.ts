/** Said on Report of the audit itself. */
export const NO_COPY_CODE = "Code of the share copy: none, since this is the audit itself.";

/** Said on Report of a share copy. */
export const copyCodeSentence = (code: string): string =>
  `Code of this copy: ${code}. It is that of what was typed; the check of a copy and each page show it.`;
