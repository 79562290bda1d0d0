// The road strip: keeps place and scale, asks the desk for the drawing of what is in view, and tells it what is picked.
// The track is as long as the road at the present scale, so moving along the road is plain scrolling.

const scales = [0.5, 1, 2, 4, 8, 16, 32, 64]; // px per metre

export function open(scroll, desk, road) {
  return new Strip(scroll, desk, road);
}

class Strip {
  constructor(scroll, desk, road) {
    this.scroll = scroll;
    this.desk = desk;
    this.road = road;
    this.sheet = scroll.closest('.strip-sheet');
    this.part = name => this.sheet.querySelector(`[data-strip="${name}"]`);
    this.track = this.part('track');
    this.drawn = null; // { from, to, scale }
    this.asked = 0;
    this.marked = [];
    this.flag = null;
    this.tidy = new AbortController();
    const on = (target, event, act, options) => target.addEventListener(event, act, { signal: this.tidy.signal, ...options });
    on(scroll, 'scroll', () => this.settle());
    on(scroll, 'keydown', event => this.key(event));
    on(scroll, 'wheel', event => this.wheel(event), { passive: false });
    on(scroll, 'pointerdown', event => this.grab(event));
    on(this.part('in'), 'click', () => this.zoom(+1));
    on(this.part('out'), 'click', () => this.zoom(-1));
    on(this.part('map'), 'pointerdown', event => this.mapTo(event));
    this.size = new ResizeObserver(() => this.settle());
    this.size.observe(scroll);
    this.setScale(4, road.start + scroll.clientWidth / 10);
  }

  get middle() { return (this.scroll.scrollLeft + this.scroll.clientWidth / 2) / this.scale; }

  setScale(scale, middle) {
    this.scale = scale;
    this.track.style.width = `${Math.max(this.road.length * scale, 1)}px`;
    this.scroll.scrollLeft = middle * scale - this.scroll.clientWidth / 2;
    this.part('in').disabled = scale >= scales[scales.length - 1];
    this.part('out').disabled = scale <= scales[0];
    this.settle();
  }

  zoom(step) {
    const next = scales[scales.indexOf(this.scale) + step];
    if (next) this.setScale(next, this.middle);
  }

  goTo(from, to) {
    const view = this.scroll.clientWidth;
    const [left, right] = [from * this.scale - this.scroll.scrollLeft, to * this.scale - this.scroll.scrollLeft];
    if (left < view * 0.1 || right > view * 0.9) this.scroll.scrollLeft = ((from + to) / 2) * this.scale - view / 2;
  }

  key(event) {
    if (event.key === '+' || event.key === '=') this.zoom(+1);
    else if (event.key === '-') this.zoom(-1);
    else if (event.key === 'Home') this.scroll.scrollLeft = 0;
    else if (event.key === 'End') this.scroll.scrollLeft = this.scroll.scrollWidth;
    else return;
    event.preventDefault();
  }

  wheel(event) {
    if (!event.ctrlKey && !event.metaKey) return;
    event.preventDefault();
    this.zoom(event.deltaY < 0 ? +1 : -1);
  }

  grab(event) {
    if (event.button !== 0 || event.pointerType === 'touch') return;
    const [startX, startScroll] = [event.clientX, this.scroll.scrollLeft];
    let moved = false;
    const move = e => {
      moved ||= Math.abs(e.clientX - startX) > 4;
      if (moved) this.scroll.scrollLeft = startScroll - (e.clientX - startX);
    };
    const drop = e => {
      window.removeEventListener('pointermove', move);
      window.removeEventListener('pointerup', drop);
      if (!moved) this.pick(e);
    };
    window.addEventListener('pointermove', move, { signal: this.tidy.signal });
    window.addEventListener('pointerup', drop, { signal: this.tidy.signal });
  }

  pick(event) {
    const thing = event.target.closest?.('[data-ref]');
    if (thing) this.desk.invokeMethodAsync('PickFromStrip', thing.dataset.ref);
  }

  mapTo(event) {
    const box = this.part('map').getBoundingClientRect();
    const at = ((event.clientX - box.left) / box.width) * this.road.length;
    this.scroll.scrollLeft = at * this.scale - this.scroll.clientWidth / 2;
  }

  // Moves the map's window and draws three screens' worth once the view leaves what is drawn.
  settle() {
    const view = this.scroll.clientWidth;
    if (view === 0) return;
    const [from, to] = [this.scroll.scrollLeft / this.scale, (this.scroll.scrollLeft + view) / this.scale];
    const window = this.part('window');
    window.style.left = `${(100 * from) / this.road.length}%`;
    window.style.width = `${(100 * Math.min(to - from, this.road.length)) / this.road.length}%`;
    const drawn = this.drawn;
    const covered = drawn && drawn.scale === this.scale
      && (from >= drawn.from - 1e-6) && (Math.min(to, this.road.length) <= drawn.to + 1e-6);
    if (!covered) this.draw(Math.max(0, from - view / this.scale), Math.min(this.road.length, to + view / this.scale));
  }

  async draw(from, to) {
    const turn = ++this.asked;
    const scale = this.scale;
    const width = Math.round((to - from) * scale);
    if (width < 50) return;
    this.drawn = { from, to, scale };
    const answer = await fetch(`${this.road.url}?from=${from.toFixed(3)}&to=${to.toFixed(3)}&width=${width}`, { signal: this.tidy.signal })
      .catch(() => null);
    if (turn !== this.asked) return;
    if (!answer?.ok) { this.drawn = null; return; }
    const text = await answer.text();
    if (turn !== this.asked) return;
    const svg = document.importNode(new DOMParser().parseFromString(text, 'image/svg+xml').documentElement, true);
    svg.style.left = `${from * scale}px`;
    const flag = document.createElement('div');
    flag.className = 'strip-flag';
    this.track.replaceChildren(svg, flag);
    this.track.style.height = svg.getAttribute('height') + 'px';
    this.part('scale').textContent = this.scaleWords(svg);
    this.light();
  }

  scaleWords(svg) {
    const across = Number(svg.dataset.across);
    const times = across / this.scale;
    if (!across) return `${this.scale} px/m`;
    return times < 1.05 ? 'true to scale' : `widths drawn ${times < 10 ? times.toFixed(1) : Math.round(times)}× their length scale`;
  }

  // Lights up everything that belongs to the work picked and flags its stretch; refs is empty when nothing is picked.
  mark(refs, from, to) {
    this.marked = refs;
    this.flag = refs.length > 0 ? { from, to } : null;
    this.light();
  }

  light() {
    const refs = new Set(this.marked);
    for (const thing of this.track.querySelectorAll('[data-ref]')) thing.classList.toggle('strip-chosen', refs.has(thing.dataset.ref));
    const flag = this.track.querySelector('.strip-flag');
    if (!flag) return;
    flag.hidden = !this.flag;
    if (!this.flag) return;
    flag.style.left = `${this.flag.from * this.scale - 3}px`;
    flag.style.width = `${(this.flag.to - this.flag.from) * this.scale + 6}px`;
  }

  close() {
    this.tidy.abort();
    this.size.disconnect();
  }
}
