/** The tray of each step of a module as it is printed. */

import { startingTray, type Tray } from "../../src/engine/procedure/tray.ts";
import { accountsOfTrays, type TrayAccount } from "../../src/engine/procedure/tray-account.ts";
import type { ModuleView } from "../../src/model/site.ts";

/** The printed account after each step, in the written order. */
export function trayAccounts(view: ModuleView): readonly TrayAccount[] {
  const accounts = known.get(view) ?? makeAccounts(view);
  known.set(view, accounts);
  return accounts;
}

/** The sheet and the bench view print the same. */
const known = new WeakMap<ModuleView, readonly TrayAccount[]>();

/** The tray before the first step, then after each, in the written order. */
export const traysOf = ({ module: { procedure }, steps }: ModuleView): Tray[] => [
  startingTray(procedure),
  ...steps.map(({ tray }) => tray),
];

const makeAccounts = (view: ModuleView): TrayAccount[] =>
  accountsOfTrays(view.module.procedure, traysOf(view));
