/**
 * A worksheet as the fragment of a link, `#v=2&w=…`: JSON, compressed with a checksum, in base64 that needs no escaping.
 * It stays in the fragment, which no browser sends to a server. Links of version 1 have no checksum, and still open.
 * Source: GZIP with its CRC-32 is RFC 1952, DEFLATE is RFC 1951, base64url is RFC 4648.
 */

/** The most letters of a fragment that is given out: mail and chat programs cut what is longer, some sooner. */
export const LONGEST_LINK = 32_000;

const MOST_UNPACKED = 5_000_000; // bytes: every row full to the last letter, but no small link that fills the memory
const PRESENT = '2';
const COMPRESSIONS = new Map<string, CompressionFormat>([
  ['1', 'deflate-raw'],
  [PRESENT, 'gzip'],
]);
const CHECKSUM_FROM_END = 8; // bytes: the checksum, and behind it the length

/** What a fragment holds: the value it was packed from, or a link that cannot be used. */
export type Unpacked =
  | { readonly kind: 'value'; readonly value: unknown; readonly isChecked: boolean }
  | { readonly kind: 'damaged' }
  | { readonly kind: 'newer' };

type ByteTransform = CompressionStream | DecompressionStream;

async function throughStream(bytes: BlobPart, stream: ByteTransform): Promise<Uint8Array> {
  const chunks: Uint8Array[] = [];
  let length = 0;
  const source = new Blob([bytes]).stream() as ReadableStream<Uint8Array>;
  const reader = source
    .pipeThrough(stream as ReadableWritablePair<Uint8Array, Uint8Array>)
    .getReader();
  for (let part = await reader.read(); !part.done; part = await reader.read()) {
    length += part.value.length;
    if (length > MOST_UNPACKED) throw new RangeError('unpacked text must be at most 5 MB');
    chunks.push(part.value);
  }
  const whole = new Uint8Array(length);
  let at = 0;
  for (const chunk of chunks) {
    whole.set(chunk, at);
    at += chunk.length;
  }
  return whole;
}

function toBase64(bytes: Uint8Array): string {
  const text = Array.from(bytes, (byte) => String.fromCharCode(byte)).join('');
  return btoa(text).replaceAll('+', '-').replaceAll('/', '_').replace(/=+$/, '');
}

function fromBase64(text: string): Uint8Array<ArrayBuffer> {
  const plain = atob(text.replaceAll('-', '+').replaceAll('_', '/'));
  return Uint8Array.from(plain, (letter) => letter.charCodeAt(0));
}

const gzipped = (text: string) => throughStream(text, new CompressionStream('gzip'));

/** The CRC-32 of a text as eight digits to the base 16, out of what the browser's own compression ends with. */
export async function checksum(text: string): Promise<string> {
  const { buffer, length } = await gzipped(text);
  const value = new DataView(buffer).getUint32(length - CHECKSUM_FROM_END, true);
  return value.toString(16).padStart(8, '0');
}

/** The fragment, without `#`, that holds `value`. */
export async function packed(value: unknown): Promise<string> {
  return `v=${PRESENT}&w=${toBase64(await gzipped(JSON.stringify(value)))}`;
}

/** What a fragment (with or without `#`) holds. Never throws. */
export async function unpacked(fragment: string): Promise<Unpacked> {
  const parts = new URLSearchParams(fragment.replace(/^#/, ''));
  const [version, body] = [parts.get('v'), parts.get('w')];
  if (/^\d+$/.test(version ?? '') && Number(version) > Number(PRESENT)) return { kind: 'newer' };
  const compression = COMPRESSIONS.get(version ?? '');
  if (!compression || body === null) return { kind: 'damaged' };
  try {
    const bytes = await throughStream(fromBase64(body), new DecompressionStream(compression));
    const value: unknown = JSON.parse(new TextDecoder().decode(bytes));
    return { kind: 'value', value, isChecked: version === PRESENT };
  } catch {
    return { kind: 'damaged' };
  }
}
