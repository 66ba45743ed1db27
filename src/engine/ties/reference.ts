import type { SitePoint } from '../../geometry/point.ts';
import type { MarkId } from '../../site/ids.ts';

/** Something on site that a tape can be hooked at before there is any fence. */
export interface Reference {
  readonly mark: MarkId;
  readonly at: SitePoint;
  /** What a crew calls it, such as `House, NW corner`; no two of a site have one name. */
  readonly name: string;
  /** What it is of; a `mark` is a lone one with a name, such as a property pin. */
  readonly of: 'building' | 'mark' | 'paving' | 'pool' | 'boundary' | 'tree';
  /** Where others were measured, this one stands where it was sketched: no reading holds it. */
  readonly sketched: boolean;
}
