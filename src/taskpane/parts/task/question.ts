/** A plain question before something is overwritten. */
export interface Question {
  text: string;
  yes: string;
  no: string;
  /** What is said while it runs. */
  doing: string;
  /** Answers what to say afterwards, or with the next question. */
  act: () => Promise<string | Question>;
}
