/** Reading pages: the button by which a trainee notes that a sheet was read. */
import { NoteView } from "./record/note-view.ts";

const place = document.querySelector<HTMLElement>("[data-note]");
if (place !== null) new NoteView(place);
