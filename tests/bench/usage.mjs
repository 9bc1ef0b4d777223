/**
 * Loaded into a process that is measured (`--import`): at its end it adds a line to a file, with its largest memory in
 * KiB and the time in microseconds that processors spent on all its threads.
 */
import { appendFileSync } from "node:fs";

const file = process.env.BENCH_USAGE;
if (file !== undefined)
  process.on("exit", () => {
    const { maxRSS, userCPUTime, systemCPUTime } = process.resourceUsage();
    appendFileSync(file, `${maxRSS} ${userCPUTime + systemCPUTime}\n`);
  });
