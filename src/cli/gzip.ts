/** Packs and unpacks by gzip, for lists of withdrawals. */
import { promisify } from "node:util";
import { gzip as pack, gunzip as unpack } from "node:zlib";
import type { Gunzip, Gzip } from "../engine/competency/status-list.ts";

export const gzip: Gzip = async (bytes) => new Uint8Array(await promisify(pack)(bytes));

export const gunzip: Gunzip = async (bytes, most) =>
  new Uint8Array(await promisify(unpack)(bytes, { maxOutputLength: most }));
