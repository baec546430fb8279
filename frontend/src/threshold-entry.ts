import { LitElement, css, html, type PropertyValues, type TemplateResult } from 'lit';
import { Sending } from './sending.js';
import {
  EARS,
  LONGEST_TEXT,
  PLACES,
  STEP_DB,
  after,
  begin,
  complaint,
  firstWrong,
  isMark,
  level,
  marked,
  name,
  note,
  stepped,
  type Place,
} from './typing.js';

/** How long a state may be on its way before it is sent again, in milliseconds. */
const SEND_AGAIN_AFTER = 8000;

/** What is typed, whole. */
interface State {
  readonly values: readonly string[];
  readonly limit: string;
}

/** What stands beside a field to compare with; empty where there is nothing. */
interface Before {
  readonly last: string;
  readonly baseline: string;
}

/**
 * The fields for the thresholds of a test. What is typed lives here and is handed to the server with each change, one
 * state at a time: the event `thresholds-typed` with the detail `{revision, values, limit}`, whose arrival the server tells
 * by the property `arrived`. Control and Enter, pressed anywhere on the page, ask to sign: the event `test-sign`.
 *
 * What has not arrived yet stands in the tab's session storage, so that a reload sends it, and is taken from there as soon
 * as it has arrived: what is typed is health data, and the computer may be shared.
 */
export class ThresholdEntry extends LitElement {
  static override readonly styles = css`
    :host {
      display: block;
    }

    .ears {
      display: flex;
      flex-wrap: wrap;
      gap: 0.5rem 1.5rem;
    }

    fieldset {
      border: 0;
      margin: 0;
      inline-size: 16.4rem;
      padding: 0;
    }

    legend {
      font-weight: 600;
      padding: 0;
    }

    legend.right {
      color: var(--tr-ear-right, #b00020);
    }

    legend.left {
      color: var(--tr-ear-left, #0b4fb3);
    }

    /* The line of words has its room whether there are any or not, so that nothing moves while typing. */
    .line {
      align-items: center;
      column-gap: 0.6rem;
      display: grid;
      grid-template-columns: 5.1rem 4.6rem minmax(5.2rem, 1fr);
      grid-template-rows: 2rem minmax(1.05rem, auto);
    }

    .line.repeat {
      border-block-start: 1px solid var(--tr-rule, #ddd);
      padding-block-start: 0.3rem;
    }

    label,
    .before {
      font-variant-numeric: tabular-nums;
      line-height: 1.15;
    }

    .before {
      color: var(--tr-ink-soft, #555);
      font-size: 0.8125rem;
    }

    .before span {
      display: block;
    }

    .words {
      color: var(--tr-ink-soft, #555);
      font-size: 0.8125rem;
      grid-column: 1 / -1;
      line-height: 1.1;
    }

    .words.wrong {
      color: var(--tr-warm, #8f4a00);
      font-weight: 600;
    }

    input {
      background: var(--tr-sheet, canvas);
      border: 1px solid var(--tr-rule-strong, #888);
      border-radius: var(--tr-radius, 3px);
      box-sizing: border-box;
      color: inherit;
      font: inherit;
      font-variant-numeric: tabular-nums;
      inline-size: 100%;
      padding: 0.2rem 0.4rem;
      text-align: end;
    }

    input:focus-visible {
      box-shadow: var(--tr-focus, 0 0 0 2px canvas, 0 0 0 4px currentcolor);
      outline: 2px solid transparent;
    }

    input[aria-invalid='true'] {
      border: 2px solid var(--tr-warm, #8f4a00);
    }

    .limit {
      align-items: center;
      column-gap: 0.6rem;
      display: grid;
      grid-template-columns: auto 4.6rem;
      grid-template-rows: auto minmax(1.15rem, auto);
      justify-content: start;
      margin-block-start: 0.4rem;
    }

    .help,
    .kept {
      color: var(--tr-ink-soft, #555);
      font-size: 0.8125rem;
      margin: 0.4rem 0 0;
      max-inline-size: 44rem;
    }

    .kept {
      min-block-size: 1.4em;
    }

    .kept.lost {
      color: var(--tr-warm, #8f4a00);
      font-weight: 600;
    }

    kbd {
      border: 1px solid var(--tr-rule-strong, #888);
      border-radius: 3px;
      font: inherit;
      padding: 0 0.25em;
    }

    @media print {
      .help,
      .kept,
      .limit {
        display: none;
      }
    }
  `;

  static override readonly properties = {
    draft: { type: Number },
    start: { attribute: false },
    compared: { attribute: false },
    arrived: { type: Number },
    values: { state: true },
    limit: { state: true },
    current: { state: true },
    lost: { state: true },
    limitAsked: { state: true },
  };

