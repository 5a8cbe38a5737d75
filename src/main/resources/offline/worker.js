/* Keeps what was opened on this telephone readable without a connection: the pages of expected
   configurations and inspections as anybody may see them, never as somebody who has signed in, and
   never what answers a form that stores. SHELL, ROOT and WORDS are written above by the server. */
'use strict';
const PAGES = 'yearline-pages';
const PICTURES = 'yearline-pictures';
const FILES = 'yearline-files ' + SHELL.join(' ');
const MOST_PAGES = 30;
const HEADERS = ['Content-Security-Policy', 'X-Content-Type-Options', 'Referrer-Policy', 'X-Frame-Options'];

self.addEventListener('install', event => event.waitUntil(
  caches.open(FILES).then(files => files.addAll(SHELL)).then(() => self.skipWaiting())));

self.addEventListener('activate', event => event.waitUntil((async () => {
  for (const name of await caches.keys()) if (name.startsWith('yearline-files') && name !== FILES) await caches.delete(name);
  await self.clients.claim();
})()));

self.addEventListener('message', event => { if (event.data.keep) event.waitUntil(keep(new URL(event.data.keep))); });

self.addEventListener('fetch', event => {
  const request = event.request;
  const url = new URL(request.url);
  if (url.origin !== location.origin) return;
  if (request.method === 'POST' && url.pathname === ROOT + '/sign-out') event.waitUntil(forget());
  if (request.method !== 'GET') return;
  if (request.mode === 'navigate') event.respondWith(page(event, url));
  else if (SHELL.includes(url.pathname) || url.pathname.startsWith(ROOT + '/pictures/')) event.respondWith(file(request));
});

/** Pages of a question; what was seen is kept by the page itself, not here. */
function bare(url) {
  const path = url.pathname;
  const asks = url.searchParams.has('serial') || url.searchParams.has('variant');
  if (!asks || (path !== ROOT + '/expected' && path !== ROOT + '/inspect')) return null;
  const kept = new URL(url);
  for (const name of [...kept.searchParams.keys()]) if (name === 'o' || name.startsWith('o.')) kept.searchParams.delete(name);
  kept.hash = '';
  return kept.href;
}

async function page(event, url) {
  try {
    const answer = await fetch(event.request);
    if (answer.ok && bare(url)) event.waitUntil(keep(url));
    return answer;
  } catch (noConnection) {
    const address = bare(url);
    const kept = address && await (await caches.open(PAGES)).match(address);
    return kept || contents();
  }
}

async function file(request) {
  return await caches.match(request) || fetch(request);
}

/** Asks for a page as a visitor, so that nobody is named in what is kept. */
async function keep(url) {
  const address = bare(url);
  if (!address) return;
  const answer = await fetch(address, { credentials: 'omit' });
  if (answer.redirected || answer.status === 401) return forget();
  if (!answer.ok) return;
  const text = await answer.text();
  const issue = (text.match(/data-issue="([^"]*)"/) || ['', ''])[1];
  const said = WORDS.kept.replace('{0}', new Date().toISOString().slice(0, 16).replace('T', ' ')).replace('{1}', issue);
  const marked = text.replace(/<main[^>]*>/, '$&<p class="notice is-kept" role="status">' + said + '</p>');
  const headers = { 'Content-Type': 'text/html; charset=utf-8' };
  for (const name of HEADERS) if (answer.headers.get(name)) headers[name] = answer.headers.get(name);
  const pages = await caches.open(PAGES);
  await pages.delete(address);
  await pages.put(address, new Response(marked, { headers }));
  const old = await pages.keys();
  for (const one of old.slice(0, Math.max(0, old.length - MOST_PAGES))) await pages.delete(one);
  await keepPictures(text);
}

async function keepPictures(text) {
  const pictures = await caches.open(PICTURES);
  for (const found of new Set([...text.matchAll(/src="([^"]*\/pictures\/[^"]*)"/g)].map(m => m[1].replaceAll('&amp;', '&')))) {
    if (await pictures.match(found)) continue;
    const answer = await fetch(found, { credentials: 'omit' });
    if (answer.ok && !answer.redirected) await pictures.put(found, answer);
  }
}

async function forget() {
  await caches.delete(PAGES);
  await caches.delete(PICTURES);
}

const escaped = text => text.replace(/[&<>"]/g, sign => '&#' + sign.charCodeAt(0) + ';');

/** What can be read without a connection. */
async function contents() {
  const kept = await (await caches.open(PAGES)).keys();
  const lines = kept.map(one => { const url = new URL(one.url); return '<li><a href="' + escaped(url.pathname + url.search) + '">' + escaped(decodeURIComponent(url.pathname.slice(ROOT.length + 1) + ': ' + [...url.searchParams.values()].join(', '))) + '</a></li>'; });
  return new Response('<!DOCTYPE html><html lang="en"><head><meta charset="utf-8"><meta name="viewport" content="width=device-width, initial-scale=1"><title>' + WORDS.title
    + '</title><link rel="stylesheet" href="' + SHELL[0] + '"></head><body><main><h1>' + WORDS.title + '</h1><p>' + WORDS.text + '</p><ul class="rows">' + lines.reverse().join('') + '</ul></main></body></html>',
    { status: 503, headers: { 'Content-Type': 'text/html; charset=utf-8', 'Content-Security-Policy': "default-src 'self'" } });
}
