/** Loaded into a process that is measured (`--import`): at its end it adds its largest memory, in KiB, to a file. */
import { appendFileSync } from "node:fs";

const file = process.env.BENCH_USAGE;
if (file !== undefined) process.on("exit", () => appendFileSync(file, `${process.resourceUsage().maxRSS}\n`));
