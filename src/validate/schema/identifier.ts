/** What names a programme for ever, and where its days end. */
import { z } from "zod";
import { fault } from "./fields.ts";

const identifierWords =
  "an https address such as https://workshop.example/bench or a tag such as tag:workshop.example,2026:bench, without / at its end";

/** RFC 4151, section 2.1: `tag:`, a domain or mail address, a date, and what the owner chose of the letters that an address may have. */
const tag =
  /^tag:(?:[\w.-]+@)?[a-z0-9](?:[a-z0-9.-]*[a-z0-9])?,\d{4}(?:-\d{2}(?:-\d{2})?)?:(?:[\w.~!$&'()*+,;=:@/-]|%[0-9A-F]{2})+$/i;
/** Nothing behind `?` or `#`: addresses of modules are made by adding to it. */
const https = /^https:\/\/[a-z0-9][a-z0-9.-]*(?::\d+)?(?:\/(?:[\w.~!$&'()*+,;=:@/-]|%[0-9A-F]{2})*)?$/i;

export const identifier = z.string(identifierWords).superRefine((written, context) => {
  if (written.length <= 200 && !written.endsWith("/") && (tag.test(written) || https.test(written))) return;
  context.addIssue(fault("bad-identifier", `${identifierWords}, not "${written.slice(0, 80)}"`));
});

const zoneWords = "a time zone of the IANA list, such as Europe/London or UTC";

export const timeZone = z.string(zoneWords).superRefine((written, context) => {
  if (/^[A-Za-z]/.test(written) && isZone(written)) return;
  context.addIssue(fault("unknown-time-zone", `${zoneWords}, not "${written.slice(0, 80)}"`));
});

function isZone(name: string): boolean {
  try {
    new Intl.DateTimeFormat("en", { timeZone: name });
    return true;
  } catch {
    return false;
  }
}
