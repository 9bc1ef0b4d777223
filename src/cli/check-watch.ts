/** `check --watch`: checks again while the content is being written, and tells what has changed. */
import { existsSync } from "node:fs";
import { changesBetween, changesText } from "../report/changes.ts";
import { reportText } from "../report/text.ts";
import { checkWith, pictureShop } from "./check-pictures.ts";
import { type ExitCode, type Output, WrongCall } from "./command.ts";
import { type Checked, painter } from "./content.ts";
import { untilAsked, watchContent } from "./watch.ts";

/** Ends with 0 when it is asked to end: what the content is like then is no answer to the call. */
export async function checkAndWatch(
  folder: string,
  output: Output,
  asked: () => Promise<void> = untilAsked,
): Promise<ExitCode> {
  if (!existsSync(folder)) throw new WrongCall(`There is no folder ${folder} to watch.`);
  const paint = painter(process.stdout);
  const place = await pictureShop(folder);
  let last: Checked = await checkWith(place);
  const again = async () => {
    const next = await checkWith(place);
    const text = changesText(
      changesBetween(last.diagnostics, next.diagnostics),
      next.diagnostics,
      next.texts,
      paint,
    );
    last = next;
    if (text !== "") output.out(`\n${timeNow()}\n${text}\n`);
  };
  const end = watchContent(folder, again, output.err);
  output.out(`${reportText(last.diagnostics, last.texts, paint)}\n\nWatching ${folder} (Ctrl+C ends it)\n`);
  await asked();
  end();
  return 0;
}

const timeNow = (): string => new Intl.DateTimeFormat("en-GB", { timeStyle: "medium" }).format(new Date());
