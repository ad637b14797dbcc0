export const pause = (milliseconds: number): Promise<void> => new Promise((done) => setTimeout(done, milliseconds));
