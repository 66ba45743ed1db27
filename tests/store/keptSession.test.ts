import { describe, expect, it } from 'vitest';
import { keptOf, readKept } from '../../src/store/keptSession.ts';
import { createSession } from '../../src/store/session.ts';
import { samplePlans } from './samplePlans.ts';

describe('keptSession', () => {
  const session = createSession(samplePlans);
  const sheet = { paper: 'a3', orientation: 'landscape', reader: 'crew', language: 'es' } as const;
  session.setState({ sheet });
  const kept: unknown = JSON.parse(JSON.stringify(keptOf(session.getState())));

  it('[A16] keeps the language of the sheets with their paper', () => {
    expect(readKept(kept).sheet).toEqual(sheet);
  });

  it('[A16] reads what an older program kept, and a language that there is not, as none that was chosen', () => {
    const { language: _, ...before } = sheet;
    for (const own of [before, { ...before, language: 'fr' }, { ...before, language: 7 }])
      expect(readKept({ sheet: own }).sheet).toEqual({ ...before, language: null });
  });
});
