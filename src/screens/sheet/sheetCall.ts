import type { SetProgress } from '../../drawing/sheet/sheetSet.ts';
import type { SheetOptions } from '../../drawing/sheet/sheetOptions.ts';
import type { Page } from '../../drawing/sheet/page.ts';
import type { Language } from '../../phrases/languages.ts';
import type { Site } from '../../site/site.ts';
import type { SiteFile } from '../../site/siteFile.ts';

/** A set of sheets that is asked of the worker that draws them away from the screen. */
export interface SheetCall {
  readonly site: Site;
  readonly options: SheetOptions;
  /** The language that it is drawn in. */
  readonly language: Language;
  /** What is wanted of it: its pages, or all of it as a PDF with this file attached. */
  readonly wanted: 'pages' | { readonly pdfWith: SiteFile };
}

/** What it says while it draws, and in the end; `failed` with one line where it could not. */
export type SheetAnswer =
  | { readonly do: 'progress'; readonly progress: SetProgress }
  | { readonly do: 'pages'; readonly pages: readonly Page[] }
  | { readonly do: 'pdf'; readonly bytes: Uint8Array<ArrayBuffer> }
  | { readonly do: 'failed'; readonly why: string };
