/** Throws an Error with what the compiler says. */
export function compile(): void;
