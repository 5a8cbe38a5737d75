// Forms that a device fills in. They are hidden unless this browser can make and use passkeys here;
// the forms for passwords work without any of this.

const able = window.isSecureContext && window.PublicKeyCredential?.parseCreationOptionsFromJSON;

const isSite = (site) => location.hostname === site || location.hostname.endsWith('.' + site);

for (const form of document.querySelectorAll('form[data-passkey]')) {
  if (able && isSite(form.dataset.passkey)) {
    form.hidden = false;
    document.querySelectorAll('[data-without-passkeys]').forEach((text) => { text.hidden = true; });
    form.querySelector('button[type=button]')?.addEventListener('click', () => fill(form));
  }
}

async function fill(form) {
  const button = form.querySelector('button');
  const trouble = form.querySelector('.fault');
  trouble.textContent = '';
  button.disabled = true;
  try {
    form.elements.credential.value = JSON.stringify(await answer(form));
    form.submit();
  } catch (e) {
    const why = { NotAllowedError: 'no', InvalidStateError: 'known' }[e.name] ?? 'failed';
    trouble.textContent = form.dataset[why];
    button.disabled = false;
  }
}

async function answer(form) {
  const asked = form.dataset.question;
  if (asked) {
    const publicKey = PublicKeyCredential.parseCreationOptionsFromJSON(JSON.parse(asked));
    return navigator.credentials.create({ publicKey });
  }
  const body = new URLSearchParams({ _csrf: form.elements._csrf.value });
  const response = await fetch(form.action + '/question', { method: 'POST', body });
  if (!response.ok) throw new Error(response.statusText);
  const publicKey = PublicKeyCredential.parseRequestOptionsFromJSON(await response.json());
  return navigator.credentials.get({ publicKey });
}