  /** The register's number of the draft. */
  declare draft: number;
  /** What is typed when the page is shown, by what has arrived. */
  declare start: State | undefined;
  /** The thresholds of the last test and of the baseline, in the order of the fields. */
  declare compared: readonly Before[] | undefined;
  /** The number of the last state that has arrived. */
  declare arrived: number;
  private declare values: readonly string[];
  private declare limit: string;
  /** The field that has the focus, which is not complained about while it is typed in. */
  private declare current: number | undefined;
  private declare lost: boolean;
  private declare limitAsked: boolean;

  private readonly sending = new Sending<State>((state, revision) => this.hand(state, revision));
  private timer: ReturnType<typeof setTimeout> | undefined;
  /** The field that Enter was pressed in although it cannot stand. */
  private refused: number | undefined;

  private readonly onPageKey = (event: KeyboardEvent): void => {
    const isInDialog = document.querySelector('vaadin-dialog[opened]') !== null;
    if (event.key === 'Enter' && event.ctrlKey && !event.altKey && !event.repeat && !isInDialog) {
      event.preventDefault();
      event.stopPropagation();
      this.sign();
    }
  };

  private readonly onLeavingPage = (event: BeforeUnloadEvent): void => {
    if (this.lost) {
      event.preventDefault();
    }
  };

  private readonly onOnline = (): void => this.sendAgain();

  constructor() {
    super();
    this.draft = 0;
    this.arrived = 0;
    this.values = PLACES.map(() => '');
    this.limit = '';
    this.lost = false;
    this.limitAsked = false;
  }

  override connectedCallback(): void {
    super.connectedCallback();
    // Before the field that has the focus, since a list of choices that is open keeps Enter to itself.
    document.addEventListener('keydown', this.onPageKey, true);
    window.addEventListener('beforeunload', this.onLeavingPage);
    window.addEventListener('online', this.onOnline);
  }

  override disconnectedCallback(): void {
    super.disconnectedCallback();
    document.removeEventListener('keydown', this.onPageKey, true);
    window.removeEventListener('beforeunload', this.onLeavingPage);
    window.removeEventListener('online', this.onOnline);
    clearTimeout(this.timer);
    sessionStorage.removeItem(this.unsentKey);
  }

  /** Leads to the first field that cannot stand; told by the server when signing is refused. */
  focusFirstWrong(): void {
    const wrong = firstWrong(this.values);
    if (wrong !== undefined) {
      this.refused = wrong;
      this.focusOn(wrong);
    }
  }

  protected override willUpdate(changed: PropertyValues): void {
    if (changed.has('start') && this.start) {
      const unsent = this.unsent();
      this.values = (unsent ?? this.start).values;
      this.limit = (unsent ?? this.start).limit;
      if (unsent) {
        this.put();
      }
    }
    if (changed.has('arrived')) {
      this.sending.arrived(this.arrived);
      if (this.sending.isSettled) {
        clearTimeout(this.timer);
        sessionStorage.removeItem(this.unsentKey);
        this.lost = false;
      }
    }
  }

  /** What this tab had typed before it was loaded again and could not send. */
  private unsent(): State | undefined {
    const kept = sessionStorage.getItem(this.unsentKey);
    return kept === null ? undefined : (JSON.parse(kept) as State);
  }

  private get unsentKey(): string {
    return `threshold-entry-${this.draft}`;
  }

  protected override updated(changed: PropertyValues): void {
    if (changed.has('start') && this.start) {
      this.focusOn(begin(this.values));
    }
  }

  protected override render(): TemplateResult {
    return html`
      <div class="ears" @keydown=${this.onKey}>
        ${EARS.map(
          (ear) => html`
            <fieldset>
              <legend class=${ear}>${ear === 'right' ? 'Right ear' : 'Left ear'}, dB HL</legend>
              ${PLACES.map((place, index) => (place.ear === ear ? this.line(place, index) : ''))}
            </fieldset>
          `,
        )}
      </div>
      <slot></slot>
      <div class="limit">
        <label for="limit">Loudest tone of the instrument, dB HL</label>
        <input
          id="limit"
          autocomplete="off"
          maxlength="3"
          .value=${this.limit}
          aria-invalid=${this.limitAsked ? 'true' : 'false'}
          aria-describedby="limit-words"
          @input=${this.onLimit}
        />
        <span id="limit-words" class="words ${this.limitAsked ? 'wrong' : ''}"
          >${this.limitAsked ? 'Give the level that no response was found at, -10 to 120 dB HL.' : ''}</span
        >
      </div>
      <p class="help" id="help">
        <kbd>Enter</kbd> moves on and <kbd>Shift Enter</kbd> back, the arrow keys step ${STEP_DB} dB, <kbd>n</kbd> is no
        response at the loudest tone, <kbd>c</kbd> could not be tested, <kbd>d</kbd> was not tested,
        <kbd>Ctrl Enter</kbd> signs.
      </p>
      <p class="kept ${this.lost ? 'lost' : ''}" role="status">
        ${this.lost
          ? 'What you typed last has not reached the register. It stays here and is sent again; keep this page open.'
          : ''}
      </p>
    `;
  }

