/** Where a question is answered on the page. */
export interface Field {
  /** As the engine reads it; undefined where nothing was answered. */
  read(): unknown;
  /** Puts back what was kept, which is untrusted; undefined empties the field. */
  write(answer: unknown): void;
  /** Shows options or steps in an order, given as places in the written one. */
  draw(order: readonly number[]): void;
  /** No more answers are taken, or they are again. */
  close(closed: boolean): void;
}
