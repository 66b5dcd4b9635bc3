// The plan's editor: line numbers follow the text, faults stand beside their lines while one types.

const PAUSE_MS = 400;

export function start(main) {
  const form = main.querySelector('[data-editor]');
  const text = form.querySelector('textarea'), gutter = form.querySelector('[data-gutter]');
  const list = form.querySelector('[data-faults]'), status = form.querySelector('[data-status]');
  const kept = text.value, based = status.textContent;
  let faults = [...list.querySelectorAll('a[data-line]')].map((link) => ({ line: +link.dataset.line }));
  let timer = 0, asked = 0, sending = false;

  function rows() {
    const count = text.value.split('\n').length;
    text.rows = count;
    while (gutter.children.length > count) gutter.lastChild.remove();
    while (gutter.children.length < count) {
      const item = document.createElement('li'), number = gutter.children.length + 1;
      item.id = `line-${number}`;
      item.append(Object.assign(document.createElement('span'), { textContent: number }));
      gutter.append(item);
    }
  }

  function beside() {
    for (const item of gutter.children) {
      item.classList.remove('faulty');
      item.querySelector('em')?.remove();
    }
    for (const fault of faults) {
      const item = gutter.children[fault.line - 1];
      if (!item) continue;
      if (!item.classList.contains('faulty') && fault.found) {
        item.append(Object.assign(document.createElement('em'), {
          textContent: `found ${fault.found}; expected ${fault.expected}`,
        }));
      }
      item.classList.add('faulty');
    }
  }

  function above() {
    list.replaceChildren();
    if (!faults.length) return;
    const head = Object.assign(document.createElement('h2'), { className: 'head', textContent: 'To mend' });
    const items = document.createElement('ol');
    for (const fault of faults) {
      const item = document.createElement('li'), link = document.createElement('a');
      link.href = `#line-${fault.line}`;
      link.dataset.line = fault.line;
      link.dataset.column = fault.column;
      link.textContent = `Line ${fault.line}`;
      item.append(link, Object.assign(document.createElement('span'), { textContent: fault.sentence }));
      items.append(item);
    }
    list.append(head, items);
  }

  async function check() {
    const mine = ++asked;
    try {
      const answer = await fetch(form.dataset.check, { method: 'POST', body: new URLSearchParams(new FormData(form)) });
      if (!answer.ok) throw new Error(answer.status);
      const told = await answer.json();
      if (mine !== asked) return;
      faults = told.faults;
      beside();
      above();
      const count = faults.length;
      status.classList.toggle('wrong', count > 0);
      status.textContent = count ? `${count} to mend`
        : text.value === kept ? based : `${based}; changed, and it reads without fault`;
    } catch {
      status.textContent = 'Not checked just now: the program does not answer. Your text stays here.';
    }
  }

  text.addEventListener('input', () => {
    rows();
    beside();
    clearTimeout(timer);
    timer = setTimeout(check, PAUSE_MS);
  });
  // Tab must leave the field, or the keyboard would be caught in it; two spaces come from the space bar.
  list.addEventListener('click', (event) => {
    const link = event.target.closest('a[data-line]');
    if (!link) return;
    event.preventDefault();
    const lines = text.value.split('\n'), line = Math.min(+link.dataset.line, lines.length);
    const before = lines.slice(0, line - 1).reduce((sum, one) => sum + one.length + 1, 0);
    const column = Math.max(0, Math.min(lines[line - 1].length, (+link.dataset.column || 1) - 1));
    text.focus({ preventScroll: true });
    text.setSelectionRange(before + column, before + lines[line - 1].length);
    gutter.children[line - 1]?.scrollIntoView({ block: 'center' });
  });
  form.addEventListener('submit', () => { sending = true; });
  addEventListener('beforeunload', (event) => {
    if (!sending && text.value !== kept) event.preventDefault();
  });
  rows();
  if (faults.length) check();
}
