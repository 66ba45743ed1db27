import { phrase } from '../../phrases/phrase.ts';
import { alternativesNaming } from '../../site/alternativesNaming.ts';
import { removeHardware } from '../../site/edits/removeHardware.ts';
import { removeSpec } from '../../site/edits/removeSpec.ts';
import type { HardwareId, SpecId } from '../../site/ids.ts';
import { partsInUse } from '../../site/partsInUse.ts';
import type { Site } from '../../site/site.ts';
import { useSite } from '../bench.ts';
import { useDo } from './cards/useEdit.ts';

/** Why a build cannot be removed though no line has it; null where it can. */
const keptFor = (site: Pick<Site, 'alternatives'>, id: SpecId): string | null => {
  const [named] = alternativesNaming(site, id);
  return named === undefined ? null : phrase`Kept for “${named.label}”, another way to build it.`;
};

/**
 * The builds and parts that the drawing carries and nothing is made of, each with a key to remove it, or why
 * it stays.
 */
export const Unused = () => {
  const { lines, specs, hardware, gates, alternatives } = useSite();
  const make = useDo();
  const built = new Set(Object.values(lines).map(({ spec }) => spec));
  const used = partsInUse({ gates });
  const idle = [
    ...(Object.keys(specs) as SpecId[])
      .filter((id) => !built.has(id))
      .map((id) => ({
        id,
        label: specs[id]?.label ?? '',
        kept: keptFor({ alternatives }, id),
        remove: () => make(phrase`Remove build`, (was) => removeSpec(was, id)),
      })),
    ...(Object.keys(hardware) as HardwareId[])
      .filter((id) => !used.has(id))
      .map((id) => ({
        id,
        label: hardware[id]?.label ?? '',
        kept: null,
        remove: () => make(phrase`Remove part`, (was) => removeHardware(was, id)),
      })),
  ];
  if (idle.length === 0) return null;
  return (
    <details className="more">
      <summary>{phrase`Not used in this yard: ${idle.length}`}</summary>
      <ul className="plain">
        {idle.map(({ id, label, kept, remove }) => (
          <li key={id} className="side">
            <span>{label}</span>
            {kept === null ? (
              <button type="button" aria-label={phrase`Remove ${label}`} onClick={remove}>
                {phrase`Remove`}
              </button>
            ) : (
              <span className="note">{kept}</span>
            )}
          </li>
        ))}
      </ul>
    </details>
  );
};
