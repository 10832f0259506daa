/** What a first opening asks about, in this order. */
export const SET_UP_TOPICS = ["altitude", "canner", "gauge", "units", "voice"] as const;

export type SetUpTopic = (typeof SET_UP_TOPICS)[number];

/** What is still to be asked, or was left for later. */
export type SetUp = { topic: SetUpTopic; left: boolean };
