/** What a page keeps in the browser between visits. */

export interface Store {
  /** What was saved last: untrusted, for another version of the page may have saved it. Undefined where there is nothing. */
  load(): unknown;
  save(value: unknown): void;
}

/** One that windows of the site have together. */
export interface SharedStore extends Store {
  /** Calls when another window has saved under the same key, or has taken it away. */
  follow(changed: () => void): void;
}

const prefix = "benchwright:";

/** Takes away what all pages of the site have kept; nothing where storage is denied. */
export function forgetAll(): void {
  attempt(() => {
    for (const name of Object.keys(localStorage)) if (name.startsWith(prefix)) localStorage.removeItem(name);
  });
}

/**
 * Keeps one JSON value under a key of local storage. Where storage is denied or full, as in private windows, it is kept
 * until the page is left.
 */
export function storeAt(key: string): SharedStore {
  const name = prefix + key;
  let last: string | null = null;
  return {
    load: () => parse(last ?? attempt(() => localStorage.getItem(name)) ?? undefined),
    save(value) {
      last = JSON.stringify(value);
      attempt(() => localStorage.setItem(name, last!));
    },
    follow: (changed) =>
      addEventListener("storage", ({ key, newValue }) => {
        if (key !== name) return;
        last = newValue;
        changed();
      }),
  };
}

/** False where storage is denied, so that nothing stays from one visit to the next. */
export const keepsAnything = (): boolean =>
  attempt(() => {
    localStorage.setItem(`${prefix}try`, "");
    localStorage.removeItem(`${prefix}try`);
    return true;
  }) ?? false;

function attempt<Value>(use: () => Value): Value | undefined {
  try {
    return use();
  } catch {
    return undefined;
  }
}

const parse = (text: string | undefined): unknown =>
  text === undefined ? undefined : attempt(() => JSON.parse(text) as unknown);

/** What was loaded, as an object whose fields may be anything; empty where it is no object. */
export function fieldsOf(value: unknown): Readonly<Record<string, unknown>> {
  return typeof value === "object" && value !== null ? (value as Record<string, unknown>) : {};
}
