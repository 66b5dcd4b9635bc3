// Says that a sheet is on its way: one with many rows takes some seconds.
export function start(main) {
  const lead = main.querySelector('[data-busy]');
  if (!lead) return;
  const told = lead.textContent;
  for (const form of main.querySelectorAll('form')) {
    form.addEventListener('submit', () => {
      main.setAttribute('aria-busy', 'true');
      lead.textContent = lead.dataset.busy;
    });
  }
  // Back from the next page: the browser may show this one as it was left.
  addEventListener('pageshow', () => {
    main.removeAttribute('aria-busy');
    lead.textContent = told;
  });
}
