/** Photographs for tests, with what a telephone writes into them: where, when, by what and by whom. */
import sharp from "sharp";

/** What must not be found in any file of a site, as bytes of text. */
export const traces = [
  "GPS",
  "Exif",
  "http://ns.adobe.com/xap",
  "photoshop:City",
  "Invented Town",
  "Phone of Invention",
  "tEXt",
  "iTXt",
  "secret words",
  "8BIM",
  "2026:11:28",
];

const xmp = `<?xpacket begin="" id="W5M0MpCehiHzreSzNTczkc9d"?><x:xmpmeta xmlns:x="adobe:ns:meta/"><rdf:RDF xmlns:rdf="http://www.w3.org/1999/02/22-rdf-syntax-ns#"><rdf:Description xmlns:exif="http://ns.adobe.com/exif/1.0/" xmlns:photoshop="http://ns.adobe.com/photoshop/1.0/" exif:GPSLatitude="51,28.6N" exif:GPSLongitude="0,0.0W" photoshop:City="Invented Town"/></rdf:RDF></x:xmpmeta><?xpacket end="w"?>`;

/** Exif 2.32: latitude and longitude as degrees, minutes and seconds. 51° 28' 40" N is on nobody's doorstep here. */
const exif = {
  IFD0: { Make: "Invented", Model: "Phone of Invention", DateTime: "2026:11:28 09:00:00" },
  IFD3: {
    GPSLatitudeRef: "N",
    GPSLatitude: "51/1 28/1 40/1",
    GPSLongitudeRef: "W",
    GPSLongitude: "0/1 0/1 5/1",
  },
};

/** Left half red, right half blue, so that one sees which way it is turned. */
export async function photograph(
  kind: "jpeg" | "png" | "webp",
  {
    width = 1200,
    height = 800,
    orientation = 1,
  }: { width?: number; height?: number; orientation?: number } = {},
): Promise<Buffer> {
  const half = await sharp({
    create: { width: Math.ceil(width / 2), height, channels: 3, background: "#0000ff" },
  })
    .png()
    .toBuffer();
  return sharp({ create: { width, height, channels: 3, background: "#ff0000" } })
    .composite([{ input: half, left: Math.floor(width / 2), top: 0 }])
    [kind]()
    .withExif(exif)
    .withXmp(xmp)
    .withMetadata({ orientation })
    .toBuffer();
}

/** PNG, ISO/IEC 15948, 11.3.4.3: a text chunk behind the header chunk. */
export function withText(png: Buffer, words: string): Buffer {
  const data = Buffer.from(`tEXtComment\0${words}`, "latin1");
  const length = Buffer.alloc(4);
  length.writeUInt32BE(data.length - 4);
  const check = Buffer.alloc(4);
  check.writeUInt32BE(crc32(data));
  const header = 8 + 25;
  return Buffer.concat([png.subarray(0, header), length, data, check, png.subarray(header)]);
}

/** ISO/IEC 15948, 5.5 and annex D. */
function crc32(bytes: Buffer): number {
  let crc = 0xffffffff;
  for (const byte of bytes) {
    crc ^= byte;
    for (let bit = 0; bit < 8; bit++) crc = crc & 1 ? (crc >>> 1) ^ 0xedb88320 : crc >>> 1;
  }
  return (crc ^ 0xffffffff) >>> 0;
}

/** Which of the traces stand in the bytes. */
export const tracesIn = (bytes: Uint8Array): string[] => {
  const text = Buffer.from(bytes).toString("latin1");
  return [...traces, ...degrees].filter((trace) => text.includes(trace));
};

/** 51/1 28/1 40/1 as EXIF has it, in either order of bytes. */
const degrees = [false, true].map((isLittle) => {
  const view = new DataView(new ArrayBuffer(24));
  for (const [at, value] of [51, 1, 28, 1, 40, 1].entries()) view.setUint32(at * 4, value, isLittle);
  return Buffer.from(view.buffer).toString("latin1");
});
