import { useState } from 'react';
import { exactStyle } from '../../drawing/orders/exactStyle.ts';
import { setAtText } from '../../drawing/orders/setAtText.ts';
import type { GateLayout } from '../../engine/layout.ts';
import { setShop } from '../../site/edits/setShop.ts';
import { formatLength } from '../../units/formatLength.ts';
import type { Inches } from '../../units/inches.ts';
import { useSite } from '../bench.ts';
import { useDo, useEdit } from '../yard/cards/useEdit.ts';
import { MaybeLengthField } from './MaybeLengthField.tsx';
import { orderedLeaves, withLeaves, type OrderedLeaves } from './orderedLeaves.ts';

/** A wanted or already set opening turned round into leaves to order. */
export const OrderSize = ({ gate }: { readonly gate: GateLayout }) => {
  const { lengths, shop } = useSite();
  const edit = useEdit();
  const [want, setWant] = useState<Inches | null>(null);
  return (
    <details className="more">
      <summary>Order size</summary>
      <div className="pair">
        <MaybeLengthField
          label="Wanted or set opening"
          value={want}
          style={lengths}
          note="Inside face to inside face of the posts"
          onEnter={(value) => {
            if (value !== null && !(value > 0)) return 'Wanted opening: expected more than nothing';
            setWant(value);
            return null;
          }}
        />
        <MaybeLengthField
          label="Shop makes leaves in steps of"
          value={shop.leafStep}
          style={lengths}
          note="For every gate of this site"
          onEnter={(step) => {
            if (step === null) return 'Step of the shop: expected a length above zero';
            return edit('Set step of leaves', (was) => setShop(was, { leafStep: step }));
          }}
        />
      </div>
      {want !== null && <Ordered gate={gate} want={want} />}
    </details>
  );
};

interface OrderedProps {
  readonly gate: GateLayout;
  readonly want: Inches;
}

const Ordered = ({ gate, want }: OrderedProps) => {
  const { lengths, shop } = useSite();
  const make = useDo();
  const solved = attempted(() => orderedLeaves(gate.opening, want, shop.leafStep));
  if (typeof solved === 'string') return <p className="fault">{solved}</p>;
  const write = (length: Inches) => formatLength(length, exactStyle([length], lengths));
  const { count } = solved;
  const one = count === 1;
  return (
    <>
      <p>
        {one ? 'One leaf of ' : `${count} leaves of `}
        <strong>{write(solved.leaf)}</strong>, rounded down to the step. With {one ? 'it' : 'them'}{' '}
        the opening to hold is <strong>{write(solved.opening.target)}</strong>. Posts set at{' '}
        {write(want)} {setAtText(solved.opening, want, lengths)}.
      </p>
      <button
        type="button"
        onClick={() => make('Take ordered leaves', (was) => withLeaves(was, gate.id, solved.leaf))}
      >
        Take these leaves
      </button>
    </>
  );
};

/** What it gives, or the one line that says why it cannot. */
const attempted = (solve: () => OrderedLeaves): OrderedLeaves | string => {
  try {
    return solve();
  } catch (error) {
    if (error instanceof RangeError) return error.message;
    throw error;
  }
};
