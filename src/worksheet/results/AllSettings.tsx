/** What to set: for the target, and for each other band, with what is to be said of them. */
import type { JSX } from 'preact';
import { Guards } from '../kit/Guards.tsx';
import { DayResults } from '../window/Results.tsx';
import { BandResults } from './BandResults.tsx';
import { SettingResults } from './SettingResults.tsx';

/** The settings. */
export function AllSettings(): JSX.Element {
  return (
    <>
      <SettingResults />
      <Guards part="setting" />
      <DayResults />
      <BandResults />
    </>
  );
}
