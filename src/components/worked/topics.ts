/** What the worked examples are asked about, in the order in which the index shows it. Units: none. */

/** The topics by their keys in content/worked. */
export const WORKED_TOPICS = ['setting', 'band', 'dial', 'cut', 'doubt'] as const;

/** A topic's key. */
export type WorkedTopic = (typeof WORKED_TOPICS)[number];

/** How the index calls them. */
export const TOPIC_TITLES: Readonly<Record<WorkedTopic, string>> = {
  setting: 'Setting by torque or turns',
  band: 'Another band',
  dial: 'Reading the dial',
  cut: 'Cuts and cracks',
  doubt: 'When something does not agree',
};
