/**
 * Marks for what is to be translated, and what the language of the site decides. The English text stands where it is used:
 * `t` marks it and is the plain template. Where a programme has another language, the code is compiled for it with
 * the translations in place of the marks (`src/words`), so that pages carry no catalogue.
 */

/** Set when code is compiled for a language: a BCP 47 tag. */
declare const WORDS_LANGUAGE: string | undefined;

/** The language in which numbers, dates and lists are written. */
export const language: string = typeof WORDS_LANGUAGE === "string" ? WORDS_LANGUAGE : "en-GB";

const isEnglish = language === "en-GB";

type Shown = string | number;

/**
 * Marks a text: `` t`Step ${number} of ${total}` ``. A bundle leaves out what nobody uses, as it does with plain texts.
 *
 * @__NO_SIDE_EFFECTS__
 */
export function t(texts: TemplateStringsArray, ...values: readonly Shown[]): string {
  let text = texts[0]!;
  for (let at = 0; at < values.length; at++) text += values[at] + texts[at + 1]!;
  return text;
}

/** Marks a text that is the same in English as another and not elsewhere: `` tIn("a run of steps")`Run` ``. */
export const tIn = (_context: string) => t;

/** The form for a number, of those of the language in the order of CLDR: zero, one, two, few, many, other. */
export function plural<Form>(count: number, ...forms: readonly Form[]): Form {
  const at = isEnglish ? Number(count !== 1) : kindOf(count);
  return forms[Math.min(at, forms.length - 1)]!;
}

function kindOf(count: number): number {
  const rules = new Intl.PluralRules(language);
  const own: readonly string[] = rules.resolvedOptions().pluralCategories;
  const kinds = ["zero", "one", "two", "few", "many", "other"].filter((kind) => own.includes(kind));
  return kinds.indexOf(rules.select(count));
}

/** "1 step", "3 steps". In other languages the forms hold the number as `{0}`. */
export function counted(count: number, one: string, many = `${one}s`, ...more: readonly string[]): string {
  const form = plural(count, one, many, ...more);
  return isEnglish ? `${count} ${form}` : form.replace("{0}", numberWords(count));
}

/** A number as it is written in the language, without marks between thousands. In English as JavaScript writes it. */
export const numberWords = (value: number): string => (isEnglish ? String(value) : inLanguage(String(value)));

/** Digits with a decimal point, as they are written in the language. */
export const inLanguage = (digits: string): string =>
  isEnglish ? digits : digits.replace(/(\d)\.(?=\d)/g, `$1${decimalSign()}`);

const decimalSign = (): string =>
  new Intl.NumberFormat(language).formatToParts(0.5).find(({ type }) => type === "decimal")?.value ?? ".";

const lists = /* @__PURE__ */ new Intl.ListFormat(language, { type: "conjunction" });

/** "a", "a and b", "a, b and c". */
export const listed = (items: readonly string[]): string => lists.format(items);

/** "2026-11-20" as "20 November 2026"; what is not such a date stays as it is. */
export function dateWords(iso: string): string {
  const at = /^\d{4}-\d\d-\d\d$/.test(iso) ? Date.parse(`${iso}T00:00:00Z`) : Number.NaN;
  return Number.isNaN(at) ? iso : days.format(at);
}

const days = /* @__PURE__ */ new Intl.DateTimeFormat(language, {
  day: "numeric",
  month: "long",
  year: "numeric",
  timeZone: "UTC",
});
