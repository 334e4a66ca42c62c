// @vitest-environment jsdom
/** The number of learners in the links of the teaching pack. */
import { expect, it } from 'vitest';
import { carry, carryLinked } from '../../../src/teaching/learners/carry.ts';

const hrefs = () => [...document.querySelectorAll('a')].map((link) => link.getAttribute('href'));

function page(...links: readonly string[]): void {
  document.body.innerHTML = links.map((href) => `<a href="${href}">to it</a>`).join('');
}

it('goes into each link to a page that uses it, under any base, with what else the link holds', () => {
  page(
    '/notebook/teach/plans/find-the-zero/#units=us',
    '/teach/before-and-after/',
    '/teach/sheets/#v=1&lessons=a,b&variants=12',
    '/teach/sheets/',
  );
  carry(document, 9);
  expect(hrefs().map((href) => href?.replace('http://localhost:3000', ''))).toEqual([
    '/notebook/teach/plans/find-the-zero/#units=us&learners=9',
    '/teach/before-and-after/#learners=9',
    '/teach/sheets/#v=1&lessons=a,b&variants=9',
    '/teach/sheets/#v=1&variants=9',
  ]);
});

it('goes into no other link: not to a place on a page, to a lesson, to another site', () => {
  const others = ['/teach/plans/#content', '/lessons/stiff-spring/', 'https://example.org/teach/'];
  page(...others);
  carry(document, 9);
  expect(hrefs()).toEqual(others);
});

it('is told in words, one learner as one', () => {
  document.body.innerHTML = '<a href="/teach/sheets/">for <span data-told></span></a>';
  carry(document, 9);
  expect(document.body.textContent).toBe('for 9 learners');
  carry(document, 1);
  expect(document.body.textContent).toBe('for 1 learner');
});

it('comes from the address, and only where it holds one that can be', () => {
  page('/teach/');
  location.hash = '#learners=many';
  carryLinked(document);
  expect(hrefs()).toEqual(['/teach/']);
  location.hash = '#learners=7';
  dispatchEvent(new Event('hashchange'));
  expect(hrefs()[0]).toMatch(/\/teach\/#learners=7$/);
});
