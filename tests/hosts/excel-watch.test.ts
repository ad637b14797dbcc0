// @vitest-environment jsdom
import { afterEach, beforeEach, expect, test, vi } from "vitest";
import { gathered } from "../../src/hosts/excel/watch";

let hidden = false;
beforeEach(() => {
  vi.useFakeTimers();
  vi.spyOn(document, "hidden", "get").mockImplementation(() => hidden);
});
afterEach(() => {
  vi.useRealTimers();
  hidden = false;
});

const seenAgain = () => document.dispatchEvent(new Event("visibilitychange"));

test("changes within 150 ms are told once, the next ones anew", () => {
  const changed = vi.fn();
  const { tell, stop } = gathered(changed);
  for (let i = 0; i < 5; i += 1) tell();
  vi.advanceTimersByTime(149);
  expect(changed).toHaveBeenCalledTimes(0);
  vi.advanceTimersByTime(1);
  expect(changed).toHaveBeenCalledTimes(1);
  tell();
  vi.advanceTimersByTime(150);
  expect(changed).toHaveBeenCalledTimes(2);
  stop();
});

test("while the pane is hidden nothing is told; once it is seen again, what was missed, once", () => {
  const changed = vi.fn();
  const { tell, stop } = gathered(changed);
  hidden = true;
  for (let i = 0; i < 3; i += 1) {
    tell();
    vi.advanceTimersByTime(1000);
  }
  expect(changed).toHaveBeenCalledTimes(0);
  hidden = false;
  seenAgain();
  seenAgain();
  expect(changed).toHaveBeenCalledTimes(1);
  stop();
});

test("after the end nothing is told", () => {
  const changed = vi.fn();
  const { tell, stop } = gathered(changed);
  tell();
  stop();
  vi.advanceTimersByTime(1000);
  seenAgain();
  expect(changed).toHaveBeenCalledTimes(0);
});
