import fc from 'fast-check';

/**
 * Every run tries the same cases, so that a red run means a change and not a throw of the dice. `SEED=7 npm run check:core`
 * tries others, `SEED=random` new ones each time: run that now and then, and before a release.
 */
const wish = process.env.SEED;
if (wish !== 'random') fc.configureGlobal({seed: Number(wish) || 20_261_125});
