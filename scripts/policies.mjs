/**
 * A page of checks under a strict content policy, chosen by `?policy=`, with the built files byte for byte: what the test server
 * does to scripts would break their hashes. Everything stands in /as-built/.
 */
import {createHash} from 'node:crypto';
import {existsSync, readFileSync, statSync} from 'node:fs';
import {extname} from 'node:path';
import {readList, scriptSources, snippet} from './integrity.mjs';
import {ROOT} from './set-up.mjs';

const PLACE = '/as-built/';
const FILES = `${PLACE}lampblack/`;
const PAGE = `${ROOT}tests/pages/csp/page.html`;
const WATCH = `${ROOT}tests/pages/csp/watch.js`;
const TYPES = {'.js': 'text/javascript; charset=utf-8', '.html': 'text/html; charset=utf-8', '.css': 'text/css', '.jpg': 'image/jpeg', '.json': 'application/json'};
const hashOf = (path) => `sha384-${createHash('sha384').update(readFileSync(path)).digest('base64')}`;

/** All that a page of checks needs beside its scripts: `blob:` is the photo that a reader opens. */
const BASE = [
  "default-src 'none'", "style-src 'self'", "img-src 'self' blob:", "require-trusted-types-for 'script'", 'trusted-types lit-html lampblack',
];
const BY_HASH = (name) => [...BASE, `script-src ${scriptSources(name, readList(), FILES)} '${hashOf(WATCH)}'`];

const SELF = [...BASE, "script-src 'self'"];

/** Policies by name, for a page at `origin` that asks for the file `name`. */
const POLICIES = {
  self: () => SELF,
  workerless: () => [...SELF, "worker-src 'none'"],
  connect: () => [...SELF, "connect-src 'self'"],
  host: (name, origin) => [...BASE, `script-src ${origin}${FILES} ${origin}${PLACE}watch.js`],
  hash: BY_HASH,
  'hash-and-worker': (name) => [...BY_HASH(name), "worker-src 'self'"],
  'hash-and-own': (name) => BY_HASH(name).map((each) => (each.startsWith('script-src') ? `${each} 'strict-dynamic'` : each)),
  // Somebody else's list of names, without ours.
  nameless: () => SELF.map((each) => each.replace(' lampblack', '')),
};

/**
 * The page as somebody pastes it together: under a policy by hash, and where it is asked for as `held`, with the printed lines; otherwise
 * with one line. `spoilt` has the hash of another file instead of its own.
 */
function pageFor(name, asked) {
  const list = readList();
  const spoilt = asked.get('spoilt');
  const held = asked.has('held') || asked.get('policy')?.startsWith('hash');
  const lines = held ? snippet(name, list, FILES) : `<script type="module" src="${FILES}${name}"></script>`;
  return readFileSync(PAGE, 'utf8').replace('lang="en"', `lang="${(asked.get('lang') ?? 'en').replace(/[^\w-]/g, '')}"`)
    .replace('src="watch.js"', `src="watch.js" integrity="${hashOf(WATCH)}"`)
    .replace(/<script type="module".*/, spoilt ? lines.replaceAll(list.files[spoilt], list.files[name]) : lines)
    .replace('<tonal-chart-reader>', asked.has('src') ? '<tonal-chart-reader src="shots/aperture-f8.jpg">' : '<tonal-chart-reader>');
}

/** A middleware of the test server. */
export function policyMiddleware(context, next) {
  if (!context.path.startsWith(PLACE)) return next();
  const asked = new URLSearchParams(context.search);
  const name = asked.get('file') ?? 'all.js';
  const rest = context.path.slice(PLACE.length);
  const path = rest.startsWith('lampblack/') ? `${ROOT}dist/standalone/${rest.slice('lampblack/'.length)}`
    : rest.startsWith('shots/') ? `${ROOT}demo/${rest}` : rest === 'watch.js' ? WATCH : rest === 'page.html' ? PAGE : '';
  // Past everything else that the test server would do to it.
  context.respond = false;
  if (path.includes('..') || !existsSync(path) || !statSync(path).isFile()) {
    context.res.writeHead(404).end();
    return undefined;
  }
  const policy = rest === 'page.html' ? POLICIES[asked.get('policy')]?.(name, context.origin) : undefined;
  context.res.writeHead(200, {
    'content-type': TYPES[extname(path)] ?? 'application/octet-stream', 'cache-control': 'no-store',
    ...(asked.get('for') === 'everybody' ? {'access-control-allow-origin': '*'} : {}),
    ...(policy ? {'content-security-policy': policy.join('; ')} : {}),
  });
  context.res.end(rest === 'page.html' ? pageFor(name, asked) : readFileSync(path));
  return undefined;
}
