/* A half-done inspection is kept on this telephone until it is sent, and sent once. */
(async () => {
  'use strict';
  const form = document.getElementById('inspecting');
  const list = document.getElementById('kept-list');
  if (!window.indexedDB || !(form || list)) return;
  const place = (form || list).dataset;
  const words = {};
  for (const one of document.querySelectorAll('#inspect-words > li')) words[one.dataset.word] = one.textContent;

  // Storage: one record for each inspection; every change is one transaction, so that two tabs never
  // write over each other.
  const opening = indexedDB.open('yearline', 1);
  opening.onupgradeneeded = () => opening.result.createObjectStore('inspections', { keyPath: 'id' });
  const done = request => new Promise((yes, no) => { request.onsuccess = () => yes(request.result); request.onerror = () => no(request.error); });
  const database = await done(opening);
  const store = mode => database.transaction('inspections', mode).objectStore('inspections');
  const others = new BroadcastChannel('yearline-inspections');
  const all = () => done(store('readonly').getAll());
  const forClaim = async () => (await all()).filter(kept => form && kept.claim === place.claim).sort((a, b) => b.changed - a.changed)[0];
  const change = async (id, how) => {
    const inside = store('readwrite');
    const kept = await done(inside.get(id));
    if (!kept) return null;
    how(kept);
    kept.changed = Date.now();
    await done(inside.put(kept));
    others.postMessage(id);
    return kept;
  };
  const forget = async id => { await done(store('readwrite').delete(id)); others.postMessage(id); };

  let mine = null;
  const begin = async () => {
    const kept = { id: crypto.randomUUID(), claim: place.claim, heading: place.heading, revision: place.revision,
      values: {}, photos: {}, registration: '', state: 'kept', said: '', changed: Date.now() };
    await done(store('readwrite').put(kept));
    if (navigator.storage && navigator.storage.persist) navigator.storage.persist();
    mine = kept.id;
  };

  // What the person sees of it
  const status = document.getElementById('kept');
  const show = (kept, saved) => {
    if (!status) return;
    status.hidden = !kept && !saved;
    status.querySelector('span').textContent = saved ? words.saved : kept ? words[kept.state] + (kept.said ? ' ' + kept.said : '') : '';
    status.dataset.state = saved ? 'saved' : kept ? kept.state : '';
    const way = status.querySelector('a');
    way.hidden = !saved && !(kept && kept.state === 'signed-out');
    way.href = saved || place.signIn;
    way.textContent = saved ? words['to-saved'] : words['to-sign-in'];
    status.querySelector('button').hidden = !kept || Boolean(saved);
  };
  const photosOf = (kept, feature) => {
    const note = document.querySelector('[data-photos="' + CSS.escape(feature) + '"]');
    const count = (kept && kept.photos[feature] || []).length;
    if (note) note.textContent = count ? words.photos.replace('#', count) : '';
  };
  const fields = () => [...form.querySelectorAll('[name^="o."]')];
  const fill = kept => {
    for (const field of fields()) {
      const feature = field.name.slice(2);
      if (!(feature in kept.values)) continue;
      if (field.type === 'radio') field.checked = field.value === kept.values[feature];
      else if (field !== document.activeElement) field.value = kept.values[feature];
    }
    Object.keys(kept.photos).forEach(feature => photosOf(kept, feature));
    const mark = form.querySelector('[name=registration]');
    if (mark && mark !== document.activeElement) mark.value = kept.registration;
  };

  // Sending: one at a time, whichever tab begins; the number makes sure that it is saved once.
  const body = kept => {
    const data = new FormData();
    new URL(kept.claim, location.href).searchParams.forEach((value, name) => data.append(name, value));
    if (!data.has('rev')) data.append('rev', kept.revision);
    for (const [feature, value] of Object.entries(kept.values)) if (value) data.append('o.' + feature, value);
    for (const [feature, files] of Object.entries(kept.photos)) files.forEach(file => data.append('photo.' + feature, file.blob, file.name));
    data.append('registration', kept.registration);
    data.append('on', new Date(kept.begun || kept.changed).toISOString().slice(0, 10));
    return data;
  };
  const token = async () => {
    const answer = await fetch(place.token, { headers: { Accept: 'application/json' }, cache: 'no-store' });
    const json = (answer.headers.get('Content-Type') || '').startsWith('application/json');
    return answer.ok && json ? answer.json() : null;
  };
  const explained = async answer => {
    const page = new DOMParser().parseFromString(await answer.text(), 'text/html');
    return [...page.querySelectorAll('main h1, main h1 + p, main .lead')].map(e => e.textContent.trim()).join('. ').slice(0, 300);
  };
  const sendOnce = async id => {
    const kept = await change(id, k => { if (k.state !== 'refused') k.state = 'sending'; k.said = ''; });
    if (!kept || kept.state !== 'sending') return;
    if (id === mine) show(kept);
    const end = async (state, said) => { const now = await change(id, k => { k.state = state; k.said = said || ''; }); if (id === mine) show(now); };
    try {
      const allowed = await token();
      if (!allowed) return await end('signed-out');
      const answer = await fetch(place.saved + id, { method: 'POST', headers: { [allowed.header]: allowed.token }, body: body(kept) });
      if (answer.ok && new URL(answer.url).pathname === place.saved + id) {
        await forget(id);
        if (id === mine) { mine = null; show(null, answer.url); }
      } else if (answer.status === 403 || answer.url.includes('/sign-in')) await end('signed-out');
      else if (answer.status >= 500 || answer.status === 429) await end('waiting');
      else await end('refused', await explained(answer));
    } catch (noConnection) {
      await end('waiting');
    }
  };
  const send = id => navigator.locks ? navigator.locks.request('yearline-send-' + id, { ifAvailable: true }, lock => lock && sendOnce(id)) : sendOnce(id);
  const sendWaiting = async () => { for (const kept of await all()) if (['waiting', 'sending', 'signed-out'].includes(kept.state)) await send(kept.id); await showList(); };

  const showList = async () => {
    if (!list) return;
    const kept = (await all()).sort((a, b) => b.changed - a.changed);
    list.hidden = kept.length === 0;
    list.querySelector('ul').replaceChildren(...kept.map(one => {
      const item = document.createElement('li');
      const way = document.createElement('a');
      way.href = one.claim;
      way.textContent = one.heading;
      item.append(way, ' ', words[one.state] || '');
      return item;
    }));
  };

  if (form) {
    // What a request for findings need not carry.
    document.body.addEventListener('htmx:configRequest', event => {
      const sent = event.detail.parameters;
      for (const name of [...Object.keys(sent)]) if (name.startsWith('photo.') || name === '_csrf' || name === 'registration' || sent[name] === '') delete sent[name];
    });
    for (const hidden of form.querySelectorAll('[data-with-script]')) hidden.hidden = false;
    const kept = await forClaim();
    if (kept) {
      mine = kept.id;
      const carried = new URL(location.href).searchParams.getAll('o').map(code => code.split(':'));
      const merged = await change(mine, k => carried.forEach(([feature, value]) => { k.values[feature] = value; }));
      fill(merged);
      show(merged);
      if (window.htmx) window.htmx.trigger(form, 'change');
    }
    const note = async how => { if (!mine) { await begin(); await change(mine, k => { k.begun = Date.now(); for (const f of fields()) if (f.type !== 'radio' || f.checked) k.values[f.name.slice(2)] = f.value; }); }
      show(await change(mine, k => { how(k); k.state = 'kept'; k.said = ''; })); };
    let turn = Promise.resolve();
    const inTurn = how => { turn = turn.then(() => note(how)); return turn; };
    const changed = async event => {
      const field = event.target;
      if (!field.name) return;
      if (field.name.startsWith('o.')) await inTurn(k => { k.values[field.name.slice(2)] = field.value; });
      else if (field.name === 'registration') await inTurn(k => { k.registration = field.value; });
      else if (field.type === 'file' && event.type === 'change') {
        const feature = field.name.slice('photo.'.length);
        const files = [...field.files].map(file => ({ name: file.name, blob: new Blob([file], { type: file.type }) }));
        await inTurn(k => { k.photos[feature] = files; });
        photosOf(await forClaim(), feature);
      }
    };
    form.addEventListener('change', changed);
    form.addEventListener('input', event => { if (event.target.type === 'text') changed(event); });
    form.querySelector('[data-save]').addEventListener('click', async event => {
      event.preventDefault();
      await inTurn(() => {});
      await change(mine, k => { k.state = 'sending'; });
      await send(mine);
    });
    status.querySelector('button').addEventListener('click', async () => { if (mine) await forget(mine); location.assign(place.claim); });
    others.onmessage = async event => {
      if (mine && event.data === mine) {
        const now = await forClaim();
        if (now) { fill(now); show(now); }
      }
    };
  }
  await showList();
  window.addEventListener('online', sendWaiting);
  setInterval(sendWaiting, 30000);
  await sendWaiting();
  document.documentElement.dataset.keeping = 'on';
})();
