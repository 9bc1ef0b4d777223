/** The route sheet's table: stage by stage, a row for each module, and on paper where it is signed. */
import { routeStages } from "../../src/engine/competency/route.ts";
import { t } from "../../src/engine/words.ts";
import { type Address, linkTo } from "../../src/model/address.ts";
import type { ModuleCard } from "../../src/model/site.ts";
import type { Book } from "../book.ts";
import { type Html, html, join } from "../html.ts";
import { capital, counted, duration } from "../words.ts";
import { box } from "./box.ts";
import { lastNeedsAmong } from "./last-needs.ts";
import { asksOf, asksOfAll, standingAsks } from "./route-asks.ts";

interface Column {
  readonly name: string;
  /** undefined where the module has no such thing. */
  readonly value: (card: ModuleCard) => Html | string | undefined;
  /** Never broken into lines. */
  readonly isShort?: true;
}

/** What each level of a sign-off lets one do. */
export const levelNames = [t`Under eye`, t`Alone`, t`May teach`] as const;

export function routeTable(book: Book, from: Address): Html {
  const { cards, programme } = book.site;
  const stages = routeStages(new Map(cards.map(({ id, needs }) => [id, needs])));
  const columns = columnsOf(book, from);
  return html`<table class="ruled route">
<caption>${counted(cards.length, "module")} in ${counted(stages.length, "stage")}. Hands-on time is without waits; a session is ${duration(programme.session)}.</caption>
<thead><tr><th scope="col">Module</th>${columns.map(({ name }) => html`<th scope="col">${name}</th>`)}<th scope="col" class="on-paper">Signed for: date, initials</th></tr></thead>
${stages.map(
  (ids, at) => html`<tbody>
<tr class="route-stage"><th scope="rowgroup" colspan="${columns.length + 2}"><b>Stage ${at + 1}</b> ${stageWords(at)}</th></tr>
${cards.filter(({ id }) => ids.includes(id)).map((card) => row(card, columns, from))}</tbody>
`,
)}</table>
`;
}

const stageWords = (at: number): string =>
  at === 0 ? t`needs nothing before it` : t`needs what the stages before it teach`;

function columnsOf(book: Book, from: Address): Column[] {
  const lastNeeds = lastNeedsAmong(book.cards);
  const link = (id: string) =>
    html`<a href="${linkTo(from, { kind: "module", id })}">${book.cards.get(id)?.title ?? id}</a>`;
  const { signOff } = book.site.programme;
  const ofAll = asksOfAll(book.site.cards);
  const own = (card: ModuleCard) => asksOf(card).filter((ask) => !ofAll.includes(ask));
  const kinds = new Set(book.site.cards.map(kindOf));
  return [
    { name: t`Needs`, value: (card) => join(lastNeeds(card).map(link), "; ") },
    // Where all are of one kind it tells nothing.
    ...(kinds.size > 1 ? [{ name: t`Kind`, value: kindOf }] : []),
    {
      name: t`Hands-on`,
      value: ({ handsOn }) => (handsOn > 0 ? duration(handsOn) : undefined),
      isShort: true,
    },
    { name: t`Sessions`, value: sessions },
    {
      name: ofAll.length > 0 ? t`Asked for besides` : t`Asked for`,
      value: (card) => asked([...own(card), ...standingAsks(card.rules, signOff)]),
    },
  ];
}

const kindOf = ({ steps }: ModuleCard): string => (steps.length > 0 ? t`procedure` : t`bench knowledge`);

function sessions({ sessions }: ModuleCard): string | undefined {
  return sessions === "longer" ? t`longer than one` : sessions?.toString();
}

const asked = (texts: readonly string[]): string | undefined =>
  texts.length === 0 ? undefined : capital(texts.join("; "));

function row(card: ModuleCard, columns: readonly Column[], from: Address): Html {
  const { id, title } = card;
  return html`<tr><th scope="row"><a href="${linkTo(from, { kind: "module", id })}">${title}</a></th>${columns.map((column) => cell(column, card))}<td class="on-paper">${levelNames.map((name) => html`<span class="route-sign"><span>${box}${name}</span><i aria-hidden="true"></i></span>`)}</td></tr>
`;
}

function cell({ name, value, isShort }: Column, card: ModuleCard): Html {
  const said = value(card);
  if (said === undefined || said.toString() === "") return html`<td class="blank">—</td>`;
  return html`<td data-name="${name}"${isShort && html` class="short"`}>${said}</td>`;
}
