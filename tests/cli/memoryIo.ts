import type { Io } from '../../src/cli/io.ts';
import { nodeIo } from '../../src/cli/nodeIo.ts';
import { read, unread } from '../../src/units/parsed.ts';

/** A world in memory: files by path, what was printed. */
export interface MemoryIo {
  readonly io: Io;
  readonly files: Map<string, string | Uint8Array>;
  readonly printed: { out: string; err: string };
}

/** Only the fonts and what rasters come from the disk. */
export const memoryIo = (files: Readonly<Record<string, string | Uint8Array>> = {}): MemoryIo => {
  const kept = new Map<string, string | Uint8Array>(Object.entries(files));
  const printed = { out: '', err: '' };
  const io: Io = {
    readText: async (path) => {
      const content = kept.get(path);
      return typeof content === 'string' ? read(content) : unread(`${path}: no such file`);
    },
    readBytes: async (path) => {
      const content = kept.get(path);
      if (content === undefined) return unread(`${path}: no such file`);
      return read(typeof content === 'string' ? new TextEncoder().encode(content) : content);
    },
    writeFile: async (path, content) => {
      kept.set(path, content);
      return read(path);
    },
    readFont: nodeIo.readFont,
    readRaster: nodeIo.readRaster,
    out: (text) => {
      printed.out += text;
    },
    err: (text) => {
      printed.err += text;
    },
  };
  return { io, files: kept, printed };
};
