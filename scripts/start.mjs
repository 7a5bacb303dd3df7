/** `npm start`: sets up, builds and serves the demo. PORT chooses another first port. */
import {existsSync} from 'node:fs';
import {createServer} from 'node:http';
import {ROOT, fail, installPackages, run} from './set-up.mjs';

installPackages();
console.log('Building …');
run('node', ['scripts/build.mjs']);
if (!existsSync(`${ROOT}site/index.html`)) fail('The build left no demo page; please report the lines above.');

const {default: sirv} = await import('sirv');
const serve = sirv(`${ROOT}site`, {dev: true});
const first = Number(process.env.PORT) || 4173;

listen(first);

/** Takes the next free port, so that a second copy still starts. */
function listen(port) {
  const server = createServer((request, response) => serve(request, response, () => {
    response.writeHead(404, {'content-type': 'text/plain; charset=utf-8'}).end('There is no such page here.');
  }));
  server.once('error', (error) => {
    if (error.code === 'EADDRINUSE' && port < first + 20) listen(port + 1);
    else fail(`The demo could not be served on port ${port}: ${error.message}`);
  });
  server.listen(port, () => console.log(`\nThe demo is at  http://localhost:${port}/   (Ctrl+C stops it)\n`));
}
