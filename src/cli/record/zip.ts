/** Node's gzip, as lists of withdrawals need it. */
import { promisify } from "node:util";
import { gunzip as gunzipNode, gzip as gzipNode } from "node:zlib";
import type { Gunzip, Gzip } from "../../engine/competency/status-list.ts";

export const gzip: Gzip = promisify(gzipNode);

export const gunzip: Gunzip = (bytes, most) =>
  new Promise((done, fail) => {
    gunzipNode(bytes, { maxOutputLength: most }, (fault, unzipped) => {
      if (fault === null) done(unzipped);
      else fail(fault);
    });
  });
