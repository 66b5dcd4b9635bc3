// A page that is worked out again while one types, without touching the fields.
const PAUSE_MS = 350;

/** Follows a form; query(form) says what of it is asked for. */
export function following(main, form, query) {
  let timer = 0, asked = 0, last = location.search;

  /** Takes over everything but the fields: they stay as they are being typed. */
  function take(page) {
    for (const part of main.querySelectorAll('[data-part]')) {
      const fresh = page.getElementById(part.id);
      if (!fresh || fresh.innerHTML === part.innerHTML) continue;
      for (const open of part.querySelectorAll('details[id][open]')) fresh.querySelector(`#${open.id}`)?.setAttribute('open', '');
      part.replaceChildren(...fresh.childNodes);
    }
    for (const field of form.querySelectorAll('input')) {
      for (const name of ['aria-invalid', 'aria-describedby']) {
        const value = page.getElementById(field.id)?.getAttribute(name);
        if (value) field.setAttribute(name, value); else field.removeAttribute(name);
      }
    }
    const units = document.querySelectorAll('.units a');
    page.querySelectorAll('.units a').forEach((link, i) => { units[i].href = link.getAttribute('href'); });
  }

  async function ask() {
    clearTimeout(timer);
    const address = new URL(form.action);
    address.search = query(form);
    if (address.search === last) return;
    last = address.search;
    const mine = ++asked;
    try {
      const answer = await fetch(address, { headers: { Accept: 'text/html' } });
      if (!answer.ok && answer.status !== 422) throw new Error(answer.status);
      const page = new DOMParser().parseFromString(await answer.text(), 'text/html');
      if (mine !== asked) return;
      history.replaceState(null, '', address.pathname + address.search);
      take(page);
    } catch {
      if (mine !== asked) return;
      last = '';
      main.querySelector('#lead').textContent = 'Not worked out just now: the program does not answer. What you typed stays here.';
    }
  }

  form.addEventListener('input', () => { clearTimeout(timer); timer = setTimeout(ask, PAUSE_MS); });
  form.addEventListener('change', ask);
  form.addEventListener('submit', async (event) => {
    event.preventDefault();
    await ask();
    const lead = main.querySelector('#lead');
    if (lead.getBoundingClientRect().top < 0) lead.scrollIntoView();
  });
}
