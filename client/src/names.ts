/** The name under which the server offers "quote to fields" as an action too. */
export const fieldsCommand = 'traywright.quoteToFields';

/** The name under which going through all sentences is offered as an action too. */
export const sentencesCommand = 'traywright.allSentences';

/** The name under which adding to a list is offered as an action, a line above the list and a completion. */
export const addCommand = 'traywright.addItem';

/** The name under which the line above a file leads to the places that name it. */
export const usesCommand = 'traywright.showUses';

/** Scheme of the pages that explain rules. They are made by the server, need no network and can't be edited. */
export const ruleScheme = 'traywright-rule';
