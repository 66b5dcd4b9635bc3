// Readings told one by one: under the pointer, or with the left and right arrow keys. Other days are shown in place: by their
// links, by plus, minus, Page Up and Page Down, or by drawing over the days to be looked at.
const DAY = 86400000, LEAST_DRAWN = 12;

export function start(main, replaced) {
  const plot = main.querySelector('[data-readings]'), line = main.querySelector('[data-read-line]');
  if (!plot) return;
  const dots = [...plot.querySelectorAll('.dot')];
  let chosen = dots.length - 1;

  function choose(index) {
    dots[chosen]?.classList.remove('chosen');
    chosen = Math.max(0, Math.min(dots.length - 1, index));
    dots[chosen].classList.add('chosen');
    line.textContent = dots[chosen].dataset.words;
  }

  async function show(href, remembered = true) {
    main.setAttribute('aria-busy', 'true');
    try {
      const answer = await fetch(href);
      const page = new DOMParser().parseFromString(await answer.text(), 'text/html');
      if (!page.querySelector('[data-readings]')) throw new Error('no chart');
      if (remembered) history.pushState(null, '', href);
      replaced(page);
    } catch {
      location.assign(href);
    }
  }

  for (const link of main.querySelectorAll('.spans a')) {
    link.addEventListener('click', (event) => {
      if (event.ctrlKey || event.metaKey || event.shiftKey || event.button) return;
      event.preventDefault();
      plot.focus({ preventScroll: true });
      show(link.href);
    });
  }
  const here = location.pathname + location.search;
  window.onpopstate = () => { if (location.pathname + location.search !== here) show(location.href, false); };

  plot.addEventListener('keydown', (event) => {
    if (event.ctrlKey || event.metaKey || event.altKey) return;
    const step = { ArrowLeft: -1, ArrowRight: 1, Home: -dots.length, End: dots.length }[event.key];
    const way = main.querySelector(`.spans a[data-way="${CSS.escape(event.key === '=' ? '+' : event.key)}"]`);
    if (step !== undefined && dots.length) choose(chosen + step);
    else if (way) show(way.href);
    else return;
    event.preventDefault();
  });
  plot.addEventListener('pointermove', (event) => {
    let nearest = -1, least = Infinity;
    dots.forEach((dot, index) => {
      const mark = dot.querySelector('.mark').getBoundingClientRect();
      const away = Math.abs(mark.x + mark.width / 2 - event.clientX);
      if (away < least) { least = away; nearest = index; }
    });
    if (nearest >= 0 && nearest !== chosen) choose(nearest);
  });
  if (dots.length) dots[chosen].classList.add('chosen');
  draw(plot, show);
}

/** A finger scrolls the page; a mouse or a pen draws over the days to look at. */
function draw(plot, show) {
  const chart = plot.querySelector('svg'), first = Date.parse(plot.dataset.first), end = Date.parse(plot.dataset.end);
  let from = null, drawn = null;

  const share = (event) => {
    const box = chart.getBoundingClientRect();
    return Math.max(0, Math.min(1, (event.clientX - box.x) / box.width));
  };
  const day = (at) => new Date(first + Math.floor(at * (end - first) / DAY) * DAY).toISOString().slice(0, 10);
  const stop = () => { drawn?.remove(); from = drawn = null; };

  plot.addEventListener('pointerdown', (event) => {
    if (event.pointerType === 'touch' || event.button) return;
    from = share(event);
    plot.setPointerCapture(event.pointerId);
  });
  plot.addEventListener('pointermove', (event) => {
    if (from === null) return;
    if (!drawn) {
      drawn = document.createElementNS('http://www.w3.org/2000/svg', 'rect');
      drawn.setAttribute('class', 'drawn');
      drawn.setAttribute('height', '100%');
      chart.append(drawn);
    }
    const to = share(event);
    drawn.setAttribute('x', `${100 * Math.min(from, to)}%`);
    drawn.setAttribute('width', `${100 * Math.abs(to - from)}%`);
  });
  plot.addEventListener('pointerup', (event) => {
    if (from === null) return;
    const to = share(event), begun = from, wide = Math.abs(to - begun) * chart.getBoundingClientRect().width;
    stop();
    if (wide < LEAST_DRAWN) return;
    const last = plot.dataset.last, until = day(Math.min(0.999999, Math.max(begun, to)));
    show(`${plot.dataset.address}?from=${day(Math.min(begun, to))}&to=${until > last ? last : until}#readings`);
  });
  plot.addEventListener('pointercancel', stop);
}
