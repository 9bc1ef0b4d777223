/** The log: a row for each module. The script fills it in; without, it is a page to be kept by hand. */
import { t } from "../../../src/engine/words.ts";
import { type Address, linkTo } from "../../../src/model/address.ts";
import type { ModuleCard } from "../../../src/model/site.ts";
import type { Book } from "../../book.ts";
import { type Html, html } from "../../html.ts";

interface Column {
  /** Names the cell for the script. */
  readonly id: string;
  readonly name: string;
  /** False where the module has no such thing: the cell is ruled out. */
  readonly has: (card: ModuleCard) => boolean;
}

const always = (): boolean => true;

const columns: readonly Column[] = [
  { id: "read", name: t`Read`, has: always },
  { id: "quiz", name: t`Quiz`, has: ({ questions }) => questions > 0 },
  { id: "practice", name: t`Practice`, has: ({ practices }) => practices > 0 },
  { id: "run", name: t`On paper`, has: ({ steps }) => steps.length > 1 },
  { id: "bench", name: t`At the bench`, has: always },
  { id: "signed", name: t`Signed off`, has: always },
  { id: "next", name: t`Next`, has: always },
];

export function recordLog(book: Book, from: Address): Html {
  return html`<table class="log">
<thead><tr><th scope="col">Module</th>${columns.map(({ name }) => html`<th scope="col">${name}</th>`)}</tr></thead>
<tbody>
${book.site.cards.map((card) => row(card, from))}</tbody>
</table>
`;
}

function row(card: ModuleCard, from: Address): Html {
  return html`<tr data-module="${card.id}"><th scope="row"><a href="${linkTo(from, { kind: "module", id: card.id })}">${card.title}</a></th>${columns.map((column) => cell(column, card))}</tr>
`;
}

function cell({ id, name, has }: Column, card: ModuleCard): Html {
  return has(card)
    ? html`<td data-cell="${id}" data-name="${name}"></td>`
    : html`<td class="none" data-name="${name}">—</td>`;
}
