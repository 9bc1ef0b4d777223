/** What the thing that is begun is to be called: the name of its folder or file. */
import { idPattern } from "../../model/id.ts";
import { slugOf } from "../../model/link.ts";
import { WrongCall } from "../command.ts";

/** Throws a WrongCall that suggests an id where one can be made of what was said. */
export function refuseBadId(id: string): void {
  if (!idPattern.test(id)) throw new WrongCall(badIdWords(id));
}

/** Of what was said as an id, in one word or several. */
export function badIdWords(said: string): string {
  const alike = idLike(said);
  return `"${said}" is not a good id: an id is one word of lower-case letters, digits and hyphens, beginning with a letter.${
    alike === undefined
      ? ""
      : ` Say ${alike} instead; its title, with capitals and spaces, stands in the file that is written.`
  }`;
}

/** "My Machine" and "MyMachine" become "my-machine"; undefined where nothing is left. */
function idLike(said: string): string | undefined {
  const parted = said.replace(/(\p{Ll})(?=\p{Lu})/gu, "$1-").replaceAll("ß", "ss");
  const alike = slugOf(parted)
    .replace(/[^a-z0-9]+/g, "-")
    .replace(/^[0-9-]+|-+$/g, "");
  return idPattern.test(alike) && (alike !== "section" || /section/i.test(said)) ? alike : undefined;
}
