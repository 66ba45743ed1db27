import fc from 'fast-check';

/**
 * Properties are tried on the same cases in every run, so that a run is green or red by the code
 * alone. `CASES=n` tries the cases of another seed; `npm run test:wander` takes one by chance.
 */
fc.configureGlobal({ seed: Number(process.env['CASES'] ?? 1) });
