/** Keeps what goes wrong in one place of a module: its quiz, one of its practices, its dry run. */
import type { Go } from "../../engine/review/faults.ts";
import { joinedGoes } from "../../engine/review/goes.ts";
import type { Kept } from "../../model/page-data.ts";
import type { Store } from "../page/store.ts";
import { type FaultWords, faultsStore, type KeptPlace, keepPlaces, readPlaces } from "./kept.ts";

export interface FaultLogOptions {
  readonly of: Kept;
  /** "quiz", "dry-run", "practice:" and its id. */
  readonly where: string;
  readonly title: string;
  /** Ids that there are today; what was asked under others is forgotten. */
  readonly known: ReadonlySet<string>;
  readonly words: (id: string) => FaultWords;
}

/** No more goes than these are looked back on. */
const mostGoes = 20;

export class FaultLog {
  readonly #options: FaultLogOptions;

  constructor(options: FaultLogOptions) {
    this.#options = options;
  }

  /** What tells the last go from others; undefined where there was none. */
  last(): string | undefined {
    return this.#place().goes.at(-1)?.[0];
  }

  /** Adds to the go with this key, which is the last one or begins. What was missed before in the same go stays missed. */
  note(key: string, go: Go): void {
    if (go.asked.length === 0) return;
    const { of, where, title, known, words } = this.#options;
    const store = this.#store();
    const before = this.#place();
    const [last, earlier] =
      before.goes.at(-1)?.[0] === key
        ? [before.goes.at(-1)![1], before.goes.slice(0, -1)]
        : [go, before.goes];
    const goes = [...earlier, [key, joinedGoes(last, go)] as const]
      .slice(-mostGoes)
      .map(([name, each]) => [name, among(each, known)] as const);
    const missed = new Set(goes.flatMap(([, each]) => each.missed));
    const told = new Map([...before.words].filter(([id]) => missed.has(id)));
    for (const id of go.missed) told.set(id, words(id));
    const places = readPlaces(store.load()).set(where, { title, goes, words: told });
    faultsStore(of).save(keepPlaces(places));
  }

  #store(): Store {
    return faultsStore(this.#options.of);
  }

  #place(): KeptPlace {
    const { where, title } = this.#options;
    return readPlaces(this.#store().load()).get(where) ?? { title, goes: [], words: new Map() };
  }
}

function among({ asked, missed, critical }: Go, known: ReadonlySet<string>): Go {
  const some = (ids: readonly string[]): string[] => ids.filter((id) => known.has(id));
  return { asked: some(asked), missed: some(missed), critical: some(critical) };
}
