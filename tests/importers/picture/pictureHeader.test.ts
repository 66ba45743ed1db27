import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { pictureHeader } from '../../../src/importers/picture/pictureHeader.ts';
import { pictureKind } from '../../../src/importers/picture/pictureKind.ts';

const ascii = (text: string): number[] => [...text].map((letter) => letter.charCodeAt(0));
const big = (value: number, bytes: number): number[] =>
  Array.from({ length: bytes }, (_, n) => Math.floor(value / 256 ** (bytes - 1 - n)) % 256);
const little = (value: number, bytes: number): number[] => big(value, bytes).toReversed();

// the heads of files by hand, byte for byte as the standards have them
const png = (width: number, height: number): number[] => [
  0x89,
  ...ascii('PNG\r\n\x1a\n'),
  ...big(13, 4),
  ...ascii('IHDR'),
  ...big(width, 4),
  ...big(height, 4),
  8,
  2,
  0,
  0,
  0,
];
const segment = (marker: number, body: readonly number[]): number[] => [
  0xff,
  marker,
  ...big(body.length + 2, 2),
  ...body,
];
const sof = (marker: number, width: number, height: number): number[] =>
  segment(marker, [8, ...big(height, 2), ...big(width, 2), 1, 1, 0x11, 0]);
const jpeg = (...segments: readonly number[][]): number[] => [0xff, 0xd8, ...segments.flat()];
const webp = (kind: string, body: readonly number[]): number[] => [
  ...ascii('RIFF'),
  ...little(body.length + 12, 4),
  ...ascii('WEBP'),
  ...ascii(kind),
  ...little(body.length, 4),
  ...body,
];

const headOf = (bytes: readonly number[]) => pictureHeader(new Uint8Array(bytes));
const size = (type: string, width: number, height: number, notes = false) => ({
  ok: true,
  value: { type, width, height, notes },
});

describe('the head of a picture', () => {
  it('[I20] of a PNG, a JPEG and each sort of WebP has its size', () => {
    expect(headOf(png(4032, 3024))).toEqual(size('image/png', 4032, 3024));
    expect(headOf(jpeg(sof(0xc0, 4032, 3024)))).toEqual(size('image/jpeg', 4032, 3024));
    const lossy = [0x30, 1, 0, 0x9d, 1, 0x2a, ...little(640, 2), ...little(480 | 0x4000, 2)];
    expect(headOf(webp('VP8 ', lossy))).toEqual(size('image/webp', 640, 480));
    const lossless = [0x2f, ...little(639 + 479 * 2 ** 14, 4), 0, 0, 0, 0, 0];
    expect(headOf(webp('VP8L', lossless))).toEqual(size('image/webp', 640, 480));
    const more = [0x08, 0, 0, 0, ...little(5999, 3), ...little(3999, 3)];
    expect(headOf(webp('VP8X', more))).toEqual(size('image/webp', 6000, 4000, true));
  });

  it('[I20] of a JPEG is found behind all that comes before it, and says whether there are notes', () => {
    const before = [
      segment(0xe0, ascii('JFIF\0')),
      segment(0xe1, [...ascii('Exif\0\0'), ...Array.from({ length: 9000 }, () => 0xff)]),
      segment(
        0xdb,
        Array.from({ length: 65 }, () => 1),
      ),
      segment(
        0xc4,
        Array.from({ length: 20 }, () => 1),
      ),
      [0xff, 0xff],
    ];
    for (const marker of [0xc0, 0xc1, 0xc2, 0xc9, 0xcf]) {
      expect(headOf(jpeg(...before, sof(marker, 8000, 5000)))).toEqual(
        size('image/jpeg', 8000, 5000, true),
      );
    }
    const chunk = [...big(3, 4), ...ascii('tEXt'), 1, 2, 3, 0, 0, 0, 0];
    const whole = [...png(40, 30), 0, 0, 0, 0];
    expect(headOf([...whole, ...chunk])).toEqual(size('image/png', 40, 30, true));
    expect(headOf(whole)).toEqual(size('image/png', 40, 30, false));
    const cut = headOf(jpeg(...before));
    expect(cut).toEqual({
      ok: false,
      reason: 'the picture is cut off or damaged: its head has no size',
    });
  });

  it('[I21] of one too large to be decoded is refused in one line, whatever it holds', () => {
    expect(headOf(png(60_000, 60_000))).toEqual({
      ok: false,
      reason: 'expected at most 100 megapixels, found 60000 × 60000 (3,600 megapixels)',
    });
    expect(headOf(jpeg(sof(0xc0, 65_535, 65_535)))).toMatchObject({ ok: false });
    expect(headOf(png(40_000, 2))).toEqual({
      ok: false,
      reason: 'expected sides of at most 32768 pixels, found 40000 × 2',
    });
    expect(headOf(png(4_294_967_295, 4_294_967_295))).toMatchObject({ ok: false });
    expect(headOf(png(10_000, 10_000))).toEqual(size('image/png', 10_000, 10_000));
    expect(headOf(png(0, 7))).toEqual({
      ok: false,
      reason: 'the picture is damaged: it has no pixels',
    });
  });

  it('[I20] goes by the bytes: a PDF, a GIF, text and nothing are no pictures', () => {
    const other = 'expected a JPEG, PNG or WebP picture, found something else';
    for (const text of ['%PDF-1.7\n', 'GIF89a', '<svg/>', '', 'RIFFxxxxWAVE']) {
      expect(headOf(ascii(text))).toEqual({ ok: false, reason: other });
    }
    const kindOf = (bytes: number[]) => pictureKind(new Uint8Array(bytes));
    expect(kindOf(ascii('%PDF-1.7'))).toBe('application/pdf');
    expect(kindOf([...ascii('\r\n junk before it\n'), ...ascii('%PDF-1.4')])).toBe(
      'application/pdf',
    );
    expect(kindOf([...Array.from({ length: 2000 }, () => 32), ...ascii('%PDF-')])).toBeNull();
    expect(kindOf(png(1, 1))).toBe('image/png');
  });

  it('[I20] any bytes, and any good head that is cut or changed anywhere, give a size or one line', () => {
    const good = [
      png(400, 300),
      jpeg(segment(0xe0, ascii('JFIF\0')), sof(0xc2, 400, 300)),
      webp('VP8X', [0, 0, 0, 0, ...little(399, 3), ...little(299, 3)]),
    ];
    const changed = fc
      .tuple(fc.constantFrom(...good), fc.nat(60), fc.nat(255), fc.nat(60))
      .map(([bytes, at, value, cut]) =>
        bytes.map((byte, n) => (n === at ? value : byte)).slice(0, bytes.length - (cut % 40)),
      );
    fc.assert(
      fc.property(fc.oneof(fc.uint8Array({ maxLength: 200 }), changed), (bytes) => {
        const head = pictureHeader(new Uint8Array(bytes));
        if (!head.ok) expect(head.reason.split('\n')).toHaveLength(1);
        else expect(head.value.width * head.value.height).toBeLessThanOrEqual(1e8);
      }),
      { numRuns: 2000 },
    );
  });
});
