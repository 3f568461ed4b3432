import { expect, test } from "vitest";
import { attempt, PartsError } from "../../src/core/problem.js";

const unreadable = () => {
  throw new PartsError("unreadable", "?", "Write a figure.");
};

test("what cannot be done gives what stands instead, or nothing; what can is given as it is", () => {
  expect(attempt(() => 47_000)).toBe(47_000);
  expect(attempt(unreadable)).toBeNull();
  expect(attempt(unreadable, ({ problem }) => problem.wanted)).toBe("Write a figure.");
});

test("a mistake of ours is no problem of the user's and goes on", () => {
  const broken = () => attempt(() => (undefined as unknown as string).length);
  expect(broken).toThrow(TypeError);
});
