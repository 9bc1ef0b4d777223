/** The web application manifest (W3C, Web Application Manifest) with its icons, by which a site can be installed. */
import { mkdir, readFile, writeFile } from "node:fs/promises";
import { join } from "node:path";
import sharp from "sharp";
import type { Programme } from "../model/programme.ts";

export interface ManifestOptions {
  readonly outDir: string;
  readonly layoutsDir: string;
  readonly programme: Programme;
}

/** The safe zone of a maskable icon is a circle of 0.4 of its width about its middle (W3C, Web Application Manifest, "purpose"): a square within it. */
const safeShare = 0.56;

interface Icon {
  readonly name: string;
  readonly pixels: number;
  readonly purpose: "any" | "maskable";
}

const icons: readonly Icon[] = [
  { name: "icon-192.png", pixels: 192, purpose: "any" },
  { name: "icon-512.png", pixels: 512, purpose: "any" },
  { name: "icon-maskable-512.png", pixels: 512, purpose: "maskable" },
];

/** Writes the manifest, and the icons made from `icon.svg` of the layouts. */
export async function writeManifest({ outDir, layoutsDir, programme }: ManifestOptions): Promise<void> {
  const svg = await readFile(join(layoutsDir, "icon.svg"));
  const paper = colourIn(await readFile(join(layoutsDir, "styles", "tokens.css"), "utf8"), "paper");
  await mkdir(join(outDir, "assets"), { recursive: true });
  await Promise.all(
    icons.map(async (icon) =>
      writeFile(join(outDir, "assets", icon.name), await pictureOf(svg, icon, paper)),
    ),
  );
  const text = JSON.stringify(manifestOf(programme, paper), undefined, 2);
  await writeFile(join(outDir, "manifest.webmanifest"), `${text}\n`);
}

/** Addresses are relative to the manifest, so that the site works below any path. */
export function manifestOf(programme: Programme, paper: string): Record<string, unknown> {
  return {
    name: programme.name,
    short_name: programme.name.length <= 12 ? programme.name : "Bench sheets",
    ...(programme.summary === undefined ? {} : { description: programme.summary }),
    lang: programme.language,
    id: "./",
    start_url: "./index.html",
    scope: "./",
    display: "minimal-ui",
    background_color: paper,
    theme_color: paper,
    icons: [
      { src: "assets/icon.svg", sizes: "any", type: "image/svg+xml", purpose: "any" },
      ...icons.map(({ name, pixels, purpose }) => ({
        ...{ src: `assets/${name}`, sizes: `${pixels}x${pixels}`, type: "image/png", purpose },
      })),
    ],
  };
}

/** The first value of a colour among the tokens. Throws where there is none: a fault of the layouts. */
export function colourIn(tokens: string, name: string): string {
  const value = new RegExp(`--${name}:\\s*(#[0-9a-f]{3,8})`, "i").exec(tokens)?.[1];
  if (value === undefined) throw new Error(`tokens.css names no colour --${name}`);
  return value;
}

async function pictureOf(svg: Buffer, { pixels, purpose }: Icon, paper: string): Promise<Buffer> {
  const inner = purpose === "any" ? pixels : Math.round((pixels * safeShare) / 2) * 2;
  const edge = (pixels - inner) / 2;
  return sharp(svg, { density: 72 * (inner / 32) })
    .resize(inner, inner)
    .extend({ top: edge, bottom: edge, left: edge, right: edge, background: paper })
    .png()
    .toBuffer();
}
