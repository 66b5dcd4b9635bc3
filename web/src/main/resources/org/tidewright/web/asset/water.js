// Readings told one by one: under the pointer, or with the left and right arrow keys.
export function start(main) {
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

  plot.addEventListener('keydown', (event) => {
    const step = { ArrowLeft: -1, ArrowRight: 1, Home: -dots.length, End: dots.length }[event.key];
    if (step === undefined || !dots.length) return;
    choose(chosen + step);
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
}
