import { existsSync, readFileSync, readdirSync } from 'node:fs';
import { join, posix, relative, sep } from 'node:path';
import ts from 'typescript';
import { describe, expect, it } from 'vitest';

/** What each folder of src/ may import from src/. Its own files always; nothing else. */
const pure = ['phrases', 'units', 'geometry', 'site', 'trade', 'engine', 'drawing'];
const ladder: Record<string, readonly string[]> = {
  phrases: [],
  units: ['phrases'],
  geometry: ['phrases', 'units'],
  site: ['phrases', 'units', 'geometry'],
  trade: ['phrases', 'units'],
  engine: ['phrases', 'units', 'geometry', 'site', 'trade'],
  drawing: ['phrases', 'units', 'geometry', 'site', 'trade', 'engine'],
  exporters: pure,
  importers: ['phrases', 'units', 'geometry', 'site', 'exporters'],
  store: ['phrases', 'units', 'geometry', 'site', 'trade', 'engine'],
  editor: [...pure, 'store'],
  canvas: [...pure, 'store', 'editor'],
  screens: [...pure, 'exporters', 'importers', 'store', 'editor', 'canvas'],
  cli: [...pure, 'exporters', 'importers'],
};

/** The folders that may import each third-party library. */
const doors: Record<string, readonly string[]> = {
  'robust-predicates': ['geometry'],
  proj4: ['geometry'],
  zod: ['site'],
  'fractional-indexing': ['site'],
  jspdf: ['exporters'],
  'pdf-lib': ['exporters', 'importers'],
  fflate: ['exporters'],
  '@tarikjabiri/dxf': ['exporters'],
  '@resvg/resvg-wasm': ['exporters', 'screens', 'cli'],
  dxf: ['importers'],
  zustand: ['store'],
  idb: ['store'],
  react: ['canvas', 'screens'],
  'react-dom': ['screens'],
  '@expo-google-fonts/barlow': ['screens', 'cli'],
  '@fontsource/barlow': ['screens'],
  'pdfjs-dist': ['screens'],
  '@noble/hashes': ['screens'],
  fontkit: ['cli'],
  node: ['cli'],
};

const maxLines = 400;
const top = join(import.meta.dirname, '..');
const files = ['src', 'tests', 'e2e'].flatMap((folder) =>
  readdirSync(join(top, folder), { recursive: true, withFileTypes: true })
    .filter((entry) => entry.isFile() && /\.(ts|tsx|css)$/.test(entry.name))
    .map((entry) => relative(top, join(entry.parentPath, entry.name)).split(sep).join('/')),
);

const importsOf = (file: string): string[] => {
  const text = readFileSync(join(top, file), 'utf8');
  return ts.preProcessFile(text, true, true).importedFiles.map((found) => found.fileName);
};

const libraryOf = (name: string): string => {
  if (name.startsWith('node:')) return 'node';
  return name
    .split('/')
    .slice(0, name.startsWith('@') ? 2 : 1)
    .join('/');
};

/** Every breach of the ladder or a door by one file of src/, as "file imports what". */
const breaches = (file: string, imports: readonly string[]): string[] => {
  const folder = file.split('/')[1] ?? '';
  return imports
    .filter((name) => {
      if (!name.startsWith('.')) return !doors[libraryOf(name)]?.includes(folder);
      const target = posix.join(posix.dirname(file), name);
      if (target.startsWith('sample-sites/')) return folder !== 'screens';
      const home = target.split('/')[1] ?? '';
      return home !== folder && !ladder[folder]?.includes(home);
    })
    .map((name) => `${file} imports ${name}`);
};

describe('the ladder', () => {
  const code = files.filter((file) => file.startsWith('src/') && /\.tsx?$/.test(file));

  it('every folder of src/ has a rung', () => {
    const folders = [...new Set(code.map((file) => file.split('/')[1] ?? ''))];
    expect(folders.filter((folder) => !(folder in ladder))).toEqual([]);
    expect(code.length).toBeGreaterThan(0);
  });

  it('no file imports upwards or through another folder’s door', () => {
    expect(code.flatMap((file) => breaches(file, importsOf(file)))).toEqual([]);
  });

  it('catches a planted breach of each sort', () => {
    expect(breaches('src/engine/bad.ts', ['../store/siteStore.ts', 'idb', 'node:fs'])).toEqual([
      'src/engine/bad.ts imports ../store/siteStore.ts',
      'src/engine/bad.ts imports idb',
      'src/engine/bad.ts imports node:fs',
    ]);
    expect(breaches('src/engine/good.ts', ['../units/length.ts', './post.ts'])).toEqual([]);
  });

  it(`no file is over ${maxLines} lines`, () => {
    const linesOf = (file: string) => readFileSync(join(top, file), 'utf8').split('\n').length - 1;
    expect(files.filter((file) => linesOf(file) > maxLines)).toEqual([]);
  });

  it('there are no barrels and no drawers for odds and ends', () => {
    const odd = /(^|\/)(index\.tsx?|utils?|helpers?|common|misc|manager|service)(\.|\/)/i;
    expect(files.filter((file) => odd.test(file))).toEqual([]);
  });
});

describe('rules with ids', () => {
  const tests = files
    .filter((file) => /\.(test|spec)\.tsx?$/.test(file))
    .map((file) => readFileSync(join(top, file), 'utf8'))
    .join('\n');
  const rulesOf = (folder: string): string[] => {
    const readme = join(top, 'src', folder, 'README.md');
    if (!existsSync(readme)) return [];
    const text = readFileSync(readme, 'utf8');
    return [...text.matchAll(/^- \*\*([A-Z]+\d+)\*\*/gm)].map((match) => match[1] ?? '');
  };

  it('every rule of a folder’s README is quoted by a test', () => {
    const unquoted = Object.keys(ladder).flatMap((folder) =>
      rulesOf(folder).filter((id) => !tests.includes(`[${id}]`)),
    );
    expect(unquoted).toEqual([]);
  });

  it('no two folders use one id', () => {
    const ids = Object.keys(ladder).flatMap(rulesOf);
    expect(ids.filter((id, n) => ids.indexOf(id) !== n)).toEqual([]);
  });
});
