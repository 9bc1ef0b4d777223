import { afterEach, expect, test, vi } from "vitest";
import { storeAt } from "../../src/browser/page/store.ts";

afterEach(() => vi.unstubAllGlobals());

function storage(): Pick<Storage, "getItem" | "setItem"> {
  const held = new Map<string, string>();
  return { getItem: (key) => held.get(key) ?? null, setItem: (key, value) => void held.set(key, value) };
}

test("what is saved is there for the next visit, under its own key", () => {
  vi.stubGlobal("localStorage", storage());
  storeAt("a").save({ x: 1 });
  expect(storeAt("a").load()).toEqual({ x: 1 });
  expect(storeAt("b").load()).toBeUndefined();
});

test("where storage is denied it is kept until the page is left", () => {
  vi.stubGlobal("localStorage", {
    getItem() {
      throw new DOMException("denied", "SecurityError");
    },
    setItem() {
      throw new DOMException("denied", "SecurityError");
    },
  });
  const store = storeAt("a");
  expect(store.load()).toBeUndefined();
  store.save([1, 2]);
  expect(store.load()).toEqual([1, 2]);
});

test("what is no JSON counts as nothing", () => {
  vi.stubGlobal("localStorage", { ...storage(), getItem: () => "{not json" });
  expect(storeAt("a").load()).toBeUndefined();
});
