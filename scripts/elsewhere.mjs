/** A plain server beside that of the tests, which adds nothing to a page: a page that is not watched may be kept by the browser. */
import {createServer} from 'node:http';
import sirv from 'sirv';
import {ROOT} from './set-up.mjs';

/** The commands `elsewhere`: its address; `told`: what pages there have posted to /told since; `home`: they are closed, and the test's own page is in front again. */
export function elsewherePlugin() {
  // A page that must not be stored is never kept: it may be asked about instead.
  const serve = sirv(ROOT, {dev: true, dotfiles: false, setHeaders: (response) => response.setHeader('cache-control', 'no-cache')});
  const told = [];
  let server;
  const address = () => new Promise((resolve) => {
    server ??= createServer(async (request, response) => {
      if (request.method !== 'POST') return serve(request, response, () => response.writeHead(404).end());
      const parts = [];
      for await (const part of request) parts.push(part);
      told.push(JSON.parse(Buffer.concat(parts).toString()));
      return response.writeHead(204).end();
    });
    const said = () => resolve(`http://localhost:${server.address().port}/`);
    if (server.listening) said();
    else server.listen(0, said);
  });
  return {
    name: 'elsewhere',
    async executeCommand({command, session}) {
      if (command === 'elsewhere') return address();
      if (command === 'home') {
        const page = session.browser.getPage(session.id);
        const others = (await page.browser().pages()).filter((each) => each !== page && each.url().startsWith(`http://localhost:${server?.address().port}/`));
        await Promise.all(others.map((each) => each.close()));
        // What stands behind another window is drawn late or never.
        await page.bringToFront();
        return others.length;
      }
      return command === 'told' ? told : undefined;
    },
    serverStop() { server?.close(); },
  };
}
