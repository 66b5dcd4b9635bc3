// Less and more beside the next reading: one tap each.
export function start(main) {
  const form = main.querySelector('[data-quick]');
  if (!form) return;
  const value = form.querySelector('#quick-value'), step = Number(value.dataset.step);
  const decimals = (value.dataset.step.split('.')[1] ?? '').length;

  function bump(times) {
    const now = Number.parseFloat(value.value.replace(',', '.'));
    value.value = Math.max(0, (Number.isFinite(now) ? now : 0) + times * step).toFixed(decimals);
  }

  form.querySelector('[data-less]').addEventListener('click', () => bump(-1));
  form.querySelector('[data-more]').addEventListener('click', () => bump(1));
}
