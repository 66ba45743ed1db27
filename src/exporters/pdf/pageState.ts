import type { PageBytes } from './pageBytes.ts';

/** What a page may be told of, each by the operators that say it, with the end of their line. */
const untold = { strokes: '', fills: '', font: '' } as const;

type Told = Record<keyof typeof untold, string> & {
  width: number;
  dash: readonly number[] | null;
};

const nothing = (): Told => ({ ...untold, width: Number.NaN, dash: null });

const same = (a: readonly number[] | null, b: readonly number[]): boolean =>
  a === b || (a !== null && a.length === b.length && a.every((part, n) => part === b[n]));

/** What a page's content was told last of colours, pens and fonts: that is not said again. */
export class PageState {
  private told = nothing();
  private readonly out: PageBytes;

  constructor(out: PageBytes) {
    this.out = out;
  }

  /** Everything is said again, as where a reader may have left out what stands before. */
  forget(): void {
    this.told = nothing();
  }

  /** Sets the colour of strokes, that of fills and letters, or the font by its operators. */
  tell(what: keyof typeof untold, operators: string): void {
    if (this.told[what] === operators) return;
    this.told[what] = operators;
    this.out.text(operators);
  }

  /** Sets the width of strokes and their dashes, in units of the page. */
  pen(width: number, dash: readonly number[], unit: number): void {
    const { told, out } = this;
    if (told.width !== width) {
      told.width = width;
      out.number(width * unit);
      out.text('w\n');
    }
    if (same(told.dash, dash)) return;
    told.dash = dash;
    out.text('[');
    dash.forEach((length) => out.number(length * unit));
    if (dash.length > 0) out.dropBlank();
    out.text('] 0. d\n');
  }

  /** What is told by a deed holds no longer than that. */
  within(deed: () => void): void {
    const before = { ...this.told };
    this.out.text('q\n');
    deed();
    this.out.text('Q\n');
    this.told = before;
  }
}
