// A form whose change the server works out; then the page's middle is replaced.

/**
 * `place` is what follows the address, so that a page can be kept as it is looked at; `isWhole` tells of a form that is being filled
 * in whether there is a question yet. A button asks in any case.
 */
export function asking(main, replaced, place = () => '', isWhole = () => true) {
  const form = main.querySelector('[data-levers]');
  let asked = 0, pending = '';
  const question = () => new URLSearchParams(new FormData(form)).toString();
  async function ask() {
    if (!form.reportValidity()) return;
    const address = new URL(form.action), about = question();
    address.search = about;
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
      // Somebody types on meanwhile: the answer would take it away, and another question follows.
      if (about !== question()) {
        pending = '';
        main.removeAttribute('aria-busy');
        return;
      }
      history.replaceState(null, '', address.pathname + address.search + place());
      replaced(page);
    } catch {
      if (mine === asked) form.submit();
    }
  }
  form.addEventListener('change', () => { if (isWhole(form)) ask(); });
  form.addEventListener('submit', (event) => { event.preventDefault(); ask(); });
}
