import { z } from 'zod';

// without it the library makes functions from text, which the page's content policy forbids
z.config({ jitless: true });

/** The library of schemas, set to check without making code. The only door to it. */
export { z };
