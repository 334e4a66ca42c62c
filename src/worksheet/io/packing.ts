/**
 * A worksheet as the fragment of a link, `#v=1&w=…`: JSON, deflated, in base64 that needs no escaping. It stays in
 * the fragment, which no browser sends to a server.
 * Source: DEFLATE is RFC 1951, base64url is RFC 4648.
 */

const MOST_UNPACKED = 200_000; // bytes: a small link must not grow into a large memory

/** What a fragment holds: the value it was packed from, nothing, or a link that cannot be used. */
export type Unpacked =
  | { readonly kind: 'value'; readonly value: unknown }
  | { readonly kind: 'none' }
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
    if (length > MOST_UNPACKED) throw new RangeError('unpacked text must be at most 200 kB');
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

/** The fragment, without `#`, that holds `value`. */
export async function packed(value: unknown): Promise<string> {
  const bytes = await throughStream(JSON.stringify(value), new CompressionStream('deflate-raw'));
  return `v=1&w=${toBase64(bytes)}`;
}

/** What a fragment (with or without `#`) holds. Never throws. */
export async function unpacked(fragment: string): Promise<Unpacked> {
  const parts = new URLSearchParams(fragment.replace(/^#/, ''));
  const [version, body] = [parts.get('v'), parts.get('w')];
  if (version === null && body === null) return { kind: 'none' };
  if (version !== null && /^\d+$/.test(version) && Number(version) > 1) return { kind: 'newer' };
  if (version !== '1' || body === null) return { kind: 'damaged' };
  try {
    const bytes = await throughStream(fromBase64(body), new DecompressionStream('deflate-raw'));
    return { kind: 'value', value: JSON.parse(new TextDecoder().decode(bytes)) };
  } catch {
    return { kind: 'damaged' };
  }
}
