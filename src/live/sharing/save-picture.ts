/** Hands the reader a picture as a file. */
import { saveFile } from '../saving.ts';
import { type PictureParts, pngOf, svgOf } from './picture.ts';
import type { PictureKind } from './shareable.ts';

/** Draws a picture and lets the browser save it under a name. @throws where it cannot be drawn */
export async function savePicture(
  name: string,
  kind: PictureKind,
  parts: PictureParts,
): Promise<void> {
  const drawn = await svgOf(parts);
  const type = 'image/svg+xml';
  const content = kind === 'svg' ? new Blob([drawn.text], { type }) : await pngOf(drawn);
  saveFile(document, `${name}.${kind}`, content);
}
