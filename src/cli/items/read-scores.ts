/** Reads scores from a CSV file, a row a sitting, without holding the file in memory. */
import { BadInput } from "../command.ts";
import { openLines } from "./open-lines.ts";

export interface ScoreTable {
  readonly ids: readonly string[];
  /** The most that any row has scored in each column. */
  readonly max: readonly number[];
  /** Columns in which every score was 0 or the same most. */
  readonly isAllOrNothing: readonly boolean[];
  /** Rows left out because a cell was empty, or where empty cells count as not asked, because all were. */
  readonly incomplete: number;
}

/** Columns that name a person or a sum, which are no questions. */
const notItems = /^(student|person|name|id|total|sum|count|weight)$/i;
const weights = /^(count|weight)$/i;

/** A row longer than this is no row of scores. */
const longestRow = 100_000;

/**
 * Calls `add` for the scores of each complete row; a column "count" says how often the row occurs. `#` begins a comment
 * line. Where `empty` is "not asked", rows may have empty cells, which are NaN. Throws a BadInput with the line for a cell that
 * is no number of 0 or more. The same array is handed over each time.
 */
export async function readScores(
  file: string,
  begin: (items: number) => (scores: Float64Array) => void,
  empty: "left out" | "not asked" = "left out",
): Promise<ScoreTable> {
  const table = new Table(file, begin, empty === "not asked");
  let number = 0;
  for await (const lines of openLines(file, longestRow)) {
    for (const line of lines) table.read(line, ++number);
  }
  return table.result();
}

class Table {
  #columns: readonly number[] = [];
  #weight = -1;
  #ids: readonly string[] | undefined;
  #scores = new Float64Array();
  #max: number[] = [];
  #inBetween: boolean[] = [];
  #incomplete = 0;
  #rows = 0;
  #add: (scores: Float64Array) => void = () => undefined;

  constructor(
    private readonly file: string,
    private readonly begin: (items: number) => (scores: Float64Array) => void,
    private readonly mayBeEmpty: boolean,
  ) {}

  read(line: string, number: number): void {
    if (line === "" || line.startsWith("#")) return;
    const cells = line.split(",");
    if (this.#ids === undefined) this.#head(cells, number);
    else this.#row(cells, number);
  }

  #head(cells: readonly string[], number: number): void {
    const names = cells.map((cell) => cell.trim().replace(/^"(.*)"$/, "$1"));
    this.#columns = [...names.keys()].filter((column) => !notItems.test(names[column]!));
    this.#weight = names.findIndex((name) => weights.test(name));
    this.#ids = this.#columns.map((column) => names[column]!);
    if (this.#ids.length === 0 || this.#ids.some((id) => id === "" || !Number.isNaN(Number(id))))
      throw new BadInput(`${this.file}:${number}: the first row must name the questions`);
    if (new Set(this.#ids).size < this.#ids.length)
      throw new BadInput(`${this.file}:${number}: a column stands twice`);
    this.#scores = new Float64Array(this.#ids.length);
    this.#max = this.#ids.map(() => 0);
    this.#inBetween = this.#ids.map(() => false);
    this.#add = this.begin(this.#ids.length);
  }

  #row(cells: readonly string[], number: number): void {
    let empty = 0;
    for (const [item, column] of this.#columns.entries()) {
      const cell = cells[column]?.trim() ?? "";
      if (cell === "") empty++;
      this.#scores[item] = cell === "" ? Number.NaN : this.#figure(cell, number);
      if (empty > 0 && !this.mayBeEmpty) break;
    }
    if (empty === this.#scores.length || (empty > 0 && !this.mayBeEmpty)) {
      this.#incomplete++;
      return;
    }
    const times = this.#weight < 0 ? 1 : this.#figure(cells[this.#weight]?.trim() ?? "", number);
    if (!Number.isInteger(times) || times > 1e7)
      throw new BadInput(`${this.file}:${number}: a count must be a whole number up to 10,000,000`);
    for (let time = 0; time < times; time++) this.#add(this.#scores);
    this.#rows += times;
    if (times > 0) this.#note();
  }

  #figure(cell: string, number: number): number {
    const value = Number(cell);
    if (/^\d/.test(cell) && Number.isFinite(value)) return value;
    throw new BadInput(
      `${this.file}:${number}: "${cell.slice(0, 40)}" is no score; expected a number of 0 or more`,
    );
  }

  /** A score between 0 and the most seen makes a column one of partial credit. */
  #note(): void {
    for (const [item, score] of this.#scores.entries()) {
      const max = this.#max[item]!;
      if (score > max && max > 0) this.#inBetween[item] = true;
      if (score > 0 && score < max) this.#inBetween[item] = true;
      if (score > max) this.#max[item] = score;
    }
  }

  result(): ScoreTable {
    if (this.#ids === undefined || this.#rows === 0)
      throw new BadInput(`${this.file}: there is no complete row of scores`);
    return {
      ids: this.#ids,
      max: this.#max.map((max) => (max === 0 ? 1 : max)),
      isAllOrNothing: this.#inBetween.map((is) => !is),
      incomplete: this.#incomplete,
    };
  }
}
