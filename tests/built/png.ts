/** Reads a picture back, as PNG has it (ISO/IEC 15948): eight bits for each of red, green, blue and cover, not interlaced. */
import { inflateSync } from 'node:zlib';

export interface Picture {
  readonly width: number;
  readonly height: number;
  /** Four bytes for each pixel, row by row. */
  readonly pixels: Uint8Array;
}

const SIGNATURE = '89504e470d0a1a0a';
const BYTES = 4; // of a pixel

/** What the standard's fourth filter foretells of a byte from those beside, above and across. */
function foretold(left: number, up: number, across: number): number {
  const guess = left + up - across;
  const toLeft = Math.abs(guess - left);
  const toUp = Math.abs(guess - up);
  const toAcross = Math.abs(guess - across);
  if (toLeft <= toUp && toLeft <= toAcross) return left;
  return toUp <= toAcross ? up : across;
}

function added(filter: number, left: number, up: number, across: number): number {
  if (filter === 0) return 0;
  if (filter === 1) return left;
  if (filter === 2) return up;
  return filter === 3 ? (left + up) >> 1 : foretold(left, up, across);
}

/** The picture in a file. @throws where it is another kind of file */
export function pictureOf(file: Buffer): Picture {
  const [depth, colors, interlace] = [file[24], file[25], file[28]];
  if (file.toString('hex', 0, 8) !== SIGNATURE || `${depth} ${colors} ${interlace}` !== '8 6 0')
    throw new RangeError('file must be a plain PNG');
  const [width, height] = [file.readUInt32BE(16), file.readUInt32BE(20)];
  const parts: Buffer[] = [];
  for (let at = 8; at < file.length; at += 12 + file.readUInt32BE(at))
    if (file.toString('latin1', at + 4, at + 8) === 'IDAT')
      parts.push(file.subarray(at + 8, at + 8 + file.readUInt32BE(at)));
  const rows = inflateSync(Buffer.concat(parts));
  const [line, pixels] = [BYTES * width, new Uint8Array(BYTES * width * height)];
  for (let y = 0; y < height; y += 1) {
    const filter = rows[y * (line + 1)] ?? 0;
    for (let x = 0; x < line; x += 1) {
      const at = y * line + x;
      const left = x < BYTES ? 0 : (pixels[at - BYTES] ?? 0);
      const up = y === 0 ? 0 : (pixels[at - line] ?? 0);
      const across = x < BYTES || y === 0 ? 0 : (pixels[at - line - BYTES] ?? 0);
      pixels[at] = (rows[y * (line + 1) + 1 + x] ?? 0) + added(filter, left, up, across);
    }
  }
  return { width, height, pixels };
}
