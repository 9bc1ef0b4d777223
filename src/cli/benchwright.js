#!/usr/bin/env node
// The one file that is not TypeScript: Node 20 can't start a TypeScript file, so this teaches it to and goes on.
import { register } from "tsx/esm/api";

register();
await import("./main.ts");
