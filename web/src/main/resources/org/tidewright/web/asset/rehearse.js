// The rehearse page: scrubbing and playing a power cut, and asking for another one.
import { account, fit, json, keys, level, number, show, stateAt } from './drawing.js';
import { asking } from './asking.js';

const PLAYING_MS = 26000;

export function start(main, replaced) {
  const drawing = main.querySelector('[data-drawing]');
  fit(drawing);
  const water = json(main, '[data-water]'), axis = json(main, '[data-curves]');
  const scrub = main.querySelector('[data-scrub]'), play = main.querySelector('[data-play]');
  const aside = main.querySelector('.account');
  let share = 0, playing = false;

  const timeAt = (u) => {
    if (!axis.first_s) return u * axis.length_s;
    if (u <= axis.break_at) return u / axis.break_at * axis.first_s;
    if (u < axis.break_at + axis.break_width) return axis.first_s;
    return axis.first_s + (u - axis.break_at - axis.break_width) / (1 - axis.break_at - axis.break_width)
      * (axis.length_s - axis.first_s);
  };
  const shareOf = (t) => {
    if (!axis.first_s) return t / axis.length_s;
    if (t <= axis.first_s) return t / axis.first_s * axis.break_at;
    return axis.break_at + axis.break_width
      + (t - axis.first_s) / (axis.length_s - axis.first_s) * (1 - axis.break_at - axis.break_width);
  };
  const words = (t) => {
    if (t < 0.5) return 'power on';
    if (t < 59.5) return `${Math.round(t)} s`;
    const whole = Math.round(t);
    if (t < 600) return `${Math.floor(whole / 60)} min ${String(whole % 60).padStart(2, '0')} s`;
    const minutes = Math.round(t / 60);
    return `${Math.floor(minutes / 60)} h ${String(minutes % 60).padStart(2, '0')} min`;
  };
  const sample = (curve, t) => {
    const time = curve.time_s;
    let low = 0, high = time.length - 1;
    if (t >= time[high]) low = high;
    else while (high - low > 1) { const mid = (low + high) >> 1; if (time[mid] <= t) low = mid; else high = mid; }
    const next = Math.min(low + 1, time.length - 1);
    const part = next === low ? 0 : (t - time[low]) / (time[next] - time[low]);
    const at = (series) => series[low] === null ? null : series[low] + ((series[next] ?? series[low]) - series[low]) * part;
    return { low: at(curve.low), middle: at(curve.middle), high: at(curve.high) };
  };
  const sounding = (value, doubt, unit) =>
    `<span class="sounding">${value}${doubt ? `&nbsp;<span class="pm">${doubt}</span>` : ''}<span class="u">${unit}</span></span>`;
  const fromLimit = (curve, value) => {
    const away = (limit) => (limit.forbidden_below ? value - limit.value : limit.value - value);
    const passed = curve.limits.filter((limit) => away(limit) < 0);
    if (passed.length) {
      const worst = passed.reduce((a, b) => (away(a) > away(b) ? a : b));
      const edge = number(worst.value, Number.isInteger(worst.value) ? 0 : curve.decimals);
      return `${worst.forbidden_below ? 'under' : 'over'} ${edge} ${curve.unit}: ${worst.words}`;
    }
    if (!curve.limits.length) return '';
    const drawn = curve.limits.filter((limit) => limit.value >= curve.bottom && limit.value <= curve.top);
    const nearest = (drawn.length ? drawn : curve.limits).reduce((a, b) => (away(a) <= away(b) ? a : b));
    const side = nearest.forbidden_below ? 'above' : 'below';
    return `${number(away(nearest), curve.decimals)} ${curve.unit} ${side} the limit`;
  };

  function draw() {
    const t = timeAt(share), spoken = [words(t)];
    main.querySelector('[data-clock]').textContent = words(t);
    if (water) {
      const state = stateAt(water, t);
      show(drawing, water, state);
      account(aside, state);
      keys(main.querySelector('[data-keys]'), water, state);
    }
    for (const curve of axis.curves) {
      const now = sample(curve, t), label = main.querySelector(`[data-curve="${curve.id}"]`);
      const plot = main.querySelector(`[data-plot="${curve.id}"]`);
      const error = (now.high - now.low) / 2 / 1.645, least = Math.pow(10, -curve.decimals);
      const doubt = curve.standard_error ? curve.standard_error : error > least / 10 ? `±\u00a0${number(Math.max(error, least), curve.decimals)}` : '';
      const value = sounding(number(now.middle, curve.decimals), doubt, curve.unit);
      label.querySelector('[data-value]').innerHTML = value;
      const x = `${100 * share}%`;
      const cursor = plot.querySelector('[data-cursor]'), dot = plot.querySelector('[data-dot]');
      cursor.setAttribute('x1', x);
      cursor.setAttribute('x2', x);
      dot.setAttribute('cx', x);
      const height = 112, held = Math.max(curve.bottom, Math.min(curve.top, now.middle));
      dot.setAttribute('cy', 8 + (height - 16) * (1 - (held - curve.bottom) / (curve.top - curve.bottom)));
      let note;
      if (curve.room) {
        const state = stateAt(water, t);
        note = state.wet ? 'over the rim' : `${level(water, water.rim_mm - state.sump, true)} below the rim`;
        room(now.middle, doubt, curve, state);
        spoken.push(now.middle < 0
          ? `${number(-now.middle, 0)} ${curve.unit} on the floor`
          : `${number(now.middle, 0)} ${curve.unit} of room in the sump`);
      } else {
        note = fromLimit(curve, now.middle);
        spoken.push(`${curve.title} ${number(now.middle, curve.decimals)} ${curve.unit}`);
      }
      label.querySelector('[data-note]').textContent = note;
    }
    scrub.value = Math.round(1000 * share);
    scrub.setAttribute('aria-valuetext', spoken.join('; '));
  }

  function room(value, doubt, curve, state) {
    const wet = value < 0, shown = sounding(number(Math.abs(value), 1), doubt, curve.unit);
    const head = aside.querySelector('[data-room-head]');
    if (!head) return;
    head.textContent = wet ? 'On the floor' : 'Room left in the sump';
    aside.querySelector('[data-room]').innerHTML = wet ? `<span class="alarm">${shown}</span>` : shown;
    aside.querySelector('[data-room-note]').textContent = wet
      ? 'The sump stands at its rim.'
      : `${level(water, water.rim_mm - state.sump, true)} below the rim at its highest part`;
  }

  function stop() {
    playing = false;
    play.textContent = share >= 1 ? 'Play again' : 'Play the cut';
  }
  play.addEventListener('click', () => {
    if (playing) return stop();
    if (share >= 1) share = 0;
    playing = true;
    play.textContent = 'Hold';
    let last = performance.now();
    const step = (now) => {
      if (!playing || !play.isConnected) return;
      share = Math.min(1, share + (now - last) / PLAYING_MS);
      last = now;
      draw();
      if (share < 1) requestAnimationFrame(step); else stop();
    };
    requestAnimationFrame(step);
  });
  scrub.addEventListener('input', () => {
    share = scrub.value / 1000;
    stop();
    draw();
  });

  // Another cut: the server rehearses it; only the page's middle changes, and the moment being looked at stays.
  asking(main, replaced, () => (share ? `#at=${Math.round(timeAt(share))}` : ''));

  const at = /^#at=(\d+)/.exec(location.hash);
  if (at) share = Math.min(1, shareOf(+at[1]));
  draw();
}
