import { phrase } from '../../phrases/phrase.ts';
import { siteEnding } from '../../site/siteFile.ts';

/** A file that the browser lets the program read again and write, by the File System Access of WICG. */
export interface FileHandle extends FileSystemFileHandle {
  readonly queryPermission?: (how: { readonly mode: 'readwrite' }) => Promise<PermissionState>;
  readonly requestPermission?: (how: { readonly mode: 'readwrite' }) => Promise<PermissionState>;
}

interface Kinds {
  readonly description: string;
  readonly accept: Readonly<Record<string, readonly string[]>>;
}

interface Pickers {
  readonly showSaveFilePicker?: (how: {
    readonly suggestedName: string;
    readonly types: readonly Kinds[];
  }) => Promise<FileHandle>;
  readonly showOpenFilePicker?: () => Promise<readonly FileHandle[]>;
}

const pickers = (): Pickers => window as unknown as Pickers;

/** Whether this browser lets a program keep a file to write it again. */
export const canKeepFiles = (): boolean => pickers().showSaveFilePicker !== undefined;

/** Null where the person chose nothing. */
const chosen = async (pick: Promise<FileHandle | undefined>): Promise<FileHandle | null> => {
  try {
    return (await pick) ?? null;
  } catch (error) {
    if (error instanceof DOMException && error.name === 'AbortError') return null;
    throw error;
  }
};

/** The file that a person chooses to save to; null where nothing was chosen or none can be. */
export const chooseToSave = (suggestedName: string): Promise<FileHandle | null> => {
  const accept = { 'application/json': [siteEnding, '.json'] };
  const types = [{ description: phrase`Site file`, accept }];
  return chosen(
    pickers().showSaveFilePicker?.({ suggestedName, types }) ?? Promise.resolve(undefined),
  );
};

/** The file that a person chooses to open; null where nothing was chosen or none can be. */
export const chooseToOpen = (): Promise<FileHandle | null> =>
  chosen(
    pickers()
      .showOpenFilePicker?.()
      .then(([first]) => first) ?? Promise.resolve(undefined),
  );

/** Whether the program may write the file, after asking where it has to. */
export const mayWrite = async (handle: FileHandle): Promise<boolean> => {
  const mode = { mode: 'readwrite' } as const;
  if ((await handle.queryPermission?.(mode)) === 'granted') return true;
  return handle.requestPermission === undefined
    ? handle.queryPermission === undefined
    : (await handle.requestPermission(mode)) === 'granted';
};
