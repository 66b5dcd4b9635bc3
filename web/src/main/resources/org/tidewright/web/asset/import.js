// Says that a sheet is on its way, and sends it once.
export function start(main) {
  const lead = main.querySelector('[data-busy]');
  if (!lead) return;
  for (const form of main.querySelectorAll('form')) {
    form.addEventListener('submit', (event) => {
      if (main.getAttribute('aria-busy')) { event.preventDefault(); return; }
      main.setAttribute('aria-busy', 'true');
      lead.textContent = lead.dataset.busy;
    });
  }
  // Back from the next page: the browser may show this one as it was left.
  addEventListener('pageshow', () => main.removeAttribute('aria-busy'));
}
