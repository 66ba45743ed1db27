/**
 * Spreadsheets run a cell that begins so as a formula: after blanks, quotes and signs that are not seen,
 * in wide letters too. One that is kept from it by an apostrophe already begins so too.
 */
export const startsFormula = /^(?:['"\s\p{Cc}\p{Cf}]*[=+\-@＝＋－＠]|'*[\t\r\n])/u;
