/* Keeps the page of tonight on the phone, so that it opens without the network. Browsers allow this over https, and on the
   machine itself. */
'use strict';

var CACHE = 'bench';

function kept(request, answer) {
  if (answer.ok && !answer.redirected) {
    var copy = answer.clone();
    return caches.open(CACHE).then(function (cache) { return cache.put(request, copy); }).then(function () { return answer; });
  }
  // Not paired any more: what was kept is not for whoever has the phone now.
  return answer.redirected ? caches.delete(CACHE).then(function () { return answer; }) : answer;
}

self.addEventListener('install', function () { self.skipWaiting(); });
self.addEventListener('activate', function (event) { event.waitUntil(self.clients.claim()); });
self.addEventListener('fetch', function (event) {
  var address = new URL(event.request.url);
  if (event.request.method !== 'GET' || address.origin !== self.location.origin) { return; }
  if (address.pathname === '/tonight') {
    event.respondWith(fetch(event.request).then(function (answer) { return kept('/tonight', answer); }, function () {
      return caches.match('/tonight').then(function (page) { return page || Response.error(); });
    }));
  } else if (address.pathname.indexOf('/look/') === 0) {
    event.respondWith(caches.match(event.request).then(function (found) {
      return found || fetch(event.request).then(function (answer) { return kept(event.request, answer); });
    }));
  }
});
