/** A box to tick on paper. */
import { raw } from "../html.ts";

export const box = raw('<i class="box" aria-hidden="true"></i>');
