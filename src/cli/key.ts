/** Keys of mentors, for those who prefer the command line to the Mentor's desk. */
import { randomBytes } from "node:crypto";
import { existsSync, writeFileSync } from "node:fs";
import { didKeyOf } from "../engine/competency/did-key.ts";
import { lockKey } from "../engine/competency/key-file.ts";
import { publicKeyOf } from "../engine/competency/libraries.ts";
import { type Action, commandOf } from "./actions.ts";
import { BadInput, type ExitCode, jsonOption, printJson, WrongCall } from "./command.ts";
import { cipher, publicKeyOfFile } from "./key/key-file.ts";
import { passphrase, passphraseWords } from "./key/passphrase.ts";

const newKey: Action = {
  name: "new",
  summary: "makes a key and locks it in a file with a passphrase of twelve letters or more",
  note: passphraseWords,
  usage: "--to FILE [--json]",
  options: {
    to: { type: "string", value: "FILE", help: "where the key file goes; its name best ends in .key.json" },
    json: jsonOption,
  },
  words: 0,
  async run(call, _, output): Promise<ExitCode> {
    const file = call.text("to");
    if (file === undefined) throw new WrongCall("Say where the key goes: --to FILE");
    if (existsSync(file)) throw new WrongCall(`${file} exists already; nothing is written.`);
    const secret = new Uint8Array(randomBytes(32));
    const locked = await lockKey(
      {
        secret,
        passphrase: await passphrase(file, true),
        salt: new Uint8Array(randomBytes(16)),
        iv: new Uint8Array(randomBytes(12)),
      },
      cipher,
    ).catch((cause: unknown) => {
      throw cause instanceof RangeError ? new BadInput(cause.message) : cause;
    });
    writeFileSync(file, `${JSON.stringify(locked, undefined, 2)}\n`, { flag: "wx", mode: 0o600 });
    const key = didKeyOf(publicKeyOf(secret));
    if (call.flag("json")) printJson(output, { file, key });
    else
      output.out(
        [
          key,
          `The key is in ${file}. Keep it out of the content folder, and a copy in a safe place.`,
          "In programme.yaml its owner is listed with the line above:",
          "mentors:",
          "  - id: an-id",
          "    name: The mentor's name",
          `    key: ${key}`,
          `    from: ${new Date().toISOString().slice(0, 10)}`,
          "",
        ].join("\n"),
      );
    return 0;
  },
};

const publicKey: Action = {
  name: "public",
  summary: "prints the public key of a key file, as programme.yaml lists it; no passphrase is needed",
  usage: "FILE [--json]",
  options: { json: jsonOption },
  words: 1,
  run(call, [file], output) {
    if (file === undefined) throw new WrongCall("Say which: benchwright key public FILE");
    const key = publicKeyOfFile(file);
    if (call.flag("json")) printJson(output, { file, key });
    else output.out(`${key}\n`);
    return 0;
  },
};

export const key = commandOf("key", "makes a mentor's key, prints its public half", [newKey, publicKey]);
