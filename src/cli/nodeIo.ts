import { createReadStream, type PathLike } from 'node:fs';
import { readFile, rename, rm, stat, writeFile } from 'node:fs/promises';
import { createRequire } from 'node:module';
import { dirname, resolve } from 'node:path';
import { read, unread, type Parsed } from '../units/parsed.ts';
import type { Io } from './io.ts';
import { textOf } from './textOf.ts';
import { phrase } from '../phrases/phrase.ts';

/** The most that is read of one file, in bytes: a site of thousands of legs takes a tenth of it. */
export const mostBytes = 32 * 1024 * 1024;

const require = createRequire(import.meta.url);
const fonts = {
  regular: '@expo-google-fonts/barlow/400Regular/Barlow_400Regular.ttf',
  bold: '@expo-google-fonts/barlow/600SemiBold/Barlow_600SemiBold.ttf',
};

const raster = '@resvg/resvg-wasm/index_bg.wasm';

const codeOf = (fault: unknown): string =>
  fault instanceof Error && 'code' in fault ? String(fault.code) : String(fault);

const why: Readonly<Record<string, string>> = {
  ENOENT: phrase`there is no such file: expected a file that can be read`,
  EISDIR: phrase`it is a directory: expected a file`,
  EACCES: phrase`it may not be read or written`,
  EPERM: phrase`it may not be read or written`,
  ENOTDIR: phrase`a part of its path is not a directory`,
  EEXIST: phrase`it is in the way: expected no such file`,
  ENOSPC: phrase`the disk is full`,
  EROFS: phrase`the disk may only be read`,
  ENAMETOOLONG: phrase`its name is too long`,
  ELOOP: phrase`its links lead in a circle`,
};

const said = (path: string, fault: unknown): Parsed<never> => {
  const code = codeOf(fault);
  return unread(`${path}: ${why[code] ?? code}`);
};

const tooLong = (path: string): Parsed<never> =>
  unread(phrase`${path}: it is over ${mostBytes / 1024 / 1024} MB: expected a smaller file`);

const readStream = async (
  path: string,
  source: AsyncIterable<Buffer>,
): Promise<Parsed<Uint8Array>> => {
  const parts: Buffer[] = [];
  let size = 0;
  for await (const part of source) {
    size += part.length;
    if (size > mostBytes) return tooLong(path);
    parts.push(part);
  }
  return read(Buffer.concat(parts));
};

const readBytes = async (path: string): Promise<Parsed<Uint8Array>> => {
  if (path === '-') return readStream(phrase`standard input`, process.stdin);
  try {
    // a stream, since a pipe has no size to ask for
    return await readStream(path, createReadStream(path as PathLike));
  } catch (fault) {
    return said(path, fault);
  }
};

const readText = async (path: string): Promise<Parsed<string>> => {
  const bytes = await readBytes(path);
  return bytes.ok ? textOf(path === '-' ? phrase`standard input` : path, bytes.value) : bytes;
};

const isDirectory = async (path: string): Promise<boolean> => {
  try {
    return (await stat(path)).isDirectory();
  } catch {
    return false;
  }
};

/** Writes beside the target and renames: a reader sees the old file or the new one, never a part. */
const writeWhole = async (path: string, content: string | Uint8Array): Promise<Parsed<string>> => {
  const target = resolve(path);
  const folder = dirname(target);
  if (!(await isDirectory(folder))) {
    return unread(phrase`${path}: there is no directory ${folder} to write it in`);
  }
  if (await isDirectory(target))
    return unread(phrase`${path}: it is a directory: expected a file name`);
  const beside = `${target}.${process.pid}.part`;
  try {
    await writeFile(beside, content, { flag: 'wx' });
    await rename(beside, target);
    return read(path);
  } catch (fault) {
    // what was in the way before is not ours to take away
    if (codeOf(fault) === 'EEXIST') return said(beside, fault);
    await rm(beside, { force: true });
    return codeOf(fault) === 'ENOENT'
      ? unread(phrase`${path}: it cannot be written there: expected a directory that takes files`)
      : said(path, fault);
  }
};

/** The world as it is: files, standard input and output. */
export const nodeIo: Io = {
  readText,
  readBytes,
  writeFile: writeWhole,
  readFont: async (weight) => new Uint8Array(await readFile(require.resolve(fonts[weight]))),
  readRaster: async () => new Uint8Array(await readFile(require.resolve(raster))),
  out: (text) => process.stdout.write(text),
  err: (text) => process.stderr.write(text),
};
