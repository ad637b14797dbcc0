import { bedWork } from "./bed-work";

/** How a bed is read: in a worker, or in the page where there are none. */
export const BED_WORK = { worker: () => new Worker(new URL("./bed-worker.ts", import.meta.url)), near: bedWork };
