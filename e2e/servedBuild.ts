import { cpSync, mkdtempSync, readdirSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { createServer } from 'node:http';
import type { AddressInfo } from 'node:net';
import { tmpdir } from 'node:os';
import { extname, join } from 'node:path';
import { partHeaders } from '../src/screens/offline/contentPolicy.ts';

const kinds: Readonly<Record<string, string>> = {
  '.html': 'text/html',
  '.js': 'text/javascript',
  '.mjs': 'text/javascript',
  '.css': 'text/css',
  '.svg': 'image/svg+xml',
  '.wasm': 'application/wasm',
  '.webmanifest': 'application/manifest+json',
};

/** A server of one built folder that can be given another, and that can go away. */
export interface Served {
  readonly address: string;
  readonly show: (folder: string) => void;
  /** What was asked for and is not in the folder. */
  readonly missing: readonly string[];
  readonly stop: () => Promise<void>;
}

/** Serves a build as `npm start` does: the same headers, and the bare address sent on to a sample. */
export const serveBuild = async (first: string): Promise<Served> => {
  let folder = first;
  const missing: string[] = [];
  const server = createServer((request, response) => {
    const path = new URL(request.url ?? '/', 'http://localhost').pathname;
    if (request.url === '/') {
      response.writeHead(302, { location: '/?sample=back-yard' }).end();
      return;
    }
    const name = path === '/' ? 'index.html' : path.slice(1);
    try {
      const bytes = readFileSync(join(folder, name));
      const kind = kinds[extname(name)] ?? 'application/octet-stream';
      response.writeHead(200, {
        ...partHeaders,
        'Content-Type': kind,
        'Cache-Control': 'no-cache',
      });
      response.end(bytes);
    } catch {
      missing.push(name);
      response.writeHead(404).end();
    }
  });
  await new Promise<void>((up) => server.listen(0, 'localhost', up));
  const { port } = server.address() as AddressInfo;
  return {
    address: `http://localhost:${port}`,
    show: (next) => {
      folder = next;
    },
    missing,
    stop: () =>
      new Promise((down) => {
        server.close(() => down());
        server.closeAllConnections();
      }),
  };
};

/** A later build of the same program, in a folder of its own that `remove` takes away. */
export interface LaterBuild {
  readonly folder: string;
  readonly remove: () => void;
}

/** The mark by which the page of the later build is told. */
export const laterMark = 'meta[name="build"][content="later"]';

/**
 * A build that has another page and lacks a part: as a later build whose `gone` has another name does, a
 * server of it has the part of that name no more.
 */
export const laterBuild = (built: string, gone: RegExp): LaterBuild => {
  const folder = mkdtempSync(join(tmpdir(), 'lathline-'));
  cpSync(built, folder, { recursive: true });
  const part = readdirSync(join(folder, 'assets')).find((name) => gone.test(name));
  if (part === undefined) throw new Error(`expected a part like ${gone} in ${built}`);
  rmSync(join(folder, 'assets', part));
  const change = (name: string, edit: (text: string) => string): void => {
    const before = readFileSync(join(folder, name), 'utf8');
    const after = edit(before);
    if (after === before) throw new Error(`expected to change ${name}`);
    writeFileSync(join(folder, name), after);
  };
  change('index.html', (text) =>
    text.replace('</head>', '<meta name="build" content="later" /></head>'),
  );
  change('service-worker.js', (text) =>
    text.replace(`"./assets/${part}",`, '').replace(/"version":"\w+"/, '"version":"later"'),
  );
  return { folder, remove: () => rmSync(folder, { recursive: true }) };
};
