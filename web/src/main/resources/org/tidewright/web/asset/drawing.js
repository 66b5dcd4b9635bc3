// Moves the water of a drawing. The server drew every shape; this sets levels, marks and flows from samples.
// Levels are millimetres above a vessel's bottom; in the drawing y runs down, so everything is negated.

const MINUS = '\u2212', THIN = '\u202f';

export function number(value, decimals) {
  const digits = Math.abs(value).toFixed(decimals);
  const grouped = digits.replace(/\B(?=(\d{3})+(?!\d))(?<!\.\d*)/g, THIN);
  return value < 0 && /[1-9]/.test(digits) ? MINUS + grouped : grouped;
}

/** Keeps the text of a drawing at its size: --k is millimetres per CSS pixel. */
export function fit(drawing) {
  const svg = drawing.querySelector('svg.section');
  const set = () => {
    const width = svg.getBoundingClientRect().width;
    if (width) drawing.style.setProperty('--k', (svg.viewBox.baseVal.width / width).toFixed(3));
  };
  set();
  new ResizeObserver(set).observe(svg);
}

/** The state between two samples. */
export function stateAt(water, seconds) {
  const time = water.time_s;
  let i = 0;
  if (seconds >= time[time.length - 1]) i = time.length - 1;
  else while (i + 1 < time.length && time[i + 1] <= seconds) i++;
  const next = Math.min(i + 1, time.length - 1);
  const share = next === i ? 0 : (seconds - time[i]) / (time[next] - time[i]);
  const between = (series) => {
    const a = series[i], b = series[next];
    return a === null || b === null ? a : a + (b - a) * share;
  };
  const all = (group, pick) => Object.fromEntries(Object.entries(group).map(([key, series]) => [key, pick(series)]));
  const state = {
    levels: all(water.levels_mm, between),
    running: all(water.levels_mm, (series) => series[0]),
    volumes: all(water.volumes, between),
    atStart: all(water.volumes, (series) => series[0]),
    directions: all(water.directions, (series) => series[i]),
  };
  const floor = water.volumes.floor;
  const litres = water.litres_per_volume_unit;
  state.floor = state.volumes.floor || 0;
  state.floorLitres = state.floor * litres;
  state.wet = state.floorLitres > 0.05;
  state.spilling = !!floor && i > 0 && floor[i] - floor[i - 1] > 0.001;
  const sump = Object.entries(state.levels).filter(([key]) => key.startsWith('section-')).map(([, level]) => level);
  state.sump = sump.length ? Math.max(...sump) : null;
  return state;
}

export function level(water, millimetres, withUnit) {
  const unit = water.level_unit;
  return number(millimetres * unit.per_mm, unit.decimals) + (withUnit ? '\u00a0' + unit.symbol : '');
}

/** Shows a state on a drawing. */
export function show(drawing, water, state) {
  const each = (selector, act) => drawing.querySelectorAll(selector).forEach((element) => act(element, element.dataset));
  const off = (element, isOff) => element.classList.toggle('off', isOff);

  each('[data-water]', (rect, { water: key, floor }) => {
    const height = Math.max(0, state.levels[key] ?? 0);
    rect.setAttribute('y', -(+floor + height));
    rect.setAttribute('height', height);
  });
  each('[data-surface]', (path, { surface: key, floor, from, to }) => {
    const y = -(+floor + (state.levels[key] ?? 0));
    path.setAttribute('d', `M${from},${y}L${to},${y}`);
    off(path, state.levels[key] === undefined);
  });
  each('[data-mark]', (mark, { mark: key, floor, x }) => {
    const height = state.levels[key] ?? 0;
    mark.setAttribute('transform', `translate(${x},${-(+floor + height)})`);
    const text = mark.querySelector('text');
    if (text) text.textContent = level(water, height, text.dataset.unit === 'yes');
  });
  each('[data-ran]', (label, { ran: key }) => off(label, !(state.running[key] - state.levels[key] > 8)));
  each('[data-fall]', (rect, { fall, into, crest, floor }) => {
    const surface = +floor + (state.levels[into] ?? 0);
    off(rect, !(state.directions[fall] > 0) || surface >= +crest);
    rect.setAttribute('y', -crest);
    rect.setAttribute('height', Math.max(0, crest - surface));
  });
  each('[data-flow]', (path, { flow }) => {
    off(path, !state.directions[flow]);
    path.classList.toggle('back', state.directions[flow] < 0);
  });
  const held = state.atStart['held-back'] ? state.volumes['held-back'] / state.atStart['held-back'] : 1;
  each('[data-bore]', (path, { bore }) => {
    const drains = bore.startsWith('drain-') || bore === 'refugium-overflow';
    const full = state.directions[bore] !== 0 || (!drains && held > 0.3);
    path.classList.toggle('full', full);
    path.classList.toggle('empty', !full);
  });
  each('[data-puddle]', (rect, { middle, least, most, floor }) => {
    off(rect, !state.wet);
    const width = Math.min(+most, +least + 60 * state.floorLitres), height = 8 + state.floorLitres;
    rect.setAttribute('x', middle - width / 2);
    rect.setAttribute('width', width);
    rect.setAttribute('y', -(+floor + height));
    rect.setAttribute('height', height);
  });
  each('[data-spill]', (path) => off(path, !state.spilling));
  each('[data-rim] .limit', (path) => path.classList.toggle('crossed', state.wet));
  each('[data-floor-label]', (label) => {
    off(label, !state.wet);
    label.querySelector('text').textContent = `${number(state.floor, 1)} ${water.volume_unit} on the floor`;
  });
}

/** Fills the account of the water beside a drawing. */
export function account(aside, state) {
  const sum = (keys) => keys.reduce((total, key) => total + (state.volumes[key] ?? 0), 0);
  aside.querySelectorAll('tr[data-of]').forEach((row) => {
    const keys = row.dataset.of === '*' ? Object.keys(state.volumes) : row.dataset.of.split(' ');
    const cell = row.querySelector('[data-now]');
    cell.textContent = number(sum(keys), 1);
    cell.classList.toggle('wet', row.dataset.of === 'floor' && state.wet);
  });
}

/** The line of figures under a drawing on narrow screens. */
export function keys(line, water, state) {
  const set = (name, height) => {
    const element = line.querySelector(`[data-key="${name}"]`);
    if (element && height !== null && height !== undefined) element.textContent = level(water, height, false);
  };
  set('display', state.levels.display);
  set('sump', state.sump);
}

export function json(root, selector) {
  const element = root.querySelector('script' + selector);
  return element ? JSON.parse(element.textContent) : null;
}
