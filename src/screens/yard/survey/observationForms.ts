import { principalAngle } from '../../../geometry/principalAngle.ts';
import { phrase } from '../../../phrases/phrase.ts';
import type { MarkId } from '../../../site/ids.ts';
import type { Observation, ObservationKind } from '../../../site/observation.ts';
import { inches } from '../../../units/inches.ts';
import type { LengthStyle } from '../../../units/lengthStyle.ts';
import { read, unread, type Parsed } from '../../../units/parsed.ts';
import { parseLength } from '../../../units/parseLength.ts';
import { parseAzimuth } from '../../../units/azimuth.ts';
import { readReading } from '../readReading.ts';

/** How one kind of observation is written down: its marks by what they are in it, and its figure. */
export interface ObservationForm {
  readonly kind: Exclude<ObservationKind, 'fix'>;
  readonly title: string;
  readonly roles: readonly { readonly role: string; readonly label: string }[];
  /** What the figure is; null where there is none. */
  readonly figure: string | null;
  /** The marks in the order of the roles. */
  readonly read: (
    marks: readonly MarkId[],
    figure: string,
    style: LengthStyle,
  ) => Parsed<Observation>;
}

const from = { role: 'from', label: phrase`From` };
const to = { role: 'to', label: phrase`To` };

const rest = { trust: null, label: '' } as const;

const missing = unread(phrase`Marks: expected as many as the reading has`);

const line = [
  { role: 'from', label: phrase`The line from` },
  { role: 'to', label: phrase`to` },
] as const;

/** Every kind that is written down by hand, the most used first. */
export const observationForms: readonly [ObservationForm, ...ObservationForm[]] = [
  {
    kind: 'tape',
    title: phrase`A tape between two marks`,
    roles: [from, to],
    figure: phrase`What the tape reads`,
    read: ([a, b], figure, style) => {
      const length = readReading(figure, style);
      if (!length.ok) return unread(phrase`What the tape reads: ${length.reason}`);
      if (a === undefined || b === undefined) return missing;
      return read({ ...rest, kind: 'tape', from: a, to: b, length: length.value });
    },
  },
  {
    kind: 'square',
    title: phrase`A square corner`,
    roles: [{ role: 'at', label: phrase`The corner` }, from, to],
    figure: null,
    read: ([at, a, b]) =>
      at === undefined || a === undefined || b === undefined
        ? missing
        : read({ ...rest, kind: 'square', at, from: a, to: b }),
  },
  {
    kind: 'straight',
    title: phrase`A mark in line with two others`,
    roles: [{ role: 'at', label: phrase`The mark` }, ...line],
    figure: null,
    read: ([at, a, b]) =>
      at === undefined || a === undefined || b === undefined
        ? missing
        : read({ ...rest, kind: 'straight', at, from: a, to: b }),
  },
  {
    kind: 'offset',
    title: phrase`A mark square off a line`,
    roles: [{ role: 'at', label: phrase`The mark` }, ...line],
    figure: phrase`How far off; − to the right of the line`,
    read: ([at, a, b], figure, style) => {
      const off = parseLength(figure, style.system);
      if (!off.ok) return unread(phrase`How far off: ${off.reason}`);
      return at === undefined || a === undefined || b === undefined
        ? missing
        : read({ ...rest, kind: 'offset', at, from: a, to: b, distance: inches(off.value) });
    },
  },
  {
    kind: 'parallel',
    title: phrase`Two marks equally far off a line`,
    roles: [
      { role: 'at', label: phrase`One mark` },
      { role: 'other', label: phrase`The other` },
      ...line,
    ],
    figure: null,
    read: ([at, other, a, b]) =>
      at === undefined || other === undefined || a === undefined || b === undefined
        ? missing
        : read({ ...rest, kind: 'parallel', at, other, from: a, to: b }),
  },
  {
    kind: 'bearing',
    title: phrase`A bearing by compass`,
    roles: [from, to],
    figure: phrase`Degrees clockwise from north`,
    read: ([a, b], figure) => {
      const angle = parseAzimuth(figure);
      if (!angle.ok) return unread(phrase`Degrees clockwise from north: ${angle.reason}`);
      if (a === undefined || b === undefined) return missing;
      return read({
        ...rest,
        kind: 'bearing',
        from: a,
        to: b,
        bearing: principalAngle(angle.value),
      });
    },
  },
];
