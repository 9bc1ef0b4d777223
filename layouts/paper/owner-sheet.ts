/** What the owner is handed with the machine: what was found, done, replaced and left alone, and when it is due again. */

import { type Application, applications } from "../../src/engine/procedure/applied.ts";
import { untouched } from "../../src/engine/procedure/untouched.ts";
import { t } from "../../src/engine/words.ts";
import type { Module } from "../../src/model/module.ts";
import type { Hazard } from "../../src/model/sheet.ts";
import type { ModuleView } from "../../src/model/site.ts";
import { box } from "../components/box.ts";
import { checks } from "../components/checks.ts";
import { ends } from "../components/ends.ts";
import { partWords } from "../components/part-words.ts";
import { type Column, ruledTable } from "../components/ruled-table.ts";
import { hazardIds, hazardsNamed } from "../components/safety-message.ts";
import { signalWord } from "../components/signal-word.ts";
import { takenFor } from "../components/taken-for.ts";
import { type Html, html } from "../html.ts";
import { capital, listed, sentence } from "../words.ts";
import { blank, blanks, ruledLines } from "./blanks.ts";
import type { SheetSource } from "./sheet.ts";

export function ownerSheet(source: SheetSource): Html {
  const { view, book } = source;
  const { module } = view;
  const { name, place } = book.site.programme;
  return html`${blanks([t`Machine and its number`, t`Returned to`, t`Received on`, t`Returned on`])}
<p>This machine was in the hands of ${[name, place].filter((each) => each !== undefined).join(", ")}. The work was “${module.title}”, revision ${module.revision}.</p>
${found(module)}${replaced(module)}${leftAlone(module)}${lubricants(source)}${checks(module.asLeft, t`How it goes back`, t`Left`)}<div class="keep">${ends(module)}</div>
<h3>Next</h3>
${blanks([t`Next service due`, t`Or after so much use`, t`Worked by`, t`Seen by`])}
${cautions(source)}`;
}

function found(module: Module): Html {
  return html`${checks(module.asFound, t`What was found`, t`Found`)}${module.asFound.length === 0 ? html`<h3>What was found</h3>\n` : undefined}${ruledLines(2)}`;
}

/** Boxes, since only who did it knows whether the part was changed. */
function replaced({ procedure: { parts, leaves } }: Module): Html {
  const fates = {
    discarded: t`what was there is thrown away`,
    left: t`what was there is handed back`,
    onward: t`what was there goes on to other work`,
  };
  const items = [...parts.values()].flatMap(({ id, replaces }) => {
    const old = replaces === undefined ? undefined : parts.get(replaces);
    if (old === undefined) return [];
    const left = leaves.get(old.id);
    return [
      html`<li>${box} ${capital(partWords(id, { parts }))}, in place of: ${partWords(old.id, { parts })}${left === undefined ? undefined : `; ${fates[left.fate]}`}</li>\n`,
    ];
  });
  return html`<h3>Replaced</h3>
${items.length === 0 ? undefined : html`<ul class="ticks">\n${items}</ul>\n`}${ruledLines(2)}`;
}

function leftAlone({ procedure }: Module): Html {
  const items = untouched(procedure).map((id) => {
    const set = procedure.fasteners.get(id);
    const why = set?.stays === undefined ? undefined : `: ${set.stays}`;
    return html`<li>${box} ${capital(set?.name ?? partWords(id, procedure))}${why}</li>\n`;
  });
  return html`<h3>Left alone, and why</h3>
${items.length === 0 ? undefined : html`<ul class="ticks">\n${items}</ul>\n`}${ruledLines(2)}`;
}

interface Lubricated {
  readonly title: string;
  readonly uses: readonly Application[];
}

function lubricants({ view, book }: SheetSource): Html | undefined {
  const { steps } = view.module.procedure;
  const oils = new Map(steps.map((step) => [step.id, takenFor("lubricating", step, book)]));
  const rows: Lubricated[] = [...applications(steps)].flatMap(([id, all]) => {
    const uses = all.filter(({ step }) => oils.get(step)?.includes(id));
    return uses.length === 0 ? [] : [{ title: book.substances.get(id)?.sheet.title ?? id, uses }];
  });
  if (rows.length === 0) return undefined;
  const columns: readonly Column<Lubricated>[] = [
    { name: t`Lubricant`, kind: "head", value: ({ title }) => title },
    { name: t`Where it went`, value: ({ uses }) => places(uses, view) },
    { name: t`Its name on the can`, kind: "found", value: () => undefined },
  ];
  return html`<h3>Lubricants</h3>
${ruledTable("lubricants", columns, rows)}`;
}

/** What the steps work on; where a step does not say, what it is called. */
function places(uses: readonly Application[], { module: { procedure }, steps }: ModuleView): string {
  const titles = new Map(steps.map(({ step }) => [step.id, step.title]));
  const name = (id: string) => procedure.parts.get(id)?.name ?? procedure.fasteners.get(id)?.name ?? id;
  const words = uses.flatMap(({ step, on }) =>
    on.length === 0 ? [t`at “${titles.get(step)!}”`] : on.map(name),
  );
  return sentence(capital(listed([...new Set(words)])));
}

/** Hazards of the work that no substance brings along are those of the machine itself. */
function cautions(source: SheetSource): Html {
  const own = machineHazards(source);
  return html`<div class="owner-cautions">
<h3>Before you use it</h3>
<ul>
<li>Use it as its maker meant it, on a firm table, and keep children’s hands away from what turns or pinches.</li>
<li>Oil nothing beyond what is written here, and use nothing else than what is written here, before you have asked the workshop.</li>
<li>Don’t open it and don’t force it. Where it slips, jams, bangs, smells or sounds other than it did on its return: stop, leave it as it is, ring the workshop.</li>
<li>Not everything that is old is known: paint, dials and pads of old machines may hold what harms. Don’t sand, scrape or burn them. Ask first.</li>
</ul>
${own.length === 0 ? undefined : html`<p>Inside it, once it is opened:</p>\n<ul class="owner-hazards">\n${own.map(({ signal, title, consequence }) => html`<li>${signalWord(signal)} <b>${title}.</b> ${sentence(consequence)}</li>\n`)}</ul>\n`}<p>Where this sheet and the maker’s instructions, a safety data sheet or the law of your place differ, they decide. The workshop can be reached at ${blank()}</p>
</div>
`;
}

function machineHazards({ view, book }: SheetSource): Hazard[] {
  const brought = new Set([...book.substances.values()].flatMap(({ sheet }) => sheet.hazards));
  const own = hazardIds(view).filter((id) => !brought.has(id));
  return hazardsNamed(own, book);
}
