// @vitest-environment jsdom
import { afterEach, expect, it, vi } from 'vitest';
import { player } from '../../../src/lessons/second-opinion/player.ts';
import { LivePart } from '../../../src/live/elements/part.ts';
import type { LessonPart } from '../../../src/models/lesson-part.ts';
import { putOnPage } from '../../../src/models/on-page.ts';
import { only, openPage, toy } from '../toy-page.ts';

const BUTTONS = `
  <live-part data-part="toy">
    <button type="button" data-action="hear" data-plays>Hear</button>
    <button type="button" data-action="count">Count</button>
    <span data-said></span>
  </live-part>`;

let isInPress = false;
const started: number[] = [];

/** A phone's device: it wakes within a press, and at no other time. */
class FakeContext {
  static opened: FakeContext[] = [];
  readonly sampleRate = 44_100;
  readonly destination = {};
  state = 'suspended';

  constructor() {
    FakeContext.opened.push(this);
  }

  async resume(): Promise<void> {
    if (isInPress) this.state = 'running';
  }

  createBuffer(): { copyToChannel: () => void } {
    return { copyToChannel: () => {} };
  }
}

class FakeSource {
  private readonly context: FakeContext;

  constructor(context: FakeContext) {
    this.context = context;
  }

  connect(): void {}

  stop(): void {}

  start(): void {
    if (this.context.state === 'running') started.push(this.context.sampleRate);
  }
}

/** What a lesson's part does when its code arrives, long after the press. */
const part: LessonPart = ({ device, say }) => {
  const play = player(device);
  return {
    hear: () => say(play((rate) => ({ samples: new Float32Array(8), rate })) ? 'heard' : 'silent'),
    count: () => say('one'),
  };
};

function open(): void {
  openPage(BUTTONS, { 'live-part': LivePart });
  putOnPage({
    model: toy,
    figures: {},
    parts: {
      './toy.part.ts': () => new Promise((resolve) => setTimeout(() => resolve({ part }), 20)),
    },
  });
}

function press(action: string): void {
  isInPress = true;
  only(`[data-action="${action}"]`).click();
  isInPress = false;
}

const said = () => only('[data-said]').textContent;

afterEach(() => {
  putOnPage();
  FakeContext.opened = [];
  started.length = 0;
  vi.unstubAllGlobals();
});

it('sounds at the first press, although its code comes after it', async () => {
  vi.stubGlobal('AudioContext', FakeContext);
  vi.stubGlobal('AudioBufferSourceNode', FakeSource);
  open();
  press('hear');
  await vi.waitFor(() => expect(said()).toBe('heard'));
  expect(started).toEqual([44_100]);
  press('hear');
  expect(started).toEqual([44_100, 44_100]);
  expect(FakeContext.opened.length, 'one device for all presses').toBe(1);
});

it('opens no device for a button that makes no sound', async () => {
  vi.stubGlobal('AudioContext', FakeContext);
  open();
  press('count');
  await vi.waitFor(() => expect(said()).toBe('one'));
  expect(FakeContext.opened).toEqual([]);
});

it('says so where nothing can be played', async () => {
  open();
  press('hear');
  await vi.waitFor(() => expect(said()).toBe('silent'));
});
