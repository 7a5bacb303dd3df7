/** What somebody without a page does with the package. The tags to try are given on the command line. */
import assert from 'node:assert/strict';
import {register} from 'node:module';

// The core comes first, with `lit` out of reach: it must not need it.
register(`data:text/javascript,${encodeURIComponent(`
  let barred = true;
  export async function resolve(name, context, next) {
    if (barred && /^(lit|@lit|exifreader)/.test(name)) throw new Error('the core asked for ' + name);
    if (name === 'lampblack/elements') barred = false;
    return next(name, context);
  }
`)}`);

assert.equal(globalThis.document, undefined);
const core = await import('lampblack');
assert.ok(Math.abs(core.apertureStops(8, 11.313708) + 1) < 1e-6);
assert.equal(core.readShutter('0"6').how, 'seconds');
assert.throws(() => core.apertureStops(0, 8), core.Problem);

// So do its parts, and what they share they share: one class of problem, whichever part it comes from.
for (const part of ['exposure', 'optics', 'light', 'tone', 'white', 'shot', 'sheet', 'document']) {
  assert.equal((await import(`lampblack/${part}`)).Problem, core.Problem, part);
}
assert.equal((await import('lampblack/units')).readLength, core.readLength);

// Every element imports where there is no page, and gives its class.
await import('lampblack/elements');
for (const tag of process.argv.slice(2)) {
  await import(`lampblack/elements/${tag}`);
  const classes = Object.values(await import(`lampblack/elements/${tag}/class`));
  assert.ok(classes.some((each) => typeof each === 'function' && Array.isArray(each.shotKeys)), `${tag}/class gives no element class`);
}
