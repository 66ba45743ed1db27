import { execFileSync } from 'node:child_process';
import { mkdtempSync, readFileSync, readdirSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { findTool } from '../../findTool.ts';

/** Gives a PDF to a program as a file, in a folder of its own that is gone afterwards. */
const asFile = <T>(bytes: Uint8Array, deed: (file: string, folder: string) => T): T => {
  const folder = mkdtempSync(join(tmpdir(), 'pdf-'));
  try {
    const file = join(folder, 'in.pdf');
    writeFileSync(file, bytes);
    return deed(file, folder);
  } finally {
    rmSync(folder, { recursive: true });
  }
};

const called = (tool: string, debian: string, args: readonly string[]): string =>
  execFileSync(findTool(tool, debian), args, {
    encoding: 'utf8',
    stdio: ['ignore', 'pipe', 'pipe'],
  });

const poppler = (tool: string, args: readonly string[]): string =>
  called(tool, 'poppler-utils', args);

/** The text of each page in the order in which it is painted, as poppler reads it. */
export const popplerPages = (bytes: Uint8Array): string[] =>
  asFile(bytes, (file) => poppler('pdftotext', ['-raw', file, '-']))
    .split('\f')
    .slice(0, -1);

/** What poppler says of the fonts of a PDF: a line each of the table that it prints. */
export const popplerFonts = (bytes: Uint8Array): string[] =>
  asFile(bytes, (file) => poppler('pdffonts', [file]))
    .trim()
    .split('\n')
    .slice(2);

/** What poppler tells of a PDF by the words before the colon. */
export const popplerInfo = (bytes: Uint8Array): Record<string, string> =>
  Object.fromEntries(
    asFile(bytes, (file) => poppler('pdfinfo', [file]))
      .split('\n')
      .map((line) => [line.split(':')[0] ?? '', line.replace(/^[^:]*: */, '')]),
  );

/** The structure of a PDF with its texts, as poppler finds them. */
export const popplerStructure = (bytes: Uint8Array): string =>
  asFile(bytes, (file) => poppler('pdfinfo', ['-struct-text', file]));

/** The files that poppler takes out of a PDF, by name. */
export const popplerFiles = (bytes: Uint8Array): Record<string, string> =>
  asFile(bytes, (file, folder) => {
    const out = mkdtempSync(join(folder, 'out-'));
    poppler('pdfdetach', ['-saveall', '-o', out, file]);
    return Object.fromEntries(
      readdirSync(out).map((name) => [name, readFileSync(join(out, name), 'utf8')]),
    );
  });

/** What `qpdf --check` says; throws with its words where it finds anything amiss. */
export const qpdfCheck = (bytes: Uint8Array): string =>
  asFile(bytes, (file) => called('qpdf', 'qpdf', ['--check', file]));

/** A PDF as qpdf writes it anew by some options. */
export const byQpdf = (bytes: Uint8Array, options: readonly string[]): Uint8Array =>
  asFile(bytes, (file, folder) => {
    const out = join(folder, 'out.pdf');
    called('qpdf', 'qpdf', [file, ...options, out]);
    return new Uint8Array(readFileSync(out));
  });
