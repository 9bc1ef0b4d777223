/** A page to be written. */
export interface Page {
  /** In the site. */
  readonly file: string;
  /** Makes its text when it is wanted. */
  readonly make: () => string;
  /** All that it is made from: equal inputs, equal text. */
  readonly inputs: readonly unknown[];
}
