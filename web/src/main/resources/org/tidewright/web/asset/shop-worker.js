// Keeps the page “At the shop” of one system, its list and the files of its build, and answers with them where there is no
// network. Nothing else is kept or answered: not another page, nothing that changes anything.
const BUILD = new URL('.', location).pathname;
const PAGE = new URL(registration.scope).pathname;
const LIST = `${PAGE}.json`;
const OURS = `tidewright ${PAGE} `;
const CACHE = OURS + BUILD;
/** A phone deep in a shop may wait for ever: then what is kept is better. */
const PATIENCE_MS = 4000;
/** A proxy answers so for a program that is away. */
const AWAY = [502, 503, 504];

const isOurs = ({ origin, pathname }) => origin === location.origin
  && (pathname === PAGE || pathname === LIST || pathname.startsWith(BUILD));
/** A page that answers a question of its own is not the one to keep. */
const isPlain = ({ searchParams }) => [...searchParams.keys()].every((key) => key === 'units');

addEventListener('install', () => skipWaiting());
addEventListener('activate', (event) => event.waitUntil(begin()));
addEventListener('message', (event) => event.waitUntil(keep(event)));
addEventListener('fetch', (event) => {
  const url = new URL(event.request.url);
  if (event.request.method === 'GET' && isOurs(url)) event.respondWith(answer(event, url));
});

/** Lets go what older builds kept of this page. */
async function begin() {
  const old = (await caches.keys()).filter((name) => name.startsWith(OURS) && name !== CACHE);
  await Promise.all(old.map((name) => caches.delete(name)));
  await clients.claim();
}

async function keep({ data, ports }) {
  const cache = await caches.open(CACHE);
  try {
    await cache.addAll(data.keep.filter((address) => isOurs(new URL(address, location))));
  } catch { /* no network: what was kept before counts */ }
  const held = await Promise.all(data.keep.map((address) => cache.match(address)));
  ports[0].postMessage({ held: held.every(Boolean) });
}

/** From the network; from what is kept where it does not answer. */
async function answer(event, url) {
  const cache = await caches.open(CACHE), kept = await cache.match(url.pathname);
  try {
    const fresh = await (kept ? inTime(fetch(event.request)) : fetch(event.request));
    if (kept && AWAY.includes(fresh.status)) return marked(kept);
    if (fresh.ok && isPlain(url)) event.waitUntil(cache.put(url.pathname, fresh.clone()));
    return fresh;
  } catch (gone) {
    if (kept) return marked(kept);
    throw gone;
  }
}

function inTime(fetching) {
  return Promise.race([fetching, new Promise((_, reject) => { setTimeout(reject, PATIENCE_MS, new Error('too slow')); })]);
}

/** So that the page can say that it is old. */
function marked(kept) {
  const headers = new Headers(kept.headers);
  headers.set('Tidewright-Kept', 'yes');
  return new Response(kept.body, { status: kept.status, headers });
}
