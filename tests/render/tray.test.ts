/** The printed account, against one kept by hand for the mill of the fixture. */
import { expect, test } from "vitest";
import { acts } from "../../layouts/components/acts.ts";
import { trayAccounts } from "../../layouts/tray/account.ts";
import { tray } from "../../layouts/tray/tray.ts";
import { startingTray } from "../../src/engine/procedure/tray.ts";
import type { Entry, TrayAccount } from "../../src/engine/procedure/tray-account.ts";
import { millSite } from "./fixture.ts";

const shown = ({ name, count, change }: Entry) =>
  `${count} ${name}${change === 0 ? "" : ` (${change > 0 ? "+" : ""}${change})`}`;
const readable = (text: string) =>
  text
    .replace(/<[^>]*>/g, " ")
    .replace(/\s+/g, " ")
    .trim();

test("compartments, counts and changes after each step", () => {
  const accounts = trayAccounts(millSite().mill).map(({ total, compartments }) => [
    total,
    ...compartments.map(({ place, entries }) => `${place}: ${entries.map(shown).join(", ")}`),
  ]);
  expect(accounts).toEqual([
    [1, "to be fitted: 1 new felt"],
    [4, "to be fitted: 1 new felt", "tray 1: 2 guard screws (+2)", "shelf: 1 guard (+1)"],
    [
      6,
      "to be fitted: 1 new felt",
      "tray 1: 2 guard screws",
      "shelf: 1 guard",
      "tray 2: 1 pin (+1), 1 shaft (+1)",
    ],
    [
      6,
      "to be fitted: 0 new felt (-1)",
      "tray 1: 2 guard screws",
      "shelf: 1 guard",
      "tray 2: 1 pin, 1 shaft",
      "bag: 1 old felt (+1)",
    ],
    [4, "tray 1: 2 guard screws", "shelf: 1 guard", "tray 2: 0 pin (-1), 0 shaft (-1)", "bag: 1 old felt"],
    [1, "tray 1: 0 guard screws (-2)", "shelf: 0 guard (-1)", "bag: 1 old felt"],
  ]);
});

test("what is slack stands apart, and a state says what it was", () => {
  const [first, second, third, , , last] = trayAccounts(millSite().mill);
  expect(first!.states).toEqual([{ name: "mainspring", value: "let down", was: "wound" }]);
  expect(second!.states).toEqual([{ name: "mainspring", value: "let down", was: undefined }]);
  expect([second, third, last].map((account) => account!.slack.map(shown))).toEqual([
    ["1 guard screws (+1)"],
    ["1 guard screws"],
    ["0 guard screws (-1)"],
  ]);
});

test("the tray in words: matched screws have numbered places, an empty tray says so", () => {
  const accounts = trayAccounts(millSite().mill);
  expect(readable(tray(accounts[1]!, 2).text)).toBe(
    "On the tray after step 2 to be fitted 1 new felt tray 1, on a card 2 guard screws numbered 1 to 3 +2 " +
      "shelf, face up 1 guard +1 Total 4 in all" +
      " Slack, on the machine 1 guard screws +1 mainspring let down",
  );
  const empty = { total: 0, compartments: [], slack: [], states: [] };
  expect(readable(tray(empty, 9).text)).toBe("On the tray after step 9 Total 0 Empty: everything is on");
});

test("a tray that folds says in one line how much is off and how much only slack", () => {
  const accounts = trayAccounts(millSite().mill);
  const sum = (account: TrayAccount) =>
    /<p class="tray-sum">(.*?)<\/p>/.exec(tray(account, 1, { folds: true }).text)?.[1];
  expect(accounts.map(sum)).toEqual([
    "1 off",
    "4 off; 1 slack",
    "6 off; 1 slack",
    "6 off; 1 slack",
    "4 off; 1 slack",
    "1 off",
  ]);
  const slack = { ...accounts[1]!, total: 0, compartments: [] };
  expect(sum(slack)).toBe("Nothing off; 1 slack");
  expect(sum({ ...slack, slack: [] })).toBe("Nothing off");
  expect(tray(slack, 1).text).not.toContain("tray-sum");
});

test("acts in words say how many, and what a hand has to know", () => {
  const { mill } = millSite();
  const trays = [startingTray(mill.module.procedure), ...mill.steps.map((step) => step.tray)];
  const words = mill.steps.map(({ step }, index) =>
    readable(acts(step, trays[index]!, mill.module.procedure)!.text),
  );
  expect(words).toEqual([
    "Leave on guard Brings about mainspring: let down",
    "Slacken guard screws (1 of 3) Remove guard screws (2 of 3; each to its own place), guard",
    "Remove pin (driven out from the small end), shaft",
    "Remove old felt Refit new felt",
    "Refit shaft, pin Tighten pin",
    "Refit guard, guard screws (2 of 3; each to its own place) Tighten guard screws (3; snug)",
  ]);
});
