/** What the id of a choice looks like. */
export const CHOICE_ID = /^[a-z][A-Za-z0-9_]{0,63}$/
