import { crc32, deflateSync } from 'node:zlib';
import type { Page } from '@playwright/test';

/** A file as it is chosen or dropped. */
export interface MadeFile {
  readonly name: string;
  readonly mimeType: string;
  readonly buffer: Buffer;
}

const chunk = (kind: string, data: Buffer): Buffer => {
  const body = Buffer.concat([Buffer.from(kind, 'latin1'), data]);
  const [length, check] = [Buffer.alloc(4), Buffer.alloc(4)];
  length.writeUInt32BE(data.length);
  check.writeUInt32BE(crc32(body));
  return Buffer.concat([length, body, check]);
};

const sign = Buffer.from([0x89, 0x50, 0x4e, 0x47, 0x0d, 0x0a, 0x1a, 0x0a]);

const head = (width: number, height: number): Buffer => {
  const data = Buffer.alloc(13);
  data.writeUInt32BE(width, 0);
  data.writeUInt32BE(height, 4);
  data.set([8, 2, 0, 0, 0], 8);
  return chunk('IHDR', data);
};

type Paint = (x: number, y: number) => readonly [red: number, green: number, blue: number];

/** A PNG of three bytes a pixel, painted pixel by pixel (W3C PNG). */
export const pngFile = (
  name: string,
  [width, height]: readonly [number, number],
  paint: Paint,
): MadeFile => {
  const rows = Buffer.alloc(height * (1 + width * 3));
  for (let y = 0; y < height; y += 1) {
    for (let x = 0; x < width; x += 1) rows.set(paint(x, y), y * (1 + width * 3) + 1 + x * 3);
  }
  const parts = [
    head(width, height),
    chunk('IDAT', deflateSync(rows)),
    chunk('IEND', Buffer.alloc(0)),
  ];
  return { name, mimeType: 'image/png', buffer: Buffer.concat([sign, ...parts]) };
};

/** A PNG of a few hundred bytes that says it is so large. */
export const bombFile = (name: string, width: number, height: number): MadeFile => {
  const little = chunk('IDAT', deflateSync(Buffer.alloc(4000)));
  const parts = [head(width, height), little, chunk('IEND', Buffer.alloc(0))];
  return { name, mimeType: 'image/png', buffer: Buffer.concat([sign, ...parts]) };
};

/**
 * A PDF of pages of 8-1/2 by 11 in, each with one line of text, a filled square, and `more` drawn over
 * them (ISO 32000-1).
 */
export const pdfFile = (name: string, words: readonly string[], more = ''): MadeFile => {
  const objects = [
    '<< /Type /Catalog /Pages 2 0 R >>',
    `<< /Type /Pages /Count ${words.length} /Kids [${words.map((_, n) => `${4 + 2 * n} 0 R`).join(' ')}] >>`,
    '<< /Type /Font /Subtype /Type1 /BaseFont /Helvetica >>',
    ...words.flatMap((text, n) => {
      const drawn = `BT /F1 36 Tf 72 700 Td (${text}) Tj ET 1 0 0 rg 100 100 200 200 re f ${more}`;
      return [
        `<< /Type /Page /Parent 2 0 R /MediaBox [0 0 612 792] /Contents ${5 + 2 * n} 0 R /Resources << /Font << /F1 3 0 R >> >> >>`,
        `<< /Length ${drawn.length} >>\nstream\n${drawn}\nendstream`,
      ];
    }),
  ];
  let text = '%PDF-1.4\n';
  const places = objects.map((body, n) => {
    const at = text.length;
    text += `${n + 1} 0 obj\n${body}\nendobj\n`;
    return String(at).padStart(10, '0');
  });
  const table = text.length;
  text += `xref\n0 ${objects.length + 1}\n0000000000 65535 f \n`;
  text += places.map((at) => `${at} 00000 n \n`).join('');
  text += `trailer\n<< /Size ${objects.length + 1} /Root 1 0 R >>\nstartxref\n${table}\n%%EOF\n`;
  return { name, mimeType: 'application/pdf', buffer: Buffer.from(text, 'latin1') };
};

/** An Exif segment that says nothing but how a photo is turned (CIPA DC-008; TIFF 6.0). */
const exifSegment = (orientation: number): Buffer =>
  Buffer.concat([
    Buffer.from([0xff, 0xe1, 0, 34]),
    Buffer.from('Exif\0\0MM\0*\0\0\0\b\0\u0001', 'latin1'),
    Buffer.from([0x01, 0x12, 0, 3, 0, 0, 0, 1, 0, orientation, 0, 0, 0, 0, 0, 0]),
  ]);

/**
 * A photo of so many pixels made by the browser itself: sky over ground with a grain, so that its file
 * is as large as a camera's. With an `orientation` it says that it is to be turned.
 */
export const photoFile = async (
  page: Page,
  {
    name,
    width,
    height,
    orientation,
    type = 'image/jpeg',
  }: {
    readonly name: string;
    readonly width: number;
    readonly height: number;
    readonly orientation?: number;
    readonly type?: 'image/jpeg' | 'image/webp';
  },
): Promise<MadeFile> => {
  const text = await page.evaluate(
    async ([across, up, as]) => {
      const canvas = new OffscreenCanvas(across, up);
      const context = canvas.getContext('2d');
      if (context === null) throw new Error('no canvas');
      const grain = new OffscreenCanvas(256, 256);
      const fine = grain.getContext('2d');
      if (fine === null) throw new Error('no canvas');
      const dots = fine.createImageData(256, 256);
      for (let n = 0; n < dots.data.length; n += 1) dots.data[n] = (n * 2_654_435_761) % 251;
      fine.putImageData(dots, 0, 0);
      context.fillStyle = '#88aadd';
      context.fillRect(0, 0, across, up / 4);
      context.fillStyle = '#557733';
      context.fillRect(0, up / 4, across, (up * 3) / 4);
      context.globalAlpha = 0.35;
      const pattern = context.createPattern(grain, 'repeat');
      if (pattern !== null) context.fillStyle = pattern;
      context.fillRect(0, 0, across, up);
      const blob = await canvas.convertToBlob({ type: as, quality: 0.9 });
      return new Promise<string>((done) => {
        const reader = new FileReader();
        reader.addEventListener('load', () => done(String(reader.result).split(',')[1] ?? ''));
        reader.readAsDataURL(blob);
      });
    },
    [width, height, type] as const,
  );
  const made = Buffer.from(text, 'base64');
  const turned =
    orientation === undefined
      ? made
      : Buffer.concat([made.subarray(0, 2), exifSegment(orientation), made.subarray(2)]);
  return { name, mimeType: type, buffer: turned };
};

/** Drops a file on the program, as a hand would from another window. */
export const dropFile = async (page: Page, { name, mimeType, buffer }: MadeFile): Promise<void> => {
  const transfer = await page.evaluateHandle(
    ([file, type, base64]) => {
      const bytes = Uint8Array.from(atob(base64), (letter) => letter.charCodeAt(0));
      const carried = new DataTransfer();
      carried.items.add(new File([bytes], file, { type }));
      return carried;
    },
    [name, mimeType, buffer.toString('base64')] as const,
  );
  await page.dispatchEvent('body', 'drop', { dataTransfer: transfer });
};
