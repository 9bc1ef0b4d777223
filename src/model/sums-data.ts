/** What the page of bench sums hands to its script. */
export interface SumsPageData {
  /** What a substance of the programme writes into the fields of a form, by its value in the list and the field's name. */
  readonly figures: Readonly<Record<string, Readonly<Record<string, string>>>>;
}
