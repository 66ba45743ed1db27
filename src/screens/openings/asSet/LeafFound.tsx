import type { AsSet } from '../../../site/asSet.ts';
import type { LeafId } from '../../../site/ids.ts';
import { oneWidth } from '../../../site/oneWidth.ts';
import type { Inches } from '../../../units/inches.ts';
import type { LengthStyle } from '../../../units/lengthStyle.ts';
import { MaybeLengthField } from '../MaybeLengthField.tsx';

interface Props {
  readonly id: LeafId;
  readonly name: string;
  readonly hinged: boolean;
  readonly asSet: AsSet;
  readonly style: LengthStyle;
  readonly onRecord: (label: string, next: AsSet) => string | null;
}

const without = <Value,>(map: Readonly<Record<LeafId, Value>>, id: LeafId) =>
  Object.fromEntries(Object.entries(map).filter(([key]) => key !== id)) as typeof map;

/** The record with a width of a leaf measured or taken out again; the line that says what is wrong. */
const withWidth = (asSet: AsSet, id: LeafId, at: 'top' | 'bottom', width: Inches | null) => {
  const before = asSet.leaves[id];
  if (at === 'top') {
    if (width === null) return { ...asSet, leaves: without(asSet.leaves, id) };
    const widths = { ...oneWidth(width), bottom: before?.bottom ?? null };
    return { ...asSet, leaves: { ...asSet.leaves, [id]: widths } };
  }
  if (before === undefined) return 'expected its width at the top first';
  return { ...asSet, leaves: { ...asSet.leaves, [id]: { ...before, bottom: width } } };
};

/** One leaf and its hinges as they were measured again beside the posts; empty: as planned. */
export const LeafFound = ({ id, name, hinged, asSet, style, onRecord }: Props) => {
  const widths = asSet.leaves[id];
  const entered = (at: 'top' | 'bottom', width: Inches | null): string | null => {
    const called = `${name} at the ${at}`;
    if (width !== null && !(width > 0)) return `${called}: expected more than 0`;
    const next = withWidth(asSet, id, at, width);
    return typeof next === 'string' ? `${called}: ${next}` : onRecord('Measure leaf on site', next);
  };
  return (
    <>
      <MaybeLengthField
        label={`${name}, width at the top`}
        value={widths?.top ?? null}
        style={style}
        onEnter={(width) => entered('top', width)}
      />
      <MaybeLengthField
        label={`${name}, width at the bottom`}
        value={widths?.bottom ?? null}
        style={style}
        onEnter={(width) => entered('bottom', width)}
      />
      {hinged && (
        <MaybeLengthField
          label={`${name}, its hinges take`}
          value={asSet.hinges[id] ?? null}
          style={style}
          note="From the face of the post to the frame"
          onEnter={(size) => {
            if (size !== null && size < 0) return `${name}, hinges: expected 0 or more`;
            const hinges =
              size === null ? without(asSet.hinges, id) : { ...asSet.hinges, [id]: size };
            return onRecord('Measure hinges on site', { ...asSet, hinges });
          }}
        />
      )}
    </>
  );
};
