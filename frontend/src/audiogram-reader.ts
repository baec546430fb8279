import { LitElement, css, html } from 'lit';
import { carryOver, first, isAt, move, nearest, sentence, type Move, type Placed, type Position, type Reading } from './reading.js';

const MOVES: Readonly<Record<string, Move>> = {
  ArrowLeft: 'lower',
  ArrowRight: 'higher',
  Home: 'lowest',
  End: 'highest',
  ArrowUp: 'previous-trace',
  ArrowDown: 'next-trace',
};

const STEPS: Readonly<Record<string, number>> = { PageUp: -1, PageDown: 1 };

/** How near to a symbol the pointer must be, in CSS px. */
const REACH = 24;

/** A reading and the element that stands for it. */
interface Drawn extends Reading {
  readonly element: Element;
}

/**
 * Reads a drawn audiogram out, by pointer and by keyboard. The drawing is the SVG in the light DOM, whose symbols carry
 * their thresholds as data attributes; when it is replaced, the reader keeps its place.
 *
 * Left and Right (Home, End) move by frequency, Up and Down to the other ear and the baseline. Page Up and Page Down ask
 * for the test before or after: the bubbling event `audiogram-step` with the detail -1 or 1.
 */
export class AudiogramReader extends LitElement {
  static override readonly styles = css`
    :host {
      display: inline-block;
      position: relative;
      max-inline-size: 100%;
    }

    /* Never stretched: the drawing shrinks as a whole where the page is narrow. */
    ::slotted(svg) {
      display: block;
      max-inline-size: 100%;
      block-size: auto;
    }

    .stage {
      position: relative;
      border-radius: var(--tr-radius, 3px);
      touch-action: manipulation;
    }

    /* The outline shows where the system replaces colours and drops shadows. */
    .stage:focus-visible {
      outline: 2px solid transparent;
      box-shadow: var(--tr-focus, 0 0 0 2px canvas, 0 0 0 4px currentcolor);
    }

    .ring {
      position: absolute;
      inline-size: 24px;
      block-size: 24px;
      box-sizing: border-box;
      margin: -12px;
      border: 2px solid currentcolor;
      border-radius: 50%;
      pointer-events: none;
    }

    @media (prefers-reduced-motion: no-preference) {
      .ring {
        transition:
          left 120ms ease-out,
          top 120ms ease-out;
      }
    }

    .readout {
      margin: 8px 0 0;
      min-block-size: 2.8em;
      line-height: 1.4;
      font-variant-numeric: tabular-nums;
    }

    .spoken {
      position: absolute;
      inline-size: 1px;
      block-size: 1px;
      overflow: hidden;
      clip-path: inset(50%);
      white-space: nowrap;
    }

    .readout span {
      display: block;
    }

    [hidden] {
      display: none;
    }

    @media print {
      :host {
        color-scheme: light;
        color: #1a1a1a;
        break-inside: avoid;
      }

      .ring,
      .readout {
        display: none;
      }
    }
  `;

  static override readonly properties = {
    chosen: { state: true },
    pointed: { state: true },
    spoken: { state: true },
  };

  /** Where the keyboard stands. */
  private declare chosen: Position | undefined;
  /** What the pointer is over: more than one where symbols of both ears stand at one point. */
  private declare pointed: readonly Position[];
  /** What a screen reader is told: only what the keyboard asked for, since a pointer would make it chatter. */
  private declare spoken: string;

  private readings: Drawn[] = [];
  private readonly drawingChanges = new MutationObserver(() => this.readDrawing());

  constructor() {
    super();
    this.chosen = undefined;
    this.pointed = [];
    this.spoken = '';
  }

  override connectedCallback(): void {
    super.connectedCallback();
    this.drawingChanges.observe(this, { childList: true, subtree: true });
    this.readDrawing();
  }

  override disconnectedCallback(): void {
    this.drawingChanges.disconnect();
    super.disconnectedCallback();
  }

