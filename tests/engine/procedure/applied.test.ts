import { describe, expect, test } from "vitest";
import { applications } from "../../../src/engine/procedure/applied.ts";
import type { Act, ActKind } from "../../../src/engine/procedure/procedure.ts";
import { untouched } from "../../../src/engine/procedure/untouched.ts";
import { millSite } from "../../render/fixture.ts";

const act = (kind: ActKind, target: string): Act => ({ kind, target, count: undefined });

describe("where substances go", () => {
  const uses = applications([
    { id: "clean", acts: [act("work", "wheel")], substances: ["spirit"] },
    {
      id: "oil",
      acts: [act("refit", "lid"), act("work", "shaft"), act("work", "wheel")],
      substances: ["oil"],
    },
    { id: "close", acts: [act("tighten", "screws")], substances: ["oil", "oil"] },
  ]);

  test("each use names its step and what that works on", () => {
    expect([...uses]).toEqual([
      ["spirit", [{ step: "clean", on: ["wheel"] }]],
      [
        "oil",
        [
          { step: "oil", on: ["shaft", "wheel"] },
          { step: "close", on: [] },
        ],
      ],
    ]);
  });
});

test("what no step names is left alone", () => {
  const { procedure } = millSite().mill.module;
  expect(untouched(procedure)).toEqual([]);
  const parts = new Map([
    ...procedure.parts,
    ["crank", { ...procedure.parts.get("shaft")!, id: "crank", heldBy: new Map() }],
  ]);
  expect(untouched({ ...procedure, parts })).toEqual(["crank"]);
});
