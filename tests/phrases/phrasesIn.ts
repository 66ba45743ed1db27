import { readFileSync, readdirSync } from 'node:fs';
import { join, relative, sep } from 'node:path';
import ts from 'typescript';
import { keyOf } from '../../src/phrases/phrase.ts';

/** A phrase of the code: its key, the folder of `src/` that it is in, and where. */
export interface CodePhrase {
  readonly key: string;
  readonly folder: string;
  readonly where: string;
}

const source = join(import.meta.dirname, '../../src');

/** The files of `src/` that have code, from there, with `/` between folders. */
const codeFiles = (): string[] =>
  readdirSync(source, { recursive: true, withFileTypes: true })
    .filter((entry) => entry.isFile() && /\.tsx?$/.test(entry.name))
    .map((entry) => relative(source, join(entry.parentPath, entry.name)).split(sep).join('/'))
    .toSorted();

/** The code of a file of `src/` as the compiler reads it. */
const parsedFile = (file: string): ts.SourceFile => {
  const kind = file.endsWith('x') ? ts.ScriptKind.TSX : ts.ScriptKind.TS;
  const text = readFileSync(join(source, file), 'utf8');
  return ts.createSourceFile(file, text, ts.ScriptTarget.Latest, true, kind);
};

/** What a tagged template is about; null where it is no phrase. */
const aboutOf = ({ tag }: ts.TaggedTemplateExpression): string | null => {
  if (ts.isIdentifier(tag)) return tag.text === 'phrase' ? '' : null;
  if (!ts.isCallExpression(tag) || !ts.isIdentifier(tag.expression)) return null;
  const [about] = tag.arguments;
  if (tag.expression.text !== 'phraseOf' || about === undefined) return null;
  return ts.isStringLiteral(about) ? about.text : null;
};

const piecesOf = (template: ts.TemplateLiteral): readonly string[] =>
  ts.isNoSubstitutionTemplateLiteral(template)
    ? [template.text]
    : [template.head.text, ...template.templateSpans.map(({ literal }) => literal.text)];

/** All phrases of some code, those of functions within it too. */
const phrasesOf = (node: ts.Node, file: ts.SourceFile): CodePhrase[] => {
  const inner: CodePhrase[] = [];
  node.forEachChild((child) => {
    inner.push(...phrasesOf(child, file));
  });
  if (!ts.isTaggedTemplateExpression(node)) return inner;
  const about = aboutOf(node);
  if (about === null) return inner;
  const line = file.getLineAndCharacterOfPosition(node.getStart()).line + 1;
  const folder = file.fileName.split('/')[0] ?? '';
  const where = `${file.fileName}:${line}`;
  return [{ key: keyOf(piecesOf(node.template), about), folder, where }, ...inner];
};

/** Every phrase of the code, file by file. */
export const codePhrases = (): CodePhrase[] =>
  codeFiles().flatMap((file) => {
    const parsed = parsedFile(file);
    return phrasesOf(parsed, parsed);
  });
