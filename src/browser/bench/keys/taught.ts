/** Keys that were taught by pressing them, kept on the device. */
import { fieldsOf } from "../../page/store.ts";
import { keyOf, type Press, type Taught, type TaughtRole, taughtRoles } from "./deeds.ts";

/** Keys that a page must leave alone, and those that are no key of their own. */
const never = new Set([
  "Tab",
  "Escape",
  "Shift",
  "Control",
  "Alt",
  "AltGraph",
  "Meta",
  "CapsLock",
  "NumLock",
  "Fn",
  "Dead",
  "Process",
  "Unidentified",
]);

/** The key, or undefined where it can't be taught: one that moves about the page, or one pressed with another. */
export function teachable(press: Press): string | undefined {
  if (press.altKey || press.ctrlKey || press.metaKey || never.has(press.key) || press.key === "")
    return undefined;
  return keyOf(press.key);
}

/** A key has one role: where it had another, it loses that. */
export function teach(taught: Taught, role: TaughtRole, key: string): Taught {
  return { ...rowsOf(taught, (each, its) => each !== role && its !== key), [role]: key };
}

export const unteach = (taught: Taught, role: TaughtRole): Taught => rowsOf(taught, (each) => each !== role);

function rowsOf(taught: Taught, stays: (role: TaughtRole, key: string) => boolean): Taught {
  return Object.fromEntries(
    taughtRoles.flatMap((role) => {
      const key = taught[role];
      return key !== undefined && stays(role, key) ? [[role, key]] : [];
    }),
  );
}

/** What was kept, which may be anything. */
export function readTaught(kept: unknown): Taught {
  const fields = fieldsOf(kept);
  let taught: Taught = {};
  for (const role of taughtRoles) {
    const key = fields[role];
    if (typeof key === "string" && key.length <= longest && !never.has(key) && key !== "")
      taught = teach(taught, role, keyOf(key));
  }
  return taught;
}

/** No name of a key is longer (UI Events, KeyboardEvent key values: "LaunchApplication…"). */
const longest = 40;
