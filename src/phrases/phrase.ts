/** What fills a hole of a phrase: a name, a figure, or a phrase already in words. */
type Filling = string | number;

/** Makes one text of the pieces of a phrase as it stands in the code, and of what fills its holes. */
export type Phrase = (pieces: TemplateStringsArray, ...fillings: readonly Filling[]) => string;

/**
 * What another language has for a phrase of the code, with the holes at their numbers (`{1}`), in any
 * order; undefined where it has nothing.
 */
export type Saying = (key: string) => string | undefined;

/** A phrase of another language: texts, and between them the numbers of holes. */
type Said = readonly (string | number)[];

let saying: Saying | null = null;
/** What was found for each place of the code; a language is spoken for good, so none is looked up twice. */
let found = new WeakMap<TemplateStringsArray, Said | null>();

const hole = /\{(\d+)\}/;

/**
 * The key of a phrase: its English with the holes numbered from 1, as `Post {1}`; before it what it is
 * about, where the English has two meanings, as `file|Open`.
 */
export const keyOf = (pieces: readonly string[], about = ''): string => {
  const text = pieces.map((piece, n) => (n === 0 ? piece : `{${n}}${piece}`)).join('');
  return about === '' ? text : `${about}|${text}`;
};

const parted = (text: string): Said =>
  text.split(hole).map((part, n) => (n % 2 === 1 ? Number(part) : part));

const look = (pieces: TemplateStringsArray, about: string): Said | null => {
  const known = found.get(pieces);
  if (known !== undefined) return known;
  const text = saying?.(keyOf(pieces, about));
  const said = text === undefined ? null : parted(text);
  found.set(pieces, said);
  return said;
};

const english = (pieces: readonly string[], fillings: readonly Filling[]): string =>
  pieces.map((piece, n) => (n === 0 ? piece : `${fillings[n - 1] ?? ''}${piece}`)).join('');

/** Texts of another language with what the code says there, those made last at the end. */
const inEnglish = new Map<string, string>();

/** As many are remembered as several drawings make at once, and with them those of tables that are in use. */
const mostRemembered = 50_000;

/** What phrases without holes say in English: of these there are as many as the code has, so all are kept. */
const always = new Map<string, string>();

const remembered = (text: string, said: string): string => {
  inEnglish.delete(text);
  inEnglish.set(text, said);
  if (inEnglish.size > mostRemembered)
    for (const [oldest] of inEnglish) {
      inEnglish.delete(oldest);
      break;
    }
  return text;
};

/**
 * What a text that was made by phrases says in English, its fillings too, where it was made not long ago or
 * by a phrase without holes; any other text as it is. What a document keeps of a text, or compares it by, is the same in every language.
 */
export const englishOf = (text: string): string => {
  const said = inEnglish.get(text) ?? always.get(text);
  if (said === undefined) return text;
  remembered(text, said);
  return said;
};

const plain = (filling: Filling): Filling =>
  typeof filling === 'string' ? englishOf(filling) : filling;

const phraseAbout =
  (about: string): Phrase =>
  (pieces, ...fillings) => {
    if (saying === null) return english(pieces, fillings);
    const said = look(pieces, about);
    const text =
      said === null
        ? english(pieces, fillings)
        : said
            .map((part) => (typeof part === 'number' ? `${fillings[part - 1] ?? ''}` : part))
            .join('');
    if (fillings.length === 0) always.set(text, english(pieces, []));
    return remembered(text, english(pieces, fillings.map(plain)));
  };

/**
 * A text for a reader in the language that is spoken: phrase`Post ${name}`. English unless another is
 * spoken, and where that has nothing for it.
 */
export const phrase: Phrase = phraseAbout('');

/** As `phrase`, of a word that English has for two things: phraseOf('file')`Open`. */
export const phraseOf = (about: string): Phrase => phraseAbout(about);

/** A name, or another text of a document, in a phrase: the same in every language, also where a phrase says just that. */
export const asItIs = (text: string): string => (saying === null ? text : remembered(text, text));

/** A text with a capital at its beginning. */
export const sentenceCase = (text: string): string => {
  const large = (of: string): string => `${of.slice(0, 1).toUpperCase()}${of.slice(1)}`;
  return saying === null ? large(text) : remembered(large(text), large(englishOf(text)));
};

/** Texts in a row, with `between` from each to the next. */
export const joined = (texts: readonly string[], between: string): string => {
  const text = texts.join(between);
  if (saying === null || texts.length < 2) return text;
  return remembered(text, texts.map(englishOf).join(englishOf(between)));
};

/**
 * Speaks by `next` from now on, or English where that is null. Texts that were made before stay as they
 * are: a language is chosen before anything else is loaded.
 */
export const speakBy = (next: Saying | null): void => {
  saying = next;
  found = new WeakMap();
  inEnglish.clear();
  always.clear();
};
