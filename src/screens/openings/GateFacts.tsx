import { leafLoadTexts } from '../../drawing/tables/leafLoadTexts.ts';
import { setAtText } from '../../drawing/orders/setAtText.ts';
import { pipeSize } from '../../units/pipeSize.ts';
import { swingTexts } from '../../drawing/tables/swingTexts.ts';
import { clearPassage } from '../../engine/gate/clearPassage.ts';
import type { GateLayout, Layout } from '../../engine/layout.ts';
import type { Gate } from '../../site/gate.ts';
import { fineStyle } from '../../units/fineStyle.ts';
import { formatLength } from '../../units/formatLength.ts';
import { useLayout, useSite } from '../bench.ts';
import { passageReasons } from '../help/why/passageReasons.ts';
import { weightReasons } from '../help/why/weightReasons.ts';
import { Why } from '../help/why/Why.tsx';
import { useMayOpen } from './useMayOpen.ts';
import { phrase } from '../../phrases/phrase.ts';

/** Past which post a leaf rolls aside; null for a gate that does not roll or has no posts. */
const rollsText = ({ way }: Gate, { posts, slides }: GateLayout, layout: Layout): string | null => {
  if (way.kind !== 'cantilever' || posts === null) return null;
  const tag = (end: 'start' | 'end'): string => layout.posts.get(posts[end])?.tag ?? '?';
  if (slides.length > 1) return phrase`apart, past posts ${tag('start')} and ${tag('end')}`;
  return phrase`aside, past post ${tag(way.stores)}`;
};

/** How a gate hangs, on which posts, and what its trade size would come to. */
export const GateFacts = ({ gate }: { readonly gate: GateLayout }) => {
  const site = useSite();
  const layout = useLayout();
  const swing = swingTexts(gate, layout);
  const may = useMayOpen(gate);
  const drawn = site.gates[gate.id];
  const nominal = drawn?.way.kind === 'gap' ? null : (drawn?.nominal ?? null);
  const posts = gate.posts === null ? [] : [gate.posts.start, gate.posts.end];
  const ods = posts.flatMap((id) => {
    const post = layout.posts.get(id);
    return post === undefined ? [] : phrase`${post.tag}: ${pipeSize(post.od, site.lengths)} OD`;
  });
  const style = fineStyle(site.lengths);
  const rolls = drawn === undefined ? null : rollsText(drawn, gate, layout);
  return (
    <dl className="facts">
      {swing !== null && (
        <>
          <div>
            <dt>{phrase`Hinged at post`}</dt>
            <dd>{swing.hingedAt}</dd>
          </div>
          <div>
            <dt>{phrase`Opens`}</dt>
            <dd>{swing.opens}</dd>
          </div>
        </>
      )}
      {may !== null && (
        <div>
          <dt>{phrase`May open`}</dt>
          <dd>{may}</dd>
        </div>
      )}
      {rolls !== null && (
        <div>
          <dt>{phrase`Rolls`}</dt>
          <dd>{rolls}</dd>
        </div>
      )}
      {drawn !== undefined && gate.leaves.length > 0 && (
        <div>
          <dt>{phrase`Clear passage`}</dt>
          <dd>
            <Why
              of={phrase`the clear passage`}
              reasons={() => passageReasons(drawn, gate, site.lengths)}
            >
              <p>{phrase`${formatLength(clearPassage(drawn, gate).clear, style)} with the gate open`}</p>
            </Why>
          </dd>
        </div>
      )}
      <div>
        <dt>{phrase`Gate posts`}</dt>
        <dd>{ods.length === 0 ? phrase`not placed` : ods.join(', ')}</dd>
      </div>
      {leafLoadTexts(site, gate, layout).map((text) => (
        <div key={text}>
          <dt>{phrase`Weight`}</dt>
          <dd>
            <Why
              of={phrase`the weight of a leaf`}
              reasons={() => weightReasons(gate, site, layout)}
            >
              <p>{text}</p>
            </Why>
          </dd>
        </div>
      ))}
      {nominal !== null && (
        <div>
          <dt>{phrase`Called ${formatLength(nominal, style)}`}</dt>
          <dd>{phrase`Posts set at that ${setAtText(gate.opening, nominal, site.lengths)}.`}</dd>
        </div>
      )}
    </dl>
  );
};
