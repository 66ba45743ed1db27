import { phrase } from '../../phrases/phrase.ts';
import type { FoundSummary } from './foundSummary.ts';

/** How a file was read, and what of it cannot be brought in. */
export const BringTold = ({ told, refused, refusals }: FoundSummary) => (
  <>
    <ul className="plain note">
      {told.map((line) => (
        <li key={line}>{line}</li>
      ))}
    </ul>
    {refused.length > 0 && (
      <div className="fault" role="alert">
        {phrase`Cannot be brought in: ${refusals.toLocaleString('en-US')}`}
        <ul className="plain">
          {refused.map(({ where, reason }) => (
            <li key={`${where} ${reason}`}>
              {where}: {reason}
            </li>
          ))}
        </ul>
        {refusals > refused.length &&
          phrase`and ${(refusals - refused.length).toLocaleString('en-US')} more`}
      </div>
    )}
  </>
);
