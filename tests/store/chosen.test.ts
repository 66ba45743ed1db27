import { describe, expect, it } from 'vitest';
import { openDesk } from './keptDesk.ts';
import { memoryShelf, named } from './memoryShelf.ts';
import { namedSite } from './namedSite.ts';

const tick = () => new Promise((resolve) => setTimeout(resolve));

describe('what is chosen of a session', () => {
  it('[H51] writes what is chosen when it is, and where the pad is moved to with the next step', async () => {
    const { shelf, lying } = memoryShelf();
    const { site, session } = await openDesk({ shelf, first: namedSite('first') });
    const sheet = { paper: 'a3', orientation: 'portrait', reader: 'crew', language: 'es' } as const;
    session.setState({ sheet });
    await tick();
    expect(lying().desk.get('session')).toMatchObject({ sheet });
    session.setState({ view: { scale: 7, x: 0, y: 0 }, say: 'Saved' });
    await tick();
    expect(lying().desk.get('session')).not.toMatchObject({ view: { scale: 7 } });
    for (const theme of ['sun', 'dark'] as const) session.setState({ theme });
    await tick();
    expect(lying().desk.get('session')).toMatchObject({ theme: 'dark', sheet });
    site.getState().commit(namedSite('second'), 'Edit');
    const later = await openDesk({ shelf });
    expect(later.session.getState()).toMatchObject({ sheet, theme: 'dark' });
  });

  it('[H51] tells of a choice that the device has no room for, and writes it with the next', async () => {
    const { shelf, lying, fail } = memoryShelf();
    const { session, keeper } = await openDesk({ shelf, first: namedSite('first') });
    fail(named('QuotaExceededError'));
    session.setState({ theme: 'sun' });
    await tick();
    expect(keeper.state.getState().trouble).not.toBe(null);
    expect(lying().desk.get('session')).toBe(undefined);
    fail(null);
    session.setState({ screen: 'load' });
    await tick();
    expect(lying().desk.get('session')).toMatchObject({ theme: 'sun', screen: 'load' });
  });
});
