/** What works on the address at which the page stands just now. */

import { t } from "../../engine/words.ts";

export interface Here {
  /** With its colon: "https:", "http:", "file:". */
  readonly protocol: string;
  readonly isSecure: boolean;
  /** Whether the browser has the cipher with which a key file is locked. */
  readonly hasCipher: boolean;
}

export function hereWords({ protocol, isSecure, hasCipher }: Here): string {
  const place =
    protocol === "file:"
      ? t`You have opened this page from a disk.`
      : isSecure
        ? t`You have opened this page at a secure address.`
        : t`You have opened this page over plain http.`;
  const key = hasCipher
    ? t`Everything on it works here.`
    : t`A key can’t be taken along from here, since the browser keeps its cipher from such addresses; all else works.`;
  return `${place} ${key}`;
}
