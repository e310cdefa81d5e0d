import { afterAll, describe, expect, it } from 'vitest';
import type { HoldParts } from '../../../web/state/tab-hold.ts';
import { fakeLocks } from './fake-locks.ts';
import { openTab, pause } from './two-tabs.ts';

const channels: BroadcastChannel[] = [];
afterAll(() => channels.forEach((channel) => channel.close()));

function channelOf(name: string): BroadcastChannel {
  const channel = new BroadcastChannel(name);
  channels.push(channel);
  return channel;
}

/** Two tabs of one browser on one design that the first has saved. */
async function twoTabs(name: string, withLocks: boolean) {
  const locks = withLocks ? fakeLocks() : undefined;
  const parts = (): HoldParts => ({ locks, channel: channelOf(name) });
  const one = openTab(name, parts());
  await one.own.start();
  one.call('Shared');
  await one.own.flush();
  await pause(50);
  const two = openTab(name, parts());
  await two.own.start();
  return { one, two };
}

for (const withLocks of [true, false]) {
  const way = withLocks ? 'with Web Locks' : 'with a channel only';
  describe(`two tabs on one design, ${way}`, () => {
    it('tells the second one, and only that', async () => {
      const { one, two } = await twoTabs(`t1 ${way}`, withLocks);
      expect(two.title()).toBe('Shared');
      expect([one.saving().tab, two.saving().tab]).toEqual(['mine', 'elsewhere']);
    });

    it('takes over with what the other had not saved yet', async () => {
      const { one, two } = await twoTabs(`t2 ${way}`, withLocks);
      one.call('Typed a moment ago');
      await two.own.takeOver();
      expect(two.title()).toBe('Typed a moment ago');
      expect([one.saving().tab, two.saving().tab]).toEqual(['elsewhere', 'mine']);
      two.call('Here now');
      await two.own.flush();
      expect(two.said).toEqual([]);
      expect((await two.shelf.cards()).map((c) => c.title)).toEqual(['Here now']);
    });

    it('makes a copy and leaves the first alone', async () => {
      const { one, two } = await twoTabs(`t3 ${way}`, withLocks);
      two.own.copyHere();
      await two.own.flush();
      one.call('One goes on');
      await one.own.flush();
      expect((await two.shelf.cards()).map((c) => c.title).sort()).toEqual(['One goes on', 'Shared (copy)']);
      expect(two.saving().tab).toBe('mine');
    });

    it('only looks; a change becomes a copy', async () => {
      const { one, two } = await twoTabs(`t4 ${way}`, withLocks);
      two.own.look();
      await two.own.flush();
      expect(await two.shelf.cards()).toHaveLength(1);
      two.call('Could not leave it alone');
      await two.own.flush();
      const titles = (await two.shelf.cards()).map((c) => c.title).sort();
      expect(titles).toEqual(['Could not leave it alone (copy)', 'Shared']);
      expect(two.said.join()).toMatch(/kept as a copy/);
      expect(one.title()).toBe('Shared');
    });
  });
}

describe('two tabs that know nothing of each other', () => {
  const blind: HoldParts = { locks: undefined, channel: undefined };

  it('never write over each other: the later save becomes a copy', async () => {
    const one = openTab('t5', blind);
    await one.own.start();
    one.call('Shared');
    await one.own.flush();
    const two = openTab('t5', blind);
    await two.own.start();
    one.call('From one');
    two.call('From two');
    await Promise.all([one.own.flush(), two.own.flush()]);
    const titles = (await one.shelf.cards()).map((c) => c.title).sort();
    expect(titles).toHaveLength(2);
    expect(titles.join()).toMatch(/From one/);
    expect(titles.join()).toMatch(/From two/);
    expect([...one.said, ...two.said].join()).toMatch(/changed in another tab meanwhile. Both are kept/);
    two.call('Two again');
    one.call('One again');
    await Promise.all([one.own.flush(), two.own.flush()]);
    expect((await one.shelf.cards()).map((c) => c.title).sort()).toEqual(['One again', 'Two again']);
  });

  it('does not bring back silently what was deleted in the other', async () => {
    const one = openTab('t6', blind);
    await one.own.start();
    one.call('Shared');
    await one.own.flush();
    await one.shelf.discard(one.saving().openId ?? '');
    one.call('Still at it');
    await one.own.flush();
    expect((await one.shelf.cards()).map((c) => c.title)).toEqual(['Still at it (copy)']);
  });
});

describe('a tab that sleeps', () => {
  it('is passed over after a while, and learns of it', async () => {
    const locks = fakeLocks();
    const one = openTab('t7', { locks, channel: undefined });
    await one.own.start();
    one.call('Shared');
    await one.own.flush();
    const two = openTab('t7', { locks, channel: undefined });
    await two.own.start();
    await two.own.takeOver();
    expect([one.saving().tab, two.saving().tab]).toEqual(['elsewhere', 'mine']);
  });
});
