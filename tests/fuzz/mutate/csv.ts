import type { TextMutation } from './mutation.ts';

const marks = ['"', '""', ',', ';', '\t', '\r', '\n', '\r\n', '\0', '\ufeff', "'", '""",', '"x"y'];

const putMark: TextMutation = (text, random) => {
  const at = random.below(text.length);
  return text.slice(0, at) + random.pick(marks) + text.slice(at);
};

const otherParting: TextMutation = (text, random) =>
  text.replaceAll(
    random.pick([',', ';', '\t', '\n', '.']),
    random.pick([',', ';', '\t', '\r', '|', '""']),
  );

const quotedWhole: TextMutation = (text, random) =>
  `${random.pick(['"', '', 'sep=;\n', '\ufeff', '\ufeff\ufeff', 'sep=,\r'])}${text}${random.pick(['"', '', '"\n'])}`;

const swapColumns: TextMutation = (text, random) => {
  const [a, b] = [random.below(6), random.below(6)];
  return text
    .split('\n')
    .map((line) => {
      const cells = line.split(',');
      [cells[a], cells[b]] = [cells[b] ?? '', cells[a] ?? ''];
      return cells.join(',');
    })
    .join('\n');
};

const wide: TextMutation = (text, random) => {
  const at = text.indexOf('\n', random.below(text.length)) + 1;
  return (
    text.slice(0, at) +
    random.pick([',', '";"', 'x,', '"",']).repeat(random.pick([10, 3000, 100_000])) +
    text.slice(at)
  );
};

const all = [putMark, putMark, otherParting, quotedWhole, swapColumns, wide];

/** Spoils a text of rows: quotation marks, what parts its cells, marks in front, columns. */
export const csvMutation: TextMutation = (text, random) => random.pick(all)(text, random);
