/** What is translated: one message, as a catalogue knows it and as it stands in code. */

export interface Message {
  /** Tells apart two messages that are the same in English; "" where that is not needed. */
  readonly context: string;
  /** The English text, with placeholders `{0}` and tags `<0>…</0>`, `<0/>`. */
  readonly id: string;
  /** English for every number but one; "" for a message that counts nothing. */
  readonly plural: string;
}

/** What a catalogue has for a message: one text, or one for each kind of number. */
export type Translation = readonly string[];

/** What code asks of a catalogue: undefined where it has no such message. */
export type Translate = (message: Message) => Translation | undefined;

/** The same for equal messages. U+0004 is what gettext puts between the two. */
export const keyOf = ({ context, id }: Message): string => `${context}\u0004${id}`;

/** Placeholders and tags of a text, in the order of the alphabet: two texts with the same ones may stand for each other. */
export const marksOf = (text: string): string[] => (text.match(/\{\d+\}|<\/?\d+\/?>/g) ?? []).sort();

/** True where the tags of a text open and close like brackets. */
export function isWellTagged(text: string): boolean {
  const open: string[] = [];
  for (const [tag, close, number, alone] of text.matchAll(/<(\/?)(\d+)(\/?)>/g)) {
    if (tag !== undefined && alone === "/") continue;
    if (close === "") open.push(number!);
    else if (open.pop() !== number) return false;
  }
  return open.length === 0;
}
