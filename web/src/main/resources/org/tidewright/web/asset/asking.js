// A form whose change the server works out; then the page's middle is replaced.

/** What follows the address, so that a page can be kept as it is looked at; nothing unless a page says so. */
export function asking(main, replaced, place = () => '') {
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
      history.replaceState(null, '', address.pathname + address.search + place());
      replaced(page);
    } catch {
      if (mine === asked) form.submit();
    }
  }
  form.addEventListener('change', ask);
  form.addEventListener('submit', (event) => { event.preventDefault(); ask(); });
}
