import ts from 'typescript';

/** A text that a person reads and that no phrase says: what, and in which line. */
export interface BareWord {
  readonly text: string;
  readonly line: number;
}

/** Properties of elements that are read, out or on the screen. */
const readOut = new Set(
  'aria-label aria-description aria-roledescription aria-valuetext title alt placeholder label note close data-heading'.split(
    ' ',
  ),
);

/** Properties of objects that come to such. */
const comesToBeRead = new Set(['label', 'say', 'note', 'title']);

const hasLetters = (text: string): boolean => /\p{L}/u.test(text);

const isText = (node: ts.Node): node is ts.StringLiteral | ts.NoSubstitutionTemplateLiteral =>
  ts.isStringLiteral(node) || ts.isNoSubstitutionTemplateLiteral(node);

const passedOn = new Set([
  ts.SyntaxKind.QuestionQuestionToken,
  ts.SyntaxKind.BarBarToken,
  ts.SyntaxKind.AmpersandAmpersandToken,
]);

/** The texts with letters that an expression may come to and that are in no phrase. */
const textsOf = (of: ts.Node): ts.Node[] => {
  if (isText(of)) return hasLetters(of.text) ? [of] : [];
  if (ts.isTemplateExpression(of)) {
    const own = [of.head, ...of.templateSpans.map(({ literal }) => literal)];
    const inner = of.templateSpans.flatMap(({ expression }) => textsOf(expression));
    return own.some(({ text }) => hasLetters(text)) ? [of, ...inner] : inner;
  }
  if (ts.isConditionalExpression(of)) return [of.whenTrue, of.whenFalse].flatMap(textsOf);
  if (ts.isBinaryExpression(of) && passedOn.has(of.operatorToken.kind))
    return [of.left, of.right].flatMap(textsOf);
  if (ts.isParenthesizedExpression(of) || ts.isJsxExpression(of)) {
    return of.expression === undefined ? [] : textsOf(of.expression);
  }
  return [];
};

/** What of one node is read as it stands. */
const readIn = (node: ts.Node): ts.Node[] => {
  if (ts.isJsxText(node)) return hasLetters(node.text) ? [node] : [];
  if (ts.isJsxAttribute(node) && node.initializer !== undefined)
    return readOut.has(node.name.getText()) ? textsOf(node.initializer) : [];
  if (ts.isJsxExpression(node) && !ts.isJsxAttribute(node.parent)) return textsOf(node);
  if (ts.isPropertyAssignment(node) && comesToBeRead.has(node.name.getText()))
    return textsOf(node.initializer);
  return [];
};

/** The texts of some code with elements in it that a person reads in English whatever is spoken. */
export const bareWords = (code: string): BareWord[] => {
  const file = ts.createSourceFile('a.tsx', code, ts.ScriptTarget.Latest, true, ts.ScriptKind.TSX);
  const found: BareWord[] = [];
  const look = (node: ts.Node): void => {
    for (const one of readIn(node)) {
      const text = isText(one) ? one.text : one.getText().trim();
      found.push({ text, line: file.getLineAndCharacterOfPosition(one.getEnd()).line + 1 });
    }
    node.forEachChild(look);
  };
  look(file);
  return found;
};
