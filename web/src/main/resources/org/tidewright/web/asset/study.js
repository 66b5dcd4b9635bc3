// Pages of one form and what follows from it: a change is worked out by the server, and the page's middle is replaced.
export function start(main, replaced) {
  const form = main.querySelector('[data-levers]');
  let asked = 0, pending = '';
  async function ask() {
    if (!form.reportValidity()) return;
    const address = new URL(form.action);
    address.search = new URLSearchParams(new FormData(form));
    // Enter in a field changes it and sends the form: one question is enough.
    if (address.href === pending) return;
    pending = address.href;
    const mine = ++asked;
    main.setAttribute('aria-busy', 'true');
    try {
      const answer = await fetch(address, { headers: { Accept: 'text/html' } });
      if (!answer.ok) throw new Error(answer.status);
      const page = new DOMParser().parseFromString(await answer.text(), 'text/html');
      if (mine !== asked) return;
      const open = [...main.querySelectorAll('details[id][open]')].map((each) => each.id);
      history.replaceState(null, '', address.pathname + address.search);
      for (const id of open) page.getElementById(id)?.setAttribute('open', '');
      replaced(page);
    } catch {
      if (mine === asked) form.submit();
    }
  }
  form.addEventListener('change', ask);
  form.addEventListener('submit', (event) => { event.preventDefault(); ask(); });
}
