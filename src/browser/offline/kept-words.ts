/** What is said of keeping the site on a device. */
import { numberWords, t } from "../../engine/words.ts";
import type { HowFar, Standing, Trouble } from "./messages.ts";

/** Why nothing can be kept here; undefined where it can. */
export function whyNot(): string | undefined {
  if (location.protocol === "file:")
    return t`You read these pages as files. They are on this device already and need no network; nothing more is kept.`;
  if (!isSecureContext)
    return t`Nothing is kept on this device, because the site came over plain http, on which browsers keep no sites. From an address that begins with https it works without a network.`;
  if (!("serviceWorker" in navigator))
    return t`Nothing is kept on this device: this browser can’t do it, or not in a private window. The pages need the network.`;
  return undefined;
}

export const wholeWords = ({ of, bytes }: HowFar): string =>
  t`The whole site is kept on this device: ${numberWords(of)} files, ${megabytes(bytes)} MB. It works without a network.`;

export const partWords = ({ kept, of, bytes }: HowFar): string =>
  t`${numberWords(kept)} of ${numberWords(of)} files are kept on this device; all of them are ${megabytes(bytes)} MB. A module is kept when you first open it.`;

export const goingOnWords = ({ kept, of }: Standing): string =>
  t`Being kept on this device: ${numberWords(kept)} of ${numberWords(of)} files.`;

export const notYetWords = (): string =>
  t`Nothing is kept on this device yet. It begins with the first visit; leave a page open for a moment.`;

export function troubleWords(trouble: Trouble, { kept, of }: Standing): string {
  const far = t`${numberWords(kept)} of ${numberWords(of)} files came.`;
  if (trouble.kind === "full")
    return t`The browser gives this site no more room. ${far} Make room on the device, then try again.`;
  if (trouble.kind === "not-coming")
    return t`The file ${trouble.path} does not come. ${far} The next visit goes on from there.`;
  return t`The file ${trouble.path} is not the one that belongs to this edition: the site is just being changed, or its host changes files on the way. ${far} The next visit tries again.`;
}

const megabytes = (bytes: number): string => numberWords(Math.max(0.1, Math.round(bytes / 1e5) / 10));
