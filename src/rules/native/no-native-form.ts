/** A formula that has no equivalent; `message` says what in it stands against one. */
export class NoNativeForm extends Error {}