  protected override render() {
    const shown = this.shown();
    return html`
      <div
        class="stage"
        tabindex="0"
        role="application"
        aria-roledescription="audiogram reader"
        aria-label="Read the audiogram point by point"
        aria-describedby="keys"
        @keydown=${this.onKey}
        @focus=${this.onFocus}
        @pointermove=${this.onPoint}
        @pointerleave=${this.onLeave}
        @click=${this.onClick}
      >
        <slot></slot>
        <div class="ring" aria-hidden="true" hidden></div>
      </div>
      <p class="readout" aria-hidden="true">
        ${shown.length === 0
          ? 'Point at a symbol, or use the arrow keys.'
          : shown.map((position) => html`<span>${sentence(this.readings, position)}</span>`)}
      </p>
      <div class="spoken" id="keys">
        Left and Right move by frequency, Up and Down to the other ear and the baseline, Page Up and Page Down to the test
        before or after.
      </div>
      <div class="spoken" aria-live="polite">${this.spoken}</div>
    `;
  }

  /** Puts the ring around the symbol, in parts of the drawing's size so that it stays there when the page is resized. */
  protected override updated(): void {
    const ring = this.renderRoot.querySelector<HTMLElement>('.ring')!;
    const [shown] = this.shown();
    const drawn = shown && this.readings.find((reading) => isAt(reading, shown));
    const centre = drawn && centreOf(drawn.element);
    ring.hidden = !centre;
    if (centre) {
      const stage = this.stage.getBoundingClientRect();
      ring.style.left = `${((centre.x - stage.left) / stage.width) * 100}%`;
      ring.style.top = `${((centre.y - stage.top) / stage.height) * 100}%`;
    }
  }

  private shown(): readonly Position[] {
    return this.pointed.length > 0 || !this.chosen ? this.pointed : [this.chosen];
  }

  private readDrawing(): void {
    this.readings = [...this.querySelectorAll('[data-ear][data-hz]')].map((element) => ({
      element,
      ear: element.getAttribute('data-ear') ?? '',
      series: element.getAttribute('data-series') ?? '',
      hertz: Number(element.getAttribute('data-hz')),
      words: element.getAttribute('data-words') ?? '',
    }));
    this.pointed = [];
    if (this.chosen) {
      this.choose(carryOver(this.readings, this.chosen));
    }
  }

  private choose(position: Position | undefined): void {
    this.chosen = position;
    this.spoken = position ? sentence(this.readings, position) : '';
  }

  private onFocus(): void {
    if (!this.chosen && this.stage.matches(':focus-visible')) {
      this.choose(first(this.readings));
    }
  }

  private onKey(event: KeyboardEvent): void {
    if (event.altKey || event.ctrlKey || event.metaKey || event.shiftKey) {
      return;
    }
    const step = STEPS[event.key];
    const way = MOVES[event.key];
    if (step !== undefined) {
      event.preventDefault();
      this.dispatchEvent(new CustomEvent('audiogram-step', { detail: step, bubbles: true, composed: true }));
    } else if (way !== undefined) {
      event.preventDefault();
      this.pointed = [];
      this.choose(this.chosen ? move(this.readings, this.chosen, way) : first(this.readings));
    }
  }

  private onPoint(event: PointerEvent): void {
    this.pointed = this.under(event);
  }

  private onLeave(): void {
    this.pointed = [];
  }

  private onClick(event: MouseEvent): void {
    const [nearest] = this.under(event);
    if (nearest) {
      this.choose(nearest);
    }
  }

  private under(event: MouseEvent): readonly Position[] {
    const placed: Placed[] = this.readings.flatMap((reading) => {
      const centre = centreOf(reading.element);
      return centre ? [{ ...reading, distance: Math.hypot(event.clientX - centre.x, event.clientY - centre.y) }] : [];
    });
    return nearest(placed, REACH);
  }

  private get stage(): HTMLElement {
    return this.renderRoot.querySelector<HTMLElement>('.stage')!;
  }
}

/** The middle of a symbol without its arrow, or of the words in its place; none for what is not drawn at all. */
function centreOf(element: Element): { x: number; y: number } | undefined {
  const box = (element.querySelector('circle, .cross') ?? element).getBoundingClientRect();
  return box.width > 0 ? { x: box.left + box.width / 2, y: box.top + box.height / 2 } : undefined;
}

customElements.define('audiogram-reader', AudiogramReader);
