// Keeps one version of the site whole. The build fills in the version and the files with their SHA-256.
"use strict";

const version = "__VERSION__";
const files = {/* FILES */};

const home = new URL("./", self.location);
const family = `spraywright ${home.pathname} `; // another copy may live in another folder of the same host
const cacheName = family + version;

async function digest(bytes) {
  const sum = new Uint8Array(await crypto.subtle.digest("SHA-256", bytes));
  return btoa(String.fromCharCode(...sum));
}

// A file that is not the one listed stops the whole version: half of one and half of another must never meet.
async function keep(cache, name, sum) {
  const url = new URL(name, home);
  const answer = await fetch(url, { cache: "no-cache" });
  if (!answer.ok) throw new Error(`${name}: ${answer.status}`);
  const bytes = await answer.arrayBuffer();
  if ((await digest(bytes)) !== sum) throw new Error(`${name} is of another version`);
  // The headers are kept, without those that speak of the bytes on the wire.
  const headers = new Headers(answer.headers);
  headers.delete("Content-Encoding");
  headers.delete("Content-Length");
  await cache.put(url, new Response(bytes, { headers }));
}

// A browser that was short of room may have thrown files away: what the host still has of this version is fetched again.
let refilling;
const refill = (cache) => (refilling ??= (async () => {
  for (const [name, sum] of Object.entries(files)) if (!(await cache.match(new URL(name, home)))) await keep(cache, name, sum);
})().catch(() => {}).finally(() => { refilling = undefined; }));

self.addEventListener("install", (event) => {
  event.waitUntil((async () => {
    const cache = await caches.open(cacheName);
    try {
      await Promise.all(Object.entries(files).map(([name, sum]) => keep(cache, name, sum)));
    } catch (error) {
      await caches.delete(cacheName);
      throw error;
    }
  })());
});

self.addEventListener("activate", (event) => {
  event.waitUntil((async () => {
    for (const name of await caches.keys()) {
      if (name.startsWith(family) && name !== cacheName) await caches.delete(name);
    }
    await self.clients.claim();
  })());
});

self.addEventListener("message", (event) => {
  if (event.data === "use") self.skipWaiting();
});

self.addEventListener("fetch", (event) => {
  const url = new URL(event.request.url);
  if (event.request.method !== "GET" || url.origin !== home.origin || !url.pathname.startsWith(home.pathname)) return;
  const name = url.pathname.slice(home.pathname.length).replace(/(^|\/)$/, "$1index.html");
  if (!(name in files)) return;
  event.respondWith((async () => {
    const cache = await caches.open(cacheName);
    const kept = await cache.match(new URL(name, home));
    if (kept) return kept;
    event.waitUntil(refill(cache));
    // Pages trust a core that comes from here; of all else they see themselves that it is of their version.
    return fetch(event.request, name.endsWith(".wasm") ? { integrity: "sha256-" + files[name] } : {});
  })());
});
