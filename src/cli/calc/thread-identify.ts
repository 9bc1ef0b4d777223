/** A measured screw: which thread it can have. */
import { formatNumber } from "../../engine/workshop/format-quantity.ts";
import { type Candidate, identifyThread, type Measured } from "../../engine/workshop/threads/identify.ts";
import { identificationGrounds } from "../../engine/workshop/threads/identify-words.ts";
import type { Call, Output } from "../command.ts";
import { printAnswer, tidy } from "./print.ts";

export function printIdentification(call: Call, output: Output, measured: Measured): void {
  const found = identifyThread(measured);
  const { candidates, nearest } = found;
  const lines =
    candidates.length > 0
      ? ["It can be, nearest first:", ...candidates.map(lineOf)]
      : ["None of the threads known here fits. For comparison, the nearest:", ...nearest.map(lineOf)];
  const data = {
    candidates: candidates.map(dataOf),
    ...(candidates.length > 0 ? {} : { nearest: nearest.map(dataOf) }),
  };
  printAnswer(call, output, lines, data, identificationGrounds(found));
}

function lineOf({ size, angle, diameterErrorMm, pitchErrorMm }: Candidate): string {
  const tpi = size.tpi === undefined ? "" : ` (${size.tpi} tpi)`;
  const sizes = `${formatNumber(size.diameterMm)} x ${formatNumber(size.pitchMm)} mm${tpi}, ${angle}°`;
  return `  ${size.designation.padEnd(12)}  ${sizes}; measured ${signed(diameterErrorMm)} mm in diameter, ${signed(pitchErrorMm)} mm in pitch`;
}

function signed(error: number): string {
  const text = formatNumber(Number(error.toFixed(3)));
  return text === "0" || text.startsWith("−") ? text : `+${text}`;
}

function dataOf({ size, standard, angle, diameterErrorMm, pitchErrorMm }: Candidate) {
  const { designation, series, diameterMm, pitchMm, tpi } = size;
  return {
    ...{ designation, series, standard, diameterMm, pitchMm: tidy(pitchMm), tpi: tpi ?? null, angle },
    ...{
      diameterErrorMm: Number(diameterErrorMm.toFixed(4)),
      pitchErrorMm: Number(pitchErrorMm.toFixed(4)),
    },
  };
}