  private line(place: Place, index: number): TemplateResult {
    const value = this.values[index] ?? '';
    const wrong = this.current === index && this.refused !== index ? '' : complaint(value);
    const before = this.compared?.[index];
    return html`
      <div class="line ${place.isRepeat ? 'repeat' : ''}">
        <label for="t${index}">${place.isRepeat ? '1000 again' : place.hertz}</label>
        <input
          id="t${index}"
          data-index=${index}
          aria-label=${`${name(place)}, dB HL`}
          aria-describedby=${`w${index} b${index}`}
          aria-invalid=${wrong ? 'true' : 'false'}
          autocomplete="off"
          spellcheck="false"
          maxlength=${LONGEST_TEXT}
          .value=${value}
          @input=${this.onInput}
          @focus=${this.onFocus}
          @blur=${this.onBlur}
        />
        <span class="before" id="b${index}"
          >${before?.last ? html`<span>last ${before.last}</span>` : ''}${before?.baseline
            ? html`<span>baseline ${before.baseline}</span>`
            : ''}</span
        >
        <span class="words ${wrong ? 'wrong' : ''}" id="w${index}">${wrong || note(value)}</span>
      </div>
    `;
  }

  private onKey(event: KeyboardEvent): void {
    const index = indexOf(event.composedPath()[0]);
    if (index === undefined || event.altKey || event.ctrlKey || event.metaKey) {
      return;
    }
    const value = this.values[index] ?? '';
    const mark = marked(event.key, this.limit);
    if (event.key === 'Enter') {
      event.preventDefault();
      if (!event.repeat) {
        this.move(index, event.shiftKey ? -1 : 1);
      }
    } else if (event.key === 'ArrowUp' || event.key === 'ArrowDown') {
      event.preventDefault();
      this.set(index, stepped(value, event.key === 'ArrowUp' ? 1 : -1));
    } else if (event.key.toLowerCase() === 'n' && mark === undefined) {
      event.preventDefault();
      this.limitAsked = true;
    } else if (mark !== undefined) {
      event.preventDefault();
      this.set(index, mark);
    } else if ((event.key === 'Backspace' || event.key === 'Delete' || /^[-\d]$/.test(event.key)) && isMark(value)) {
      event.preventDefault();
      this.set(index, event.key.length === 1 ? event.key : '');
    }
  }

  /** Moves on from a field that can stand; from one that cannot, nobody moves on by Enter. */
  private move(index: number, direction: 1 | -1): void {
    if (complaint(this.values[index] ?? '')) {
      this.refused = index;
      this.requestUpdate();
      this.field(index)?.select();
      return;
    }
    const next = after(index, direction);
    if (next !== undefined) {
      this.focusOn(next);
    } else if (direction > 0) {
      this.dispatchEvent(new CustomEvent('thresholds-done', { bubbles: true, composed: true }));
    }
  }

  private onInput(event: Event): void {
    const index = indexOf(event.target);
    if (index !== undefined) {
      this.set(index, (event.target as HTMLInputElement).value);
    }
  }

  private onLimit(event: Event): void {
    this.limit = (event.target as HTMLInputElement).value;
    this.limitAsked = this.limit.trim() !== '' && level(this.limit.trim()) === undefined;
    this.put();
  }

  private onFocus(event: Event): void {
    this.current = indexOf(event.target);
    (event.target as HTMLInputElement).select();
  }

  private onBlur(): void {
    this.current = undefined;
    this.refused = undefined;
  }

  private set(index: number, value: string): void {
    if (this.refused === index) {
      this.refused = undefined;
    }
    this.values = this.values.map((old, at) => (at === index ? value : old));
    this.put();
  }

  private focusOn(index: number): void {
    void this.updateComplete.then(() => this.field(index)?.focus());
  }

  private field(index: number): HTMLInputElement | null {
    return this.renderRoot.querySelector<HTMLInputElement>(`#t${index}`);
  }

  private put(): void {
    const state = { values: this.values, limit: this.limit };
    sessionStorage.setItem(this.unsentKey, JSON.stringify(state));
    this.sending.put(state);
  }

  private hand(state: State, revision: number): void {
    clearTimeout(this.timer);
    this.timer = setTimeout(() => this.sendAgain(), SEND_AGAIN_AFTER);
    this.dispatchEvent(new CustomEvent('thresholds-typed', { detail: { revision, ...state } }));
  }

  private sendAgain(): void {
    if (!this.sending.isSettled) {
      this.lost = true;
      this.sending.again();
    }
  }

  /** A field of the page that is typed in hands its text over before. */
  private sign(): void {
    const active = document.activeElement;
    if (active instanceof HTMLElement && active !== this) {
      active.blur();
    }
    this.dispatchEvent(new CustomEvent('test-sign', { detail: { revision: 0, values: this.values, limit: this.limit } }));
  }
}

function indexOf(target: EventTarget | null | undefined): number | undefined {
  const index = target instanceof HTMLElement ? target.dataset['index'] : undefined;
  return index === undefined ? undefined : Number(index);
}

customElements.define('threshold-entry', ThresholdEntry);
