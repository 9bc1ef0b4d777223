/** "Mentor's desk". */
import { beginDesk } from "./desk/begin.ts";
import { DeskPage } from "./desk/desk-page.ts";

void beginDesk(".desk-page", (place, desk, naming) => {
  new DeskPage(place, desk, naming);
});
