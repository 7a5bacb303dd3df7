/** Keeps the calculator for offline use. Bundled by scripts/site.mjs, which fills in the list of what is kept. */
import {cleanupOutdatedCaches, precacheAndRoute} from 'workbox-precaching';
import {registerRoute} from 'workbox-routing';
import {CacheFirst} from 'workbox-strategies';

cleanupOutdatedCaches();
precacheAndRoute(self.__WB_MANIFEST);
// The guild's other shots: kept once they were looked at.
registerRoute(({url, sameOrigin}) => sameOrigin && /\/shots\/[^/]+\.jpg$/.test(url.pathname), new CacheFirst({cacheName: 'lampblack-shots'}));

// Once a page was opened, it works without the network from then on, the first visit included.
self.addEventListener('install', () => { self.skipWaiting(); });
self.addEventListener('activate', (event) => { event.waitUntil(self.clients.claim()); });
