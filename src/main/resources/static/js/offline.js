/* Keeps pages that were opened before readable without a connection. */
(() => {
  'use strict';
  const worker = document.currentScript.dataset.worker;
  if (!('serviceWorker' in navigator)) return;
  navigator.serviceWorker.register(worker).then(() => navigator.serviceWorker.ready).then(known => {
    known.active.postMessage({ keep: location.href });
    document.documentElement.dataset.offline = 'on';
  });
})();
