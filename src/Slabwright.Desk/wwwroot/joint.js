// The plan of a joint: tells the desk where the pointer drags the axle and what the arrow keys ask. While the desk answers,
// only the newest place is kept, so it is never asked faster than it answers.

export function open(plan, desk) {
  return new Plan(plan, desk);
}

class Plan {
  constructor(plan, desk) {
    this.plan = plan;
    this.desk = desk;
    this.next = null;
    this.asking = false;
    this.tidy = new AbortController();
    const on = (event, act) => plan.addEventListener(event, act, { signal: this.tidy.signal });
    on('pointerdown', event => {
      if (event.button !== 0) return;
      plan.setPointerCapture(event.pointerId);
      plan.focus({ preventScroll: true });
      this.point(event);
    });
    on('pointermove', event => { if (event.buttons & 1) this.point(event); });
    on('keydown', event => this.key(event));
  }

  point(event) {
    const svg = this.plan.querySelector('svg');
    const scale = Number(svg.dataset.scale);
    const at = new DOMPoint(event.clientX, event.clientY).matrixTransform(svg.getScreenCTM().inverse());
    this.ask('MoveTo', at.x / scale, at.y / scale);
    event.preventDefault();
  }

  key(event) {
    const step = event.shiftKey ? 0.3048 : 0.0508;
    const steps = { ArrowLeft: [-step, 0], ArrowRight: [step, 0], ArrowUp: [0, -step], ArrowDown: [0, step] };
    if (event.key === 'Home') this.ask('Home');
    else if (steps[event.key]) this.ask('StepBy', ...steps[event.key]);
    else return;
    event.preventDefault();
  }

  async ask(...what) {
    this.next = what;
    if (this.asking) return;
    this.asking = true;
    try {
      while (this.next) {
        const [name, ...values] = this.next;
        this.next = null;
        await this.desk.invokeMethodAsync(name, ...values);
      }
    } finally {
      this.asking = false;
    }
  }

  close() {
    this.tidy.abort();
  }
}
