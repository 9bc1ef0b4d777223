/** The steps as written in sessions of the programme's length: what to set out to do in an evening, and what to wait for. */

import type { Session, TooLong } from "../../src/engine/procedure/sessions/plan-sessions.ts";
import { t } from "../../src/engine/words.ts";
import type { ModuleView, StepView } from "../../src/model/site.ts";
import { type Html, html } from "../html.ts";
import { duration } from "../words.ts";
import { type Column, ruledTable } from "./ruled-table.ts";

/** `length` is that of a session in minutes. */
export function sessions(view: ModuleView, length: number): Html | undefined {
  if (view.sessions === undefined) return undefined;
  const steps = new Map(view.steps.map((each) => [each.step.id, each]));
  const { sessions: split, tooLong } = view.sessions;
  return html`<section class="group" aria-labelledby="s_sessions">
<h2 id="s_sessions">Sessions</h2>
${split === null ? noSplit(tooLong, length, steps) : table(split, length, steps)}</section>
`;
}

type Steps = ReadonlyMap<string, StepView>;

function table(split: readonly Session[], length: number, steps: Steps): Html {
  const rows = split.map((session, index) => ({ ...session, number: index + 1 }));
  const columns: readonly Column<(typeof rows)[number]>[] = [
    { name: t`No.`, kind: "head", value: ({ number }) => String(number) },
    {
      name: t`Steps`,
      kind: "mark",
      value: (session) => fromTo(session.steps[0]!, session.steps.at(-1)!, steps),
    },
    { name: t`Time`, kind: "count", value: ({ minutes }) => duration(minutes) },
    {
      name: t`Before the next`,
      value: ({ gapAtLeast }) => (gapAtLeast === undefined ? undefined : t`at least ${duration(gapAtLeast)}`),
    },
  ];
  return html`<p>Reckoned for sessions of ${duration(length)}, waits within them counted. Each ends where work may be left as it is.</p>
${ruledTable("sessions", columns, rows)}`;
}

function noSplit({ from, to, minutes }: TooLong, length: number, steps: Steps): Html {
  return html`<p>${fromTo(from, to, steps)} takes ${duration(minutes)} with no safe place to leave off before its end: longer than a session of ${duration(length)}. Plan the time for it before you begin.</p>
`;
}

function fromTo(from: string, to: string, steps: Steps): Html {
  return from === to
    ? stepLink(steps.get(from)!)
    : html`${stepLink(steps.get(from)!)} to ${stepLink(steps.get(to)!)}`;
}

const stepLink = ({ step, number }: StepView): Html =>
  html`<a href="#${step.id}">${number} ${step.title}</a>`;
