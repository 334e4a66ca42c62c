/** The golden looks as one plain script that sets `golden`: for a Node that reads no TypeScript, and for a browser. */
import { fileURLToPath } from 'node:url';
import { rolldown } from 'rolldown';

/** Its text. */
export async function bundledGolden(): Promise<string> {
  const input = fileURLToPath(new URL('./golden-looks.ts', import.meta.url));
  const bundle = await rolldown({ input });
  const { output } = await bundle.generate({ format: 'iife', name: 'golden' });
  await bundle.close();
  return output[0].code;
}
