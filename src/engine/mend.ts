import { changeSpec } from '../site/edits/changeSpec.ts';
import { setConditions } from '../site/edits/setConditions.ts';
import { setGateOpens } from '../site/edits/setGateOpens.ts';
import { setGatePost } from '../site/edits/setGatePost.ts';
import type { Gate } from '../site/gate.ts';
import type { GateId, SpecId } from '../site/ids.ts';
import type { PostPipe } from '../site/postPipe.ts';
import type { Site } from '../site/site.ts';
import type { Inches } from '../units/inches.ts';

/** One change of the plan that takes a flag away. */
export type Mend =
  /** Every hole of a build at least so deep, inches. */
  | { readonly kind: 'deepen holes'; readonly spec: SpecId; readonly depth: Inches }
  | { readonly kind: 'bays by wind' }
  | { readonly kind: 'gate posts'; readonly gate: GateId; readonly post: PostPipe }
  | { readonly kind: 'open away'; readonly gate: GateId; readonly opens: Gate['opens'] };

/** The site mended. RangeError for a build or gate that is not there any more. */
export const mended = (site: Site, mend: Mend): Site => {
  switch (mend.kind) {
    case 'deepen holes':
      return changeSpec(site, mend.spec, { leastDepth: mend.depth });
    case 'bays by wind':
      return setConditions(site, { bays: 'by wind' });
    case 'gate posts':
      return setGatePost(site, mend.gate, mend.post);
    case 'open away':
      return setGateOpens(site, mend.gate, mend.opens);
  }
};
